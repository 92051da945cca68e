package org.tankrounds.rounds;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.FanPoint;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.SeriesForecast;
import org.tankrounds.forecast.Way;
import org.tankrounds.forecast.Ways;
import org.tankrounds.pages.WaysPicture;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Scale;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Language;

class SpreadWordingTest {
    private static final ZoneId NEW_YORK = ZoneId.of("America/New_York");
    /** A Wednesday, 8:00 in New York. */
    private static final Instant NOW = Instant.parse("2026-11-25T13:00:00Z");
    private static final Formats FORMATS = new Formats(NEW_YORK, NOW);
    private static final SeriesForecast TEMPERATURE = new SeriesForecast(Driver.TEMPERATURE, "°C",
            OptionalDouble.of(18), OptionalDouble.empty(),
            List.of(new FanPoint(0, 11, 11.2, 11.5, 11.8, 12), new FanPoint(72, 10.4, 11, 11.5, 12, 12.6)));

    private final SpreadWording wording = new SpreadWording(FORMATS);

    @Test
    void issuesSentence_countsTheWaysAndNamesLimitAndEnd() {
        assertThat(wording.answer(forecast(), ways(7, 30, Driver.TEMPERATURE)))
                .isEqualTo("In 7 of 20 ways this could go, the water crosses 18\u00a0°C before Saturday 8:00, "
                        + "if nobody steps in.");
    }

    @Test
    void ways_areToldInSpanish_withTheLimitOnTheReadersScale() {
        Formats formats = new Formats(NEW_YORK, NOW, new Speech(Language.SPANISH, Scale.FAHRENHEIT));
        SpreadWording spanish = new SpreadWording(formats);
        assertThat(spanish.answer(forecast(), ways(7, 30, Driver.TEMPERATURE)))
                .isEqualTo("En 7 de 20 formas en que esto puede seguir, el agua cruza 64.4\u00a0°F a más tardar"
                        + " el sábado a las 8:00, si nadie interviene.");
        assertThat(spanish.answer(forecast(), ways(7, 30, Driver.NITRITE))).contains("el nitrito pasa de ");
        assertThat(spanish.brief(forecast(), ways(6, 12, Driver.TEMPERATURE), Optional.of(TEMPERATURE)))
                .isEqualTo("si pasa, esta noche");
        assertThat(new WaysPictures(formats).draw(forecast(), ways(2, 0, Driver.TEMPERATURE)).columns())
                .extracting(WaysPicture.Column::label).containsExactly("ahora", "hoy", "jue", "vie", "sáb", "dentro");
    }

    @Test
    void noWay_isSaidInWords() {
        assertThat(wording.answer(forecast(), new Ways(List.of())))
                .startsWith("In none of 20 ways this could go, the water goes beyond a limit before Saturday");
    }

    @Test
    void severalLimits_areTakenTogether_andTheirDotsExplained() {
        List<Way> mixed = new ArrayList<>(ways(5, 10, Driver.TEMPERATURE).beyond());
        mixed.addAll(ways(2, 40, Driver.NITRITE).beyond());
        Ways ways = new Ways(mixed);
        assertThat(wording.answer(forecast(), ways)).contains("In 7 of 20").contains("goes beyond a limit");
        assertThat(wording.signs(ways)).isEqualTo("Round: temperature first, 5 ways; square: nitrite first, 2.");
        assertThat(wording.signs(ways(3, 4, Driver.NITRITE))).isEmpty();
    }

    @Test
    void troubleThatOnlyDeathsTellOf_saysSo() {
        Ways unseen = new Ways(Collections.nCopies(4, new Way(OptionalInt.empty(), Optional.empty())));
        assertThat(wording.answer(forecast(), unseen)).endsWith("The deaths tell of it; no reading shows it.");
        assertThat(brief(unseen)).isEqualTo("told by deaths only");
    }

    @Test
    void troubleThatDeathsTellOfInPart_isCountedApart() {
        List<Way> mixed = new ArrayList<>(ways(2, 12, Driver.TEMPERATURE).beyond());
        mixed.addAll(Collections.nCopies(4, new Way(OptionalInt.empty(), Optional.empty())));
        assertThat(wording.answer(forecast(), new Ways(mixed)))
                .contains("In 6 of 20 ways this could go, the water goes beyond a limit")
                .endsWith("Of 4 only the deaths tell; no reading shows them.");
        assertThat(brief(new Ways(mixed))).isEqualTo("told by deaths more than by readings");
        assertThat(wording.signs(new Ways(mixed))).isEmpty();
    }

    @Test
    void row_saysWhenOrWhereTheWaterStays() {
        assertThat(brief(ways(6, 5, Driver.TEMPERATURE))).isEqualTo("if so, today");
        assertThat(brief(ways(6, 12, Driver.TEMPERATURE))).isEqualTo("if so, tonight");
        assertThat(brief(ways(20, 0, Driver.TEMPERATURE))).isEqualTo("now");
        List<Way> apart = new ArrayList<>(ways(4, 12, Driver.TEMPERATURE).beyond());
        apart.addAll(ways(4, 50, Driver.TEMPERATURE).beyond());
        assertThat(brief(new Ways(apart))).isEqualTo("if so, tonight to Fri");
        assertThat(brief(ways(1, 12, Driver.TEMPERATURE))).isEqualTo("likely 10.4 to 12.6\u00a0°C");
    }

    @Test
    void row_namesTheFormThatASmallLevelCounts() {
        SeriesForecast nitrite = new SeriesForecast(Driver.NITRITE, "mg/L as N", OptionalDouble.of(0.15),
                OptionalDouble.empty(), List.of(new FanPoint(72, 0.01, 0.02, 0.03, 0.05, 0.08)));
        assertThat(wording.brief(forecast(), new Ways(List.of()), Optional.of(nitrite)))
                .isEqualTo("likely nitrite-N up to 0.08\u00a0mg/L");
    }

    @Test
    void columns_holdEveryWayOnce_underItsDay() {
        List<Way> apart = new ArrayList<>(ways(2, 0, Driver.TEMPERATURE).beyond());
        apart.addAll(ways(3, 15, Driver.TEMPERATURE).beyond());
        apart.addAll(ways(4, 16, Driver.NITRITE).beyond());
        apart.addAll(ways(1, 71, Driver.TEMPERATURE).beyond());
        WaysPicture picture = new WaysPictures(FORMATS).draw(forecast(), new Ways(apart));
        assertThat(picture.columns()).extracting(WaysPicture.Column::label)
                .containsExactly("now", "today", "Thu", "Fri", "Sat", "within");
        assertThat(picture.columns()).extracting(WaysPicture.Column::count).containsExactly(2, 3, 4, 0, 1, 10);
        assertThat(picture.columns().get(2).kinds()).containsOnly("other");
        assertThat(picture.columns().get(4).words()).isEqualTo("beyond a limit first on Saturday until 8:00");
    }

    private String brief(Ways ways) {
        return wording.brief(forecast(), ways, Optional.of(TEMPERATURE));
    }

    private static Ways ways(int count, int afterHours, Driver limit) {
        return new Ways(Collections.nCopies(count, new Way(OptionalInt.of(afterHours), Optional.of(limit))));
    }

    private static Forecast forecast() {
        return new Forecast("tank-1", NOW, 0.35, 1, Driver.TEMPERATURE, OptionalDouble.empty(),
                OptionalDouble.of(1), Stage.FEEDING, 84, List.of(), List.of(TEMPERATURE));
    }
}
