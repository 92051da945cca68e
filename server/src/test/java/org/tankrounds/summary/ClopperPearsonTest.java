package org.tankrounds.summary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ClopperPearsonTest {
    /**
     * 7/50: the documentation of SciPy's binomtest. 81/263 and 15/148: Newcombe 1998, Stat. Med. 17:857-872. The others
     * computed from Clopper & Pearson 1934, Biometrika 26:404-413.
     */
    @ParameterizedTest
    @CsvSource({
        "7, 50, 0.058192, 0.267396",
        "81, 263, 0.252737, 0.367622",
        "15, 148, 0.057844, 0.161650",
        "0, 20, 0, 0.168433",
        "1, 29, 0.000873, 0.177644",
        "148, 200, 0.673422, 0.799315",
    })
    void interval_isTheExactOne(int successes, int trials, double low, double high) {
        ClopperPearson interval = ClopperPearson.of(successes, trials);

        // Printed with six decimals in the sources.
        assertThat(interval.low()).isCloseTo(low, within(5.1e-7));
        assertThat(interval.high()).isCloseTo(high, within(5.1e-7));
    }

    /** With nobody lost its lower end solves p^n = 0.025, which needs no table. */
    @ParameterizedTest
    @CsvSource({"1", "20", "450", "100000"})
    void whereAllOrNoneSurvived_theEndsHaveAClosedForm(int fish) {
        double low = StrictMath.pow(0.025, 1.0 / fish);
        assertThat(ClopperPearson.of(fish, fish).low()).isCloseTo(low, within(1e-9));
        assertThat(ClopperPearson.of(fish, fish).high()).isEqualTo(1);
        assertThat(ClopperPearson.of(0, fish).low()).isZero();
        assertThat(ClopperPearson.of(0, fish).high()).isCloseTo(1 - low, within(1e-9));
    }

    @Test
    void shareOfNothing_isRefused() {
        assertThatThrownBy(() -> ClopperPearson.of(0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ClopperPearson.of(3, 2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ClopperPearson.of(-1, 2)).isInstanceOf(IllegalArgumentException.class);
    }
}
