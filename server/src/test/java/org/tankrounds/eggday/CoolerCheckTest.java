package org.tankrounds.eggday;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.eggday.CoolerCheck.Comfort;

class CoolerCheckTest {

    /**
     * Kwain 1975, J. Fish. Res. Board Can. 32:397–402 (confirmed): of eggs the fewest die at 7 and 10 °C, and 3 and
     * 15 °C are near the limits. 13 °C from spawning to emergence: US EPA 2003 (confirmed, second-hand).
     */
    @ParameterizedTest(name = "{0} °C")
    @CsvSource({"7, FINE", "10, FINE", "3, NEAR_THE_EDGE", "13, NEAR_THE_EDGE", "2.9, TOO_COLD", "13.1, TOO_WARM",
        "15, TOO_WARM"})
    void eggsInTheCooler_areHeldAgainstWhatEggsStand(double celsius, Comfort comfort) {
        assertThat(Comfort.at(celsius)).isEqualTo(comfort);
    }
}
