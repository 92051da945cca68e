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
import org.tankrounds.web.Scale;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Language;

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
        assertThat(new Levels(Speech.PLAIN).bare(Driver.UN_IONISED_AMMONIA, level)).isEqualTo(printed);
    }

    @Test
    void aTinyChange_isNotWorthPrinting() {
        assertThat(Levels.shows(Driver.UN_IONISED_AMMONIA, 2.3e-10)).isFalse();
        assertThat(Levels.shows(Driver.UN_IONISED_AMMONIA, 0.002)).isTrue();
    }

    @Test
    void reasons_areSaidInSpanish_asWholeSentences() {
        assertThat(inSpanish().of(nitrite(0).withChange(0.6, -0.6, 48)).whole())
                .isEqualTo("Nitrito sin detectar, bajó de 0.6 el lunes. Antes lo había cruzado; una sola lectura no"
                        + " basta para saber que está otra vez por debajo de su límite de 0.15. Se midió hoy 19:00.");
        assertThat(inSpanish().of(temperature(Reason.Kind.HEADED_FOR_LIMIT).withHoursToLimit(OptionalDouble.of(4)))
                .whole().replace('\u00a0', ' '))
                .isEqualTo("Temperatura 60.1 °F, subió 5.6 desde el lunes."
                        + " Es probable que cruce 64.4 °F para esta noche.");
    }

    /** A difference has no zero to be counted from: 3.1 degrees Celsius are 5.6 degrees Fahrenheit. */
    @Test
    void temperatures_theirLimits_andHowFarTheyMoved_areOnTheReadersScale() {
        ReasonWording fahrenheit = new ReasonWording(new Formats(ZoneId.of("UTC"), NOW,
                new Speech(Language.ENGLISH, Scale.FAHRENHEIT)));

        assertThat(fahrenheit.of(temperature(Reason.Kind.CHILLER_LOOKS_STOPPED).withHoursToLimit(OptionalDouble.of(0)))
                .whole().replace('\u00a0', ' '))
                .isEqualTo("Temperature 60.1 °F, up 5.6 since Monday. As if the chiller had stopped; past 64.4 °F.");
        assertThat(fahrenheit.of(temperature(Reason.Kind.BEYOND_LIMIT).withValue(18.5, "°C")).lead())
                .contains("beyond its limit of 64.4");
    }

    private static ReasonWording inSpanish() {
        return new ReasonWording(new Formats(ZoneId.of("UTC"), NOW, new Speech(Language.SPANISH, Scale.FAHRENHEIT)));
    }

    private static Reason temperature(Reason.Kind kind) {
        return Reason.of(kind, Driver.TEMPERATURE, 0.5).withValue(15.6, "°C").withLimit(OptionalDouble.of(18))
                .withChange(12.5, 3.1, 48);
    }

    private static Reason nitrite(double level) {
        return Reason.of(Reason.Kind.BEYOND_LIMIT, Driver.NITRITE, 0.5).withValue(level, "mg/L as N")
                .withLimit(OptionalDouble.of(0.15)).withAt(NOW).withHoursToLimit(OptionalDouble.of(0));
    }
}
