package org.tankrounds.lab;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClopperPearsonTest {

    /** Of none seen in n it is 1 − 0.025^(1/n); of one in ten the table has 0.4450 (from memory). */
    @ParameterizedTest(name = "{0} of {1}")
    @CsvSource({"0, 10, 0.3085", "1, 10, 0.4450", "0, 100, 0.0362", "10, 10, 1", "0, 0, 1"})
    void upper_isThatOfTheExactInterval(long hits, long trials, double upper) {
        assertThat(ClopperPearson.upper(hits, trials)).isCloseTo(upper, within(5e-5));
    }

    @Test
    void upper_ofManyTrials_nearsWhatWasSeen() {
        assertThat(ClopperPearson.upper(40, 20_000)).isBetween(0.002, 0.0028);
    }
}
