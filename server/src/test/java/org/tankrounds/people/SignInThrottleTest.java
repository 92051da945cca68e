package org.tankrounds.people;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SignInThrottleTest {
    /** Our own numbers: no source. */
    @ParameterizedTest
    @CsvSource({"0, 0", "3, 0", "4, 1", "5, 2", "6, 4", "10, 64", "13, 512", "14, 900", "15, 900",
            "1000000, 900"})
    void theWait_doublesUpToAQuarterOfAnHour(int failures, long seconds) {
        assertThat(SignInThrottle.waitAfter(failures)).hasSeconds(seconds);
    }
}
