package org.tankrounds.lab.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Murphy's decomposition (1973), with values computed once elsewhere (Python) from the published definitions. */
class BrierTest {
    private static final double[] CHANCE = {.1, .1, .1, .4, .4, .4, .4, .8, .8, .8};
    private static final boolean[] CAME_TRUE =
            {false, false, true, false, false, true, true, true, true, false};

    @Test
    void score_decomposesAsMurphy1973() {
        Brier brier = Brier.of(CHANCE, CAME_TRUE);
        assertThat(brier.score()).isCloseTo(0.259, within(1e-12));
        assertThat(brier.reliability()).isCloseTo(0.02566667, within(5e-9));
        assertThat(brier.resolution()).isCloseTo(0.01666667, within(5e-9));
        assertThat(brier.uncertainty()).isCloseTo(0.25, within(1e-12));
        assertThat(brier.within()).isCloseTo(0, within(1e-12));
        assertThat(brier.skill()).isCloseTo(-0.036, within(1e-12));
    }

    @Test
    void parts_ofAnyChances_addUpToTheScore() {
        SplittableRandom random = new SplittableRandom(11);
        double[] chance = random.doubles(5_000).toArray();
        boolean[] cameTrue = new boolean[chance.length];
        for (int i = 0; i < chance.length; i++) {
            cameTrue[i] = random.nextDouble() < 0.2 + 0.5 * chance[i];
        }
        Brier brier = Brier.of(chance, cameTrue);
        assertThat(brier.reliability() - brier.resolution() + brier.uncertainty() + brier.within())
                .isCloseTo(brier.score(), within(1e-12));
        assertThat(brier.within()).isNotZero();
    }

    @Test
    void reliability_ofEachClassIsToldWithItsCases() {
        Brier.ChanceClass likely = Brier.of(CHANCE, CAME_TRUE).classes().get(8);
        assertThat(likely.cases()).isEqualTo(3);
        assertThat(likely.given()).isCloseTo(0.8, within(1e-12));
        assertThat(likely.came()).isCloseTo(2 / 3.0, within(1e-12));
    }

    /** By hand: 1 of 3 came true at 0.1, 2 of 4 at 0.4, 2 of 3 at 0.8. */
    @Test
    void worstClass_isThatFurthestOff() {
        assertThat(Brier.of(CHANCE, CAME_TRUE).worst().miss()).isCloseTo(1 / 3.0 - 0.1, within(1e-12));
    }

    /** One class only, all cases alike: 0.3 was said and 1 of 4 came true. */
    @Test
    void missingClasses_addNothing() {
        Brier brier = Brier.of(new double[] {.3, .3, .3, .3}, new boolean[] {true, false, false, false});
        assertThat(brier.reliability()).isCloseTo(0.0025, within(1e-12));
        assertThat(brier.resolution()).isZero();
        assertThat(brier.worst().miss()).isCloseTo(-0.05, within(1e-12));
    }
}
