package org.tankrounds.lab.evaluation;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class IsotoneTest {

    /** By hand: 0 of 1, then 1 of 2 and 0 of 1 pooled to a third, then 1 of 1. */
    @Test
    void chances_neverFall() {
        double[] score = {5, 1, 2, 2, 3};
        boolean[] cameTrue = {true, false, true, false, false};
        assertThat(Isotone.chances(score, cameTrue)).containsExactly(1, 0, 1 / 3.0, 1 / 3.0, 1 / 3.0);
    }

    @Test
    void equalScores_haveOneChance() {
        assertThat(Isotone.chances(new double[] {4, 4, 4, 4}, new boolean[] {true, false, false, false}))
                .containsOnly(0.25);
    }

    /** With hindsight no monotone chances fit better, so the skill is never below that of the base rate. */
    @Test
    void orderTurnedUpsideDown_isNoWorseThanTheBaseRate() {
        double[] chances = Isotone.chances(new double[] {1, 2, 3, 4}, new boolean[] {true, true, false, false});
        assertThat(chances).containsOnly(0.5);
    }
}
