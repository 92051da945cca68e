package org.tankrounds.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.tankrounds.words.Language;

class FormatsTest {
    private static final ZoneId NEW_YORK = ZoneId.of("America/New_York");
    /** Wednesday 25 November 2026, 13:15 in New York. */
    private static final Instant NOW = Instant.parse("2026-11-25T18:15:00Z");

    private final Formats english = new Formats(NEW_YORK, NOW);
    private final Formats spanish = new Formats(NEW_YORK, NOW, new Speech(Language.SPANISH, Scale.FAHRENHEIT));

    @Test
    void times_areWrittenAsTheReaderWritesThem() {
        assertThat(english.full(NOW)).isEqualTo("Wed 25 Nov, 13:15");
        assertThat(english.longDate(LocalDate.of(2026, 9, 3))).isEqualTo("3 September 2026");
        assertThat(spanish.date(NOW)).isEqualTo("25 de noviembre");
        assertThat(spanish.longDate(LocalDate.of(2026, 9, 3))).isEqualTo("3 de septiembre de 2026");
        assertThat(spanish.full(NOW)).matches("mié\\.? 25 nov\\.?, 13:15");
    }

    @Test
    void moments_areNamedFromWhereTheReaderStands() {
        Instant aDayAgo = NOW.minusSeconds(24 * 3600);
        Instant threeDaysOn = NOW.plusSeconds(3 * 24 * 3600);

        assertThat(english.moment(aDayAgo)).isEqualTo("yesterday 13:15");
        assertThat(spanish.moment(aDayAgo)).isEqualTo("ayer 13:15");
        assertThat(english.by(threeDaysOn)).isEqualTo("Saturday afternoon");
        assertThat(spanish.by(threeDaysOn)).isEqualTo("el sábado por la tarde");
        assertThat(spanish.since(Instant.parse("2026-11-25T06:05:00Z"))).isEqualTo("la 1:05");
        assertThat(spanish.since(NOW)).isEqualTo("las 13:15");
        assertThat(spanish.window(NOW, threeDaysOn)).isEqualTo("25 al 28 de noviembre");
        assertThat(spanish.lasting(1)).isEqualTo("1 hora");
        assertThat(spanish.chance(0.02)).isEqualTo("menos de 1 de cada 10");
        assertThat(spanish.chance(0.7)).isEqualTo("7 de cada 10");
    }

    /** Water freezes at 32 °F and boils at 212 °F, by the definition of the scale. */
    @Test
    void temperatures_areOnTheReadersScale() {
        assertThat(english.temperature(11.46, 1)).isEqualTo("11.5\u00a0°C");
        assertThat(spanish.temperature(0, 0)).isEqualTo("32\u00a0°F");
        assertThat(spanish.temperature(100, 0)).isEqualTo("212\u00a0°F");
        assertThat(Scale.FAHRENHEIT.ofDifference(5)).isEqualTo(9);
        assertThat(Scale.CELSIUS.ofDifference(5)).isEqualTo(5);
    }
}
