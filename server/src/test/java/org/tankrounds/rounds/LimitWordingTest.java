package org.tankrounds.rounds;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Reason;
import org.tankrounds.web.Formats;

/** What is said of a level and its limit is true of the readings that it is said of. */
class LimitWordingTest {
    private static final Instant NOW = Instant.parse("2027-03-10T19:00:00Z");

    private final ReasonWording wording = new ReasonWording(new Formats(ZoneId.of("UTC"), NOW));

    @Test
    void oneLowReadingAfterHighOnes_isNoProof_andIsNotCalledBeyond() {
        Phrase phrase = wording.of(nitrite(0).withChange(0.6, -0.6, 48));

        assertThat(phrase.lead()).isEqualTo("Nitrite not detected, down from 0.6 on Monday.");
        assertThat(phrase.rest()).startsWith("It was beyond before; one reading is too few to be sure that it is below"
                + " its limit of 0.15 again.").doesNotContain("Likely beyond");
    }

    @Test
    void nothingDetected_isNeverCalledBeyond() {
        Phrase phrase = wording.of(nitrite(0));

        assertThat(phrase.lead()).isEqualTo("Nitrite not detected.");
        assertThat(phrase.rest()).startsWith("Not certain to stay below its limit of 0.15.");
    }

    @Test
    void aLevelOnTheRise_isLikelyBeyondByNow() {
        assertThat(wording.of(nitrite(0.14).withChange(0.1, 0.04, 48)).rest())
                .startsWith("Likely beyond its limit of 0.15 by now.");
    }

    @ParameterizedTest
    @CsvSource({"0.00000000023, under 0.0001", "0.00099, 0.00099", "0, 0", "0.0114, 0.011"})
    void tinyLevels_arePrintedAsFarAsAnybodyCanTell(double level, String printed) {
        assertThat(Levels.bare(Driver.UN_IONISED_AMMONIA, level)).isEqualTo(printed);
    }

    @Test
    void aTinyChange_isNotWorthPrinting() {
        assertThat(Levels.shows(Driver.UN_IONISED_AMMONIA, 2.3e-10)).isFalse();
        assertThat(Levels.shows(Driver.UN_IONISED_AMMONIA, 0.002)).isTrue();
    }

    private static Reason nitrite(double level) {
        return Reason.of(Reason.Kind.BEYOND_LIMIT, Driver.NITRITE, 0.5).withValue(level, "mg/L as N")
                .withLimit(OptionalDouble.of(0.15)).withAt(NOW).withHoursToLimit(OptionalDouble.of(0));
    }
}
