package org.tankrounds.fish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FeedingTableTest {

    /** Leitritz and Lewis 1976, California Fish Bulletin 164, as copied by a university's extension (confirmed). */
    @ParameterizedTest(name = "{0} °F")
    @CsvSource({
        "36, 2.7, 2.2, 1.7, 1.3", "40, 3.2, 2.6, 2.2, 1.7", "45, 4.0, 3.3, 2.7, 2.1", "48, 4.5, 3.8, 3.0, 2.4",
        "50, 5.2, 4.3, 3.4, 2.7", "52, 5.4, 4.5, 3.6, 2.8", "54, 5.8, 4.9, 3.9, 3.0", "55, 6.1, 5.1, 4.2, 3.2",
        "58, 7.0, 5.8, 4.8, 3.6", "60, 7.5, 6.3, 5.1, 3.9"})
    void percent_isTheTables(double fahrenheit, double first, double second, double third, double fourth) {
        double temperatureC = (fahrenheit - 32) / 1.8;
        assertThat(percent(temperatureC, 20)).isCloseTo(first, within(1e-6));
        assertThat(percent(temperatureC, 40)).isCloseTo(second, within(1e-6));
        assertThat(percent(temperatureC, 60)).isCloseTo(third, within(1e-6));
        assertThat(percent(temperatureC, 90)).isCloseTo(fourth, within(1e-6));
    }

    @Test
    void betweenTwoTemperatures_theTableIsReadInBetween() {
        assertThat(percent((49 - 32) / 1.8, 40)).isCloseTo((3.8 + 4.3) / 2, within(1e-6));
    }

    @Test
    void outsideTheTable_nothingIsSaid() {
        assertThat(FeedingTable.percentPerDay(1, 40)).isEmpty();
        assertThat(FeedingTable.percentPerDay(17, 40)).isEmpty();
        assertThat(FeedingTable.percentPerDay(10, 102)).isEmpty();
        assertThat(FeedingTable.percentPerDay(10, 0)).isEmpty();
        assertThat(FeedingTable.percentPerDay(Double.NaN, 40)).isEmpty();
    }

    private static double percent(double temperatureC, double lengthMm) {
        return FeedingTable.percentPerDay(temperatureC, lengthMm).orElseThrow();
    }
}
