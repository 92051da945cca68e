package org.tankrounds.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.tankrounds.testing.Water.AS_OF;
import static org.tankrounds.testing.Water.FINE;
import static org.tankrounds.testing.Water.eggs;
import static org.tankrounds.testing.Water.feedingFish;
import static org.tankrounds.testing.Water.forecast;
import static org.tankrounds.testing.Water.read;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.testing.Water;
import org.tankrounds.water.Analyte;

/** Why a tank stands where it does, with the numbers that a person reads. */
class ReasonsTest {

    @Test
    void reasons_areNamedLargestFirst() {
        Forecast forecast = forecast(feedingFish().chlorideMgPerL(2), with(
                FINE.withNitriteMgPerL(0.4).withTotalAmmoniaMgPerL(2).lastRead(0.1),
                read(0.1, Analyte.DEATHS, 4, 0.5)));
        assertThat(forecast.reasons()).extracting(reason -> -reason.share()).isSorted();
        assertThat(forecast.reasons().get(0).driver()).hasValue(forecast.driver());
    }

    @Test
    void risingNitrite_isToldWithItsMovementAndItsAge() {
        Forecast forecast = forecast(feedingFish().chlorideMgPerL(20), with(nitrite(0.05, 9), nitrite(0.1, 6),
                nitrite(0.16, 3), nitrite(0.34, 0.25)));
        Reason nitrite = only(forecast, Driver.NITRITE,
                Reason.Kind.HEADED_FOR_LIMIT, Reason.Kind.BEYOND_LIMIT);
        assertThat(nitrite.value()).hasValue(0.34);
        assertThat(nitrite.unit()).isEqualTo("mg/L as N");
        assertThat(nitrite.limit()).hasValue(0.36);
        assertThat(nitrite.previous()).hasValue(0.16);
        assertThat(nitrite.change().getAsDouble()).isCloseTo(0.18, within(1e-9));
        assertThat(nitrite.overHours()).hasValue(66);
        assertThat(nitrite.at()).hasValue(AS_OF.minus(Duration.ofHours(6)));
    }

    /** 3 mg/L as NO₂ after nothing: one word against another, and the second is told. */
    @Test
    void limitMetByTheReadingThatDiffers_isToldWithThatReading() {
        Forecast forecast = forecast(feedingFish(), List.of(nitrite(0, 2), nitrite(0.913, 0.01)));
        Reason nitrite = only(forecast, Driver.NITRITE, Reason.Kind.BEYOND_LIMIT);
        assertThat(nitrite.value()).hasValue(0.913);
        assertThat(nitrite.at()).hasValue(AS_OF.minus(Duration.ofSeconds(864)));
        assertThat(nitrite.previous()).hasValue(0);
    }

    /** A number and "beyond its limit" come from the same reading, whatever was read before. */
    @ParameterizedTest(name = "{0} after {1}")
    @CsvSource({"0.05, 0.913", "0.1, 0.6", "0.2, 3", "0.913, 0", "0, 15"})
    void limitSaidToBeMetNow_isToldWithANumberBeyondIt(double before, double now) {
        for (Forecast forecast : List.of(
                forecast(feedingFish(), List.of(nitrite(before, 2), nitrite(now, 0.01))),
                forecast(feedingFish(), List.of(nitrite(before, 4), nitrite(before, 2), nitrite(now, 0.01))),
                forecast(feedingFish(), with(FINE.withNitriteMgPerL(before).lastRead(1), nitrite(now, 0.01))))) {
            assertThat(forecast.reasons()).allSatisfy(reason -> {
                if (reason.kind() == Reason.Kind.BEYOND_LIMIT) {
                    assertThat(reason.value().getAsDouble()).isGreaterThan(reason.limit().getAsDouble());
                }
            });
        }
    }

    @Test
    void littleChloride_isNamedWithTheLimitItMakes() {
        Forecast forecast =
                forecast(feedingFish().chlorideMgPerL(2), FINE.withNitriteMgPerL(0.4).lastRead(0.1));
        Reason chloride = only(forecast, Driver.NITRITE, Reason.Kind.LOW_CHLORIDE);
        assertThat(chloride.value()).hasValue(2);
        assertThat(chloride.limit().getAsDouble()).isCloseTo(0.06, within(1e-9));
    }

    @Test
    void highPh_isNamedWithThePercentageItMakesHarmful() {
        Forecast forecast = forecast(feedingFish(), FINE.withPh(8.4).withTotalAmmoniaMgPerL(1).lastRead(0.1));
        Reason ph = only(forecast, Driver.UN_IONISED_AMMONIA, Reason.Kind.HIGH_PH_MAKES_AMMONIA_HARMFUL);
        assertThat(ph.value().getAsDouble()).isCloseTo(8.4, within(0.1));
        // Emerson at pH 8.4 and 11 °C: 4.8 %.
        assertThat(ph.change().getAsDouble()).isCloseTo(4.8, within(1.0));
    }

    @Test
    void youngFilter_isNamedWithTheDayOfFirstFeeding() {
        Instant fedFirst = AS_OF.minus(Duration.ofDays(20));
        Forecast forecast = forecast(feedingFish().eggsReceivedAt(AS_OF.minus(Duration.ofDays(45)))
                .firstFeedingAt(fedFirst), FINE.withTotalAmmoniaMgPerL(4).lastRead(0.1));
        Reason filter = only(forecast, Driver.UN_IONISED_AMMONIA, Reason.Kind.FILTER_NOT_RIPE);
        assertThat(filter.since()).hasValue(fedFirst);
        assertThat(filter.overHours()).hasValue(20 * 24);
    }

    /** US EPA national criteria list: alkalinity of 20 mg/L as CaCO3 or more. */
    @Test
    void usedUpAlkalinity_isNamedWhileThePhStillHolds() {
        Forecast forecast = forecast(feedingFish(),
                with(FINE.withPh(6.8).lastRead(0.1), read(2, Analyte.ALKALINITY, 12, 5)));
        assertThat(only(forecast, Driver.PH, Reason.Kind.ALKALINITY_LOW).value()).hasValue(12);
        assertThat(forecast.reasons()).extracting(Reason::kind).doesNotContain(Reason.Kind.STEADY);
    }

    @Test
    void littleAlkalinity_isNamedWhereThePhIsLow() {
        Forecast forecast = forecast(feedingFish(),
                with(FINE.withPh(5.7).lastRead(0.1), read(2, Analyte.ALKALINITY, 12, 5)));
        Reason alkalinity = only(forecast, Driver.PH, Reason.Kind.ALKALINITY_LOW);
        assertThat(alkalinity.value()).hasValue(12);
        Reason ph = only(forecast, Driver.PH, Reason.Kind.BEYOND_LIMIT);
        assertThat(ph.limit()).hasValue(6);
    }

    @Test
    void deaths_areToldWithTheirNumberAndTime() {
        Forecast forecast = forecast(feedingFish(), with(FINE.lastRead(0.1), read(2, Analyte.DEATHS, 4, 0.5),
                read(0.5, Analyte.DEATHS, 3, 0.5), read(5, Analyte.DEATHS, 9, 0.5)));
        Reason deaths = only(forecast, Driver.DEATHS, Reason.Kind.DEATHS);
        assertThat(deaths.count()).hasValue(7);
        assertThat(deaths.overHours()).hasValue(4.5 * 24);
        assertThat(deaths.at()).hasValue(AS_OF.minus(Duration.ofHours(12)));
    }

    /** Chlorine is forty times beyond; what else the fish meet is named all the same. */
    @Test
    void troubleBesideChlorine_isNamed() {
        for (Water water : List.of(FINE.withNitriteMgPerL(0.5), FINE.withTemperatureC(19.5),
                FINE.withOxygenMgPerL(5), FINE.withTotalAmmoniaMgPerL(3).withPh(7.6))) {
            Forecast alone = forecast(feedingFish(), water.lastRead(0.1));
            Forecast beside = forecast(feedingFish(),
                    with(water.lastRead(0.1), read(0.05, Analyte.CHLORINE, 0.5, 0.1)));
            assertThat(beside.reasons().get(0).driver()).hasValue(Driver.CHLORINE);
            assertThat(beside.reasons()).extracting(Reason::driver).contains(alone.reasons().get(0).driver());
        }
    }

    /** Un-ionised ammonia is 28 times beyond, which leaves the others a share of a fortieth. */
    @Test
    void everyLimitThatIsPassed_isNamed_howeverMuchWorseAnotherIs() {
        Forecast forecast = forecast(feedingFish(), FINE.withTotalAmmoniaMgPerL(8).withPh(8)
                .withNitriteMgPerL(0.5).withTemperatureC(19.5).lastRead(0.1));
        assertThat(forecast.driver()).isEqualTo(Driver.UN_IONISED_AMMONIA);
        only(forecast, Driver.NITRITE, Reason.Kind.BEYOND_LIMIT);
        only(forecast, Driver.TEMPERATURE, Reason.Kind.BEYOND_LIMIT);
    }

    @Test
    void deathsEnMasse_areNamedAmongTheFirst_withTheMostOfADay() {
        Forecast forecast = forecast(feedingFish(), with(FINE.withTotalAmmoniaMgPerL(6).withPh(7.8).lastRead(0.1),
                read(1.5, Analyte.DEATHS, 4, 0.5), read(0.3, Analyte.DEATHS, 9, 0.5),
                read(0.1, Analyte.DEATHS, 6, 0.5)));
        Reason deaths = only(forecast, Driver.DEATHS, Reason.Kind.DEATHS);
        assertThat(deaths.count()).hasValue(19);
        assertThat(deaths.value()).hasValue(15);
        assertThat(forecast.reasons().indexOf(deaths)).isLessThan(3);
    }

    @Test
    void silence_isToldWithItsAgeAndTheOddsThatItMeans() {
        Forecast forecast = forecast(feedingFish(), FINE.lastRead(14));
        Reason silence = only(forecast, Driver.SILENCE, Reason.Kind.SILENCE);
        assertThat(silence.overHours()).hasValue(14 * 24);
        assertThat(silence.oneIn().getAsDouble()).isCloseTo(1 / forecast.chance(), within(0.1));
    }

    @Test
    void seriesLongUnreadBesideOthers_isNamed() {
        List<Observation> nitriteOnly = with(nitrite(0.02, 40), read(0.1, Analyte.TEMPERATURE, 11, 0.25),
                read(3, Analyte.TEMPERATURE, 11, 0.25), read(6, Analyte.TEMPERATURE, 11, 0.25));
        Forecast forecast = forecast(feedingFish().chlorideMgPerL(1), nitriteOnly);
        Reason nitrite = only(forecast, Driver.NITRITE, Reason.Kind.SERIES_NOT_READ);
        assertThat(nitrite.overHours()).hasValue(40 * 24);
        assertThat(nitrite.value()).hasValue(0.02);
    }

    @Test
    void eggs_areToldWhenTheyHatchAndFeed() {
        Forecast forecast = forecast(eggs().thermalUnitsC(230), FINE.lastRead(0.1));
        Reason hatch = forecast.reasons().stream()
                .filter(r -> r.kind() == Reason.Kind.HATCH_EXPECTED).findFirst().orElseThrow();
        // 230 °C-days count as 0.715 of the way; at 11 °C the rest takes 28.324 × 0.285 = 8.1 d, one is over.
        Instant expected = AS_OF.plus(Duration.ofHours(Math.round(7.07 * 24)));
        assertThat(hatch.earliest().get()).isBefore(expected);
        assertThat(hatch.latest().get()).isAfter(expected);
        assertThat(forecast.reasons()).extracting(Reason::kind).contains(Reason.Kind.FIRST_FEEDING_EXPECTED)
                .doesNotContain(Reason.Kind.FEEDING_SINCE);
    }

    @Test
    void unknownEggs_areNotToldOf() {
        Forecast forecast = forecast(TankFacts.of("bare"), List.of());
        assertThat(forecast.reasons()).extracting(Reason::kind)
                .doesNotContain(Reason.Kind.HATCH_EXPECTED, Reason.Kind.FIRST_FEEDING_EXPECTED);
    }

    private static Observation nitrite(double mgPerL, double daysAgo) {
        return read(daysAgo, Analyte.NITRITE, mgPerL, 0.025);
    }

    private static List<Observation> with(Observation first, Observation... more) {
        return Water.with(List.of(first), more);
    }

    private static List<Observation> with(List<Observation> readings, Observation... more) {
        return Water.with(readings, more);
    }

    private static Reason only(Forecast forecast, Driver driver, Reason.Kind... kinds) {
        List<Reason> found = forecast.reasons().stream()
                .filter(reason -> List.of(kinds).contains(reason.kind()))
                .filter(reason -> reason.driver().filter(driver::equals).isPresent()).toList();
        assertThat(found).as("%s", forecast.reasons()).hasSize(1);
        return found.get(0);
    }

    /** Water at 11 °C all along: what makes it a worry is much ammonia that a low pH keeps harmless. */
    @ParameterizedTest(name = "pH {1}, ammonia {0} mg/L as N")
    @CsvSource({"1, 6.6", "2, 6.6", "1, 6.4", "1, 7.3"})
    void whatMovedTheChance_isNamed_whereNoCourseOfTheLookAheadShowsIt(double ammoniaMgPerL, double ph) {
        Forecast forecast = forecast(feedingFish(),
                FINE.withTotalAmmoniaMgPerL(ammoniaMgPerL).withPh(ph).lastRead(0.1));
        assertThat(forecast.chance()).isGreaterThan(0.2);
        assertThat(forecast.driver()).isIn(Driver.PH, Driver.UN_IONISED_AMMONIA);
        assertThat(forecast.reasons().get(0).driver()).hasValue(forecast.driver());
        assertThat(forecast.reasons()).noneMatch(reason -> reason.driver().equals(Optional.of(Driver.TEMPERATURE)));
    }
}
