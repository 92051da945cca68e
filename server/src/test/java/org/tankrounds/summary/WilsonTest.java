package org.tankrounds.summary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class WilsonTest {
    /**
     * 81/263 and 15/148 are cases of Newcombe 1998, Stat. Med. 17:857-872 (confirmed); bounds computed from Wilson
     * 1927, J. Am. Stat. Assoc. 22:209-212.
     */
    @ParameterizedTest
    @CsvSource({
        "81, 263, 0.255289, 0.366210",
        "15, 148, 0.062386, 0.160487",
        "0, 20, 0, 0.161125",
        "1, 29, 0.006113, 0.171755",
        "7, 50, 0.069508, 0.261862",
        "148, 200, 0.675093, 0.795862",
    })
    void interval_isWilsons(int successes, int trials, double low, double high) {
        Wilson interval = Wilson.of(successes, trials);

        // Printed with six decimals in the source.
        assertThat(interval.low()).isCloseTo(low, within(5.1e-7));
        assertThat(interval.high()).isCloseTo(high, within(5.1e-7));
    }

    /** With continuity correction, 340 of 400 reach from 0.8103309 to 0.8827749 (R, prop.test; confirmed): wider. */
    @Test
    void interval_isWithoutContinuityCorrection() {
        Wilson interval = Wilson.of(340, 400);
        assertThat(interval.low()).isGreaterThan(0.8103309 + 0.001);
        assertThat(interval.high()).isLessThan(0.8827749 - 0.001);
    }

    @Test
    void shareOfNothing_isRefused() {
        assertThatThrownBy(() -> Wilson.of(0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Wilson.of(3, 2)).isInstanceOf(IllegalArgumentException.class);
    }
}
