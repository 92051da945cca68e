package org.tankrounds.summary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.belief.Observation;
import org.tankrounds.forecast.Limits;
import org.tankrounds.places.Tank;
import org.tankrounds.season.CountMethod;
import org.tankrounds.season.Lot;
import org.tankrounds.season.LotHistory;
import org.tankrounds.season.SeenOn;
import org.tankrounds.water.Analyte;

final class LimitDaysTest {
    private static final ZoneId ZONE = ZoneId.of("America/New_York");

    /**
     * Emerson et al. 1975; the fractions in per cent computed for the project's science reference, section 1.
     */
    @ParameterizedTest
    @CsvSource({
        "5, 6.5, 0.0394", "5, 8.5, 3.7887", "8, 7.5, 0.4987", "10, 7.0, 0.1853", "10, 8.0, 1.8221",
        "12, 7.5, 0.6811", "15, 8.5, 7.9420",
    })
    void unIonisedAmmonia_isEmersons(double temperatureC, double ph, double percent) {
        WithinLimit ammonia = of(Series.UN_IONISED_AMMONIA,
                seen("2026-01-12T14:00:00Z", Analyte.TEMPERATURE, temperatureC),
                seen("2026-01-12T14:00:00Z", Analyte.PH, ph),
                seen("2026-01-12T14:00:00Z", Analyte.TOTAL_AMMONIA, 1));

        // As NH3, so times 1.215884; the table has four decimals of a per cent.
        assertThat(ammonia.worst().orElseThrow().value()).isCloseTo(percent / 100 * 1.215884, within(1e-6));
    }

    /**
     * Science reference, section 1: kit 0.50 as NH3, pH 7.6, 12 °C gives 0.411223 mg N/L and NH3 0.00427985
     * mg/L.
     */
    @Test
    void unIonisedAmmonia_ofTheWorkedExample() {
        WithinLimit ammonia = of(Series.UN_IONISED_AMMONIA,
                seen("2026-01-12T14:00:00Z", Analyte.TEMPERATURE, 12),
                seen("2026-01-12T14:00:00Z", Analyte.PH, 7.6),
                seen("2026-01-12T14:00:00Z", Analyte.TOTAL_AMMONIA, 0.411223));

        assertThat(ammonia.worst().orElseThrow().value()).isCloseTo(0.00427985, within(1e-8));
        assertThat(ammonia.within()).isEqualTo(1);
    }

    @Test
    void ammonia_takesTheNearestPhOfTheSameDay() {
        WithinLimit ammonia = of(Series.UN_IONISED_AMMONIA,
                seen("2026-01-12T13:00:00Z", Analyte.TEMPERATURE, 12),
                seen("2026-01-12T13:00:00Z", Analyte.PH, 7.0),
                seen("2026-01-12T18:00:00Z", Analyte.TOTAL_AMMONIA, 1),
                seen("2026-01-12T19:00:00Z", Analyte.PH, 7.5));

        assertThat(ammonia.worst().orElseThrow().value()).isCloseTo(0.006811 * 1.215884, within(1e-6));
    }

    @Test
    void ammoniaWithoutPhThatDay_isUndecided() {
        WithinLimit ammonia = of(Series.UN_IONISED_AMMONIA,
                seen("2026-01-11T14:00:00Z", Analyte.PH, 7.5),
                seen("2026-01-12T14:00:00Z", Analyte.TEMPERATURE, 12),
                seen("2026-01-12T14:00:00Z", Analyte.TOTAL_AMMONIA, 5));

        assertThat(ammonia.days()).isEqualTo(1);
        assertThat(ammonia.undecided()).isEqualTo(1);
        assertThat(ammonia.share()).isEmpty();
    }

    @Test
    void dayEndsOnTheSchoolsClock() {
        WithinLimit temperature = of(Series.TEMPERATURE,
                seen("2026-01-12T04:59:00Z", Analyte.TEMPERATURE, 11),
                seen("2026-01-12T05:01:00Z", Analyte.TEMPERATURE, 11));

        assertThat(temperature.days()).isEqualTo(2);
    }

    @Test
    void oneBadHour_spoilsTheDay_andTheWorstIsDated() {
        WithinLimit temperature = of(Series.TEMPERATURE,
                seen("2025-11-12T14:00:00Z", Analyte.TEMPERATURE, 11),
                seen("2025-11-12T18:00:00Z", Analyte.TEMPERATURE, 13.2),
                seen("2025-11-13T14:00:00Z", Analyte.TEMPERATURE, 13));

        assertThat(temperature.days()).isEqualTo(2);
        assertThat(temperature.within()).isEqualTo(1);
        assertThat(temperature.worst().orElseThrow().value()).isEqualTo(13.2);
        assertThat(temperature.worst().orElseThrow().day()).isEqualTo(LocalDate.parse("2025-11-12"));
    }

    @Test
    void feedingFish_bearWarmerWater() {
        // 180 °C-days on arrival and 300 more at 12 °C: first feeding on 29 November.
        WithinLimit temperature = of(Series.TEMPERATURE,
                seen("2025-11-05T14:00:00Z", Analyte.TEMPERATURE, 12),
                seen("2025-12-20T14:00:00Z", Analyte.TEMPERATURE, 15));

        assertThat(temperature.within()).isEqualTo(2);
    }

    @Test
    void notDetected_isWithinWhereHalfTheFirstStepIs() {
        WithinLimit nitrite = of(Series.NITRITE,
                new Observation(Instant.parse("2026-01-12T14:00:00Z"), Analyte.NITRITE, 0, 0.015, true,
                        false),
                new Observation(Instant.parse("2026-01-13T14:00:00Z"), Analyte.NITRITE, 0, 0.3, true, false),
                new Observation(Instant.parse("2026-01-14T14:00:00Z"), Analyte.NITRITE, 0, 0, true, false));

        assertThat(nitrite.within()).isEqualTo(1);
        assertThat(nitrite.undecided()).isEqualTo(2);
        assertThat(nitrite.notDetected()).isEqualTo(3);
        assertThat(nitrite.worst()).isEmpty();
    }

    @Test
    void nitrite_isHeldAgainstTheChlorideOfItsTime() {
        WithinLimit nitrite = of(Series.NITRITE,
                seen("2026-01-12T14:00:00Z", Analyte.NITRITE, 0.3),
                seen("2026-01-13T14:00:00Z", Analyte.CHLORIDE, 40),
                seen("2026-01-14T14:00:00Z", Analyte.NITRITE, 0.3));

        assertThat(nitrite.days()).isEqualTo(2);
        assertThat(nitrite.within()).isEqualTo(1);
    }

    @Test
    void doubtfulValues_areLeftOutAndCounted() {
        WithinLimit temperature = of(Series.TEMPERATURE,
                seen("2026-01-12T14:00:00Z", Analyte.TEMPERATURE, 11),
                new Observation(Instant.parse("2026-01-12T15:00:00Z"), Analyte.TEMPERATURE, 54, 0.5, false,
                        true));

        assertThat(temperature.within()).isEqualTo(1);
        assertThat(temperature.values()).isEqualTo(1);
        assertThat(temperature.doubtful()).isEqualTo(1);
    }

    @Test
    void theLongestSpell_runsOverDaysThatNobodyRead_butNotOverGoodOnes_norOverALongSilence() {
        WithinLimit temperature = of(Series.TEMPERATURE,
                seen("2025-11-06T14:00:00Z", Analyte.TEMPERATURE, 13.5),
                seen("2025-11-07T14:00:00Z", Analyte.TEMPERATURE, 13.6),
                seen("2025-11-08T14:00:00Z", Analyte.TEMPERATURE, 12),
                seen("2025-11-10T14:00:00Z", Analyte.TEMPERATURE, 13.1),
                seen("2025-11-14T14:00:00Z", Analyte.TEMPERATURE, 13.4),
                seen("2025-11-14T18:00:00Z", Analyte.TEMPERATURE, 12.9),
                seen("2025-11-19T14:00:00Z", Analyte.TEMPERATURE, 15));

        Spell longest = temperature.spell().orElseThrow();

        assertThat(longest.from()).isEqualTo("2025-11-10");
        assertThat(longest.until()).as("three days without a reading are borne, four are not").isEqualTo("2025-11-14");
        assertThat(longest.days()).isEqualTo(2);
        assertThat(longest.calendarDays()).isEqualTo(5);
        assertThat(longest.worst().value()).isEqualTo(13.4);
    }

    @Test
    void aDayThatCannotBeDecided_endsASpell() {
        WithinLimit nitrite = of(Series.NITRITE,
                seen("2026-01-12T14:00:00Z", Analyte.NITRITE, 0.3),
                new Observation(Instant.parse("2026-01-13T14:00:00Z"), Analyte.NITRITE, 0, 0.3, true, false),
                seen("2026-01-14T14:00:00Z", Analyte.NITRITE, 0.3));

        assertThat(nitrite.undecided()).isEqualTo(1);
        assertThat(nitrite.spell().orElseThrow().calendarDays()).isEqualTo(1);
        assertThat(of(Series.NITRITE, seen("2026-01-12T14:00:00Z", Analyte.NITRITE, 0.01)).spell()).isEmpty();
    }

    private static Observation seen(String at, Analyte analyte, double value) {
        return Observation.of(Instant.parse(at), analyte, value, 0);
    }

    private static WithinLimit of(Series series, Observation... observations) {
        List<Observation> season = Stream.of(observations).sorted(Comparator.comparing(Observation::at))
                .toList();
        Tank tank = new Tank(1, "b7k2mp", new Tank.Room(1, "Room 12", "s1", "Alderwhistle School"), ZONE,
                OptionalDouble.empty(), 1, 200, OptionalDouble.of(11), "sponge", Optional.empty(),
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(), "Cel",
                Optional.empty());
        Lot lot = new Lot(1, 1, 1, 200, Instant.parse("2025-11-04T15:00:00Z"), OptionalDouble.of(180),
                Optional.empty(), Optional.empty(), SeenOn.NOTHING, CountMethod.ONE_BY_ONE, 0);
        LotHistory lots = LotHistory.of(tank, List.of(lot), season, Instant.parse("2026-06-30T00:00:00Z"));
        return new LimitDays(tank, lots, season, Limits.DEFAULT).of(series);
    }
}
