package org.tankrounds.lab;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Worked values computed once elsewhere (Python) from the published definitions. */
class ScoresTest {

    private static final double[] CHANCE = {.1, .1, .1, .4, .4, .4, .4, .8, .8, .8};
    private static final boolean[] CAME_TRUE =
            {false, false, true, false, false, true, true, true, true, false};

    @Test
    void brier_decomposesAsMurphy1973() {
        Brier brier = Brier.of(CHANCE, CAME_TRUE);
        assertThat(brier.score()).isCloseTo(0.259, within(1e-12));
        assertThat(brier.reliability()).isCloseTo(0.02566667, within(5e-9));
        assertThat(brier.resolution()).isCloseTo(0.01666667, within(5e-9));
        assertThat(brier.uncertainty()).isCloseTo(0.25, within(1e-12));
        assertThat(brier.skill()).isCloseTo(-0.036, within(1e-12));
    }

    @Test
    void reliability_ofEachClassIsToldWithItsCases() {
        Brier.ChanceClass likely = Brier.of(CHANCE, CAME_TRUE).classes()[8];
        assertThat(likely.cases()).isEqualTo(3);
        assertThat(likely.given()).isCloseTo(0.8, within(1e-12));
        assertThat(likely.came()).isCloseTo(2 / 3.0, within(1e-12));
    }

    @Test
    void auc_countsTiesAHalf() {
        assertThat(Scores.auc(CHANCE, CAME_TRUE)).isCloseTo(0.64, within(1e-12));
    }

    @Test
    void auc_ofAnOrder() {
        double[] score = {.9, .8, .7, .6, .55, .5, .4, .3, .2, .1};
        boolean[] cameTrue = {true, false, true, true, false, false, true, false, false, false};
        assertThat(Scores.auc(score, cameTrue)).isCloseTo(19 / 24.0, within(1e-12));
    }

    @Test
    void auc_whereAllCameOutAlike_isNoNumber() {
        assertThat(Scores.auc(new double[] {.1, .2}, new boolean[] {false, false})).isNaN();
    }

    @Test
    void ndcg_discountsByThePlace() {
        // Gains 3, 2, 0 put in the order 2, 3, 0: (2 + 3/log2 3) / (3 + 2/log2 3), by hand.
        double worked = (2 + 3 / 1.5849625007) / (3 + 2 / 1.5849625007);
        assertThat(Scores.ndcg(new double[] {.5, .9, .1}, new double[] {3, 2, 0}, 3))
                .isCloseTo(worked, within(1e-9));
        assertThat(Scores.ndcg(new double[] {.9, .5, .1}, new double[] {3, 2, 0}, 3)).isEqualTo(1);
    }

    @Test
    void worstFirst_looksAtTheFirstPlaceOnly() {
        assertThat(Scores.isWorstFirst(new double[] {.2, .9, .3}, new double[] {1, 5, 2})).isTrue();
        assertThat(Scores.isWorstFirst(new double[] {.2, .3, .9}, new double[] {1, 5, 2})).isFalse();
    }
}
