package org.tankrounds.fish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

class GrowthTest {

    /** A published farm example (second-hand): 10 to 350 g at 11 °C in 200 days is a TGC of 0.222. */
    @Test
    void weight_isThatOfAPublishedExample() {
        assertThat(Growth.weightG(10, 0.2224, 11 * 200)).isCloseTo(350, withinPercentage(0.1));
    }

    /** Iwama and Tautz 1981, doi:10.1139/f81-087, exponent 1/3, computed once elsewhere (Python). */
    @Test
    void weight_growsByTheWarmthAlone() {
        assertThat(Growth.weightG(0.12, 0.10, 10 * 90)).isCloseTo(2.70446, within(5e-6));
        assertThat(Growth.weightG(0.12, 0.15, 10 * 90)).isCloseTo(6.26249, within(5e-6));
        assertThat(Growth.weightG(0.15, 0.05, 0)).isCloseTo(0.15, within(1e-12));
    }

    /**
     * Iwama and Tautz 1981 with their coefficient of 1 (a TGC of 0.1): 0.2 g, 10 °C, 60 d is 1.66318 g with the
     * exponent 1/3 of today, which this takes; with their 0.33 it would be 1.68523 g (both computed once elsewhere).
     */
    @Test
    void weight_isOfTheExponentOneThird() {
        assertThat(Growth.weightG(0.2, 0.1, 10 * 60)).isCloseTo(1.66318, within(5.1e-6));
    }

    /** The same examples backwards. */
    @Test
    void warmth_isWhatTheGrowthTakes() {
        assertThat(Growth.degreeDaysC(0.12, 6.26249, 0.15)).isCloseTo(900, within(0.001));
        assertThat(Growth.degreeDaysC(10, 350, 0.2224)).isCloseTo(2200, within(0.5));
        assertThat(Growth.degreeDaysC(1, 1, 0.15)).isZero();
    }

    /**
     * A state agency reports (confirmed) 0.7 inch a month at 48 to 52 °F for well-fed 3-inch trout; a crowded
     * classroom's fish grow, but slower than those.
     */
    @Test
    void classroomFish_growSlowerThanAHatcherys() {
        double start = LengthWeight.weightG(3 * 25.4, LengthWeight.USUAL_CONDITION);
        double after = Growth.weightG(start, Growth.CLASSROOM_TGC_PERCENT, 10 * 30);
        double grownInches = LengthWeight.lengthMm(after, LengthWeight.USUAL_CONDITION) / 25.4 - 3;
        assertThat(grownInches).isBetween(0.1, 0.7);
    }
}
