package org.tankrounds.fish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RationTest {
    private static final double AT_50_F_C = 10;

    /** Leitritz and Lewis 1976 (confirmed): a hundred fish of 1 g at 50 °F, 1 to 2 inches, grow best on 4.3 g a day. */
    @Test
    void aHundredGrams_growFastestOnTheTablesShare() {
        Ration ration = Ration.of(100, 1.0, 45, AT_50_F_C).orElseThrow();
        assertThat(ration.growthPercent()).isCloseTo(4.3, within(1e-6));
        assertThat(ration.growthGramsPerDay()).isCloseTo(4.3, within(1e-6));
    }

    /** Common practice, no source: a release tank is fed 1 to 3 % of the fish's weight. */
    @Test
    void aClassroomsTank_isGivenWhatAReleaseTankIs() {
        Ration ration = Ration.of(100, 1.0, 45, AT_50_F_C).orElseThrow();
        assertThat(ration.gramsPerDay()).isBetween(1.0, 3.0);
        assertThat(ration.percentOfWeight()).isBetween(1.0, 3.0);
    }

    @Test
    void coldLargeFish_getNoMoreThanTheyGrowOn() {
        Ration ration = Ration.of(50, 8.0, 90, (36 - 32) / 1.8).orElseThrow();
        assertThat(ration.percentOfWeight()).isCloseTo(1.3, within(1e-6));
        assertThat(ration.gramsPerDay()).isCloseTo(50 * 8.0 * 0.013, within(1e-6));
    }

    @Test
    void outsideTheTableOrWithoutFish_thereIsNoRation() {
        assertThat(Ration.of(100, 1.0, 45, 18)).isEmpty();
        assertThat(Ration.of(0, 1.0, 45, AT_50_F_C)).isEmpty();
    }
}
