package org.tankrounds.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.tankrounds.testing.Water.AS_OF;
import static org.tankrounds.testing.Water.FINE;
import static org.tankrounds.testing.Water.eggs;
import static org.tankrounds.testing.Water.feedingFish;
import static org.tankrounds.testing.Water.forecast;
import static org.tankrounds.testing.Water.read;
import static org.tankrounds.testing.Water.with;

import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.fish.Stage;
import org.tankrounds.water.Analyte;

/** What a coordinator would notice of a forecast, whatever the engine behind it. */
class ForecasterTest {

    @Test
    void steadyTank_isGivenLittleChanceAndNoHoursToALimit() {
        Forecast fine = forecast(feedingFish(), FINE.lastRead(0.1));
        assertThat(fine.chance()).isBetween(0.0, 0.1);
        assertThat(fine.hoursToLimit()).isEmpty();
        assertThat(fine.readingAgeHours().getAsDouble()).isCloseTo(2.4, within(0.01));
        assertThat(fine.reasons()).extracting(Reason::kind).contains(Reason.Kind.STEADY);
    }

    @Test
    void stoppedChiller_ranksOverASteadyTank() {
        List<Observation> warming = with(FINE.lastRead(1.5), read(1, Analyte.TEMPERATURE, 12.5, 0.25),
                read(0.5, Analyte.TEMPERATURE, 14.4, 0.25), read(0.05, Analyte.TEMPERATURE, 15.9, 0.25));
        Forecast stopped = forecast(feedingFish(), warming);
        Forecast steady = forecast(feedingFish(), FINE.lastRead(0.05));
        assertThat(Ranking.order(List.of(steady, stopped))).first().isSameAs(stopped);
        assertThat(stopped.driver()).isEqualTo(Driver.TEMPERATURE);
        assertThat(stopped.chance()).isGreaterThan(0.6);
        assertThat(stopped.hoursToLimit().getAsDouble()).isBetween(3.0, 48.0);
        assertThat(stopped.reasons().get(0).kind()).isEqualTo(Reason.Kind.CHILLER_LOOKS_STOPPED);
    }

    /** As in a file that holds two years, or a tank that was used before. */
    @Test
    void whatWasReadInAnEarlierSeason_doesNotCount() {
        List<Observation> readings = FINE.lastRead(0.1);
        List<Observation> twoYears = with(readings, read(260, Analyte.TEMPERATURE, 21, 0.25),
                read(260, Analyte.NITRITE, 2, 0.05), read(259, Analyte.DEATHS, 60, 0));
        assertThat(forecast(feedingFish(), twoYears)).isEqualTo(forecast(feedingFish(), readings));
        assertThat(forecast(TankFacts.of("told nothing"), with(readings, read(301, Analyte.DEATHS, 60, 0))))
                .isEqualTo(forecast(TankFacts.of("told nothing"), readings));
    }

    @Test
    void beyondTheLimitNow_isZeroHoursAway() {
        Forecast ammonia = forecast(feedingFish(), FINE.withTotalAmmoniaMgPerL(4).lastRead(0.1));
        assertThat(ammonia.hoursToLimit()).hasValue(0);
        assertThat(ammonia.chance()).isBetween(0.9, 1.0);
        assertThat(ammonia.driver()).isEqualTo(Driver.UN_IONISED_AMMONIA);
        assertThat(ammonia.reasons().get(0).kind()).isEqualTo(Reason.Kind.BEYOND_LIMIT);
    }

    @Test
    void chloride_lowersTheRiskOfTheSameNitrite() {
        List<Observation> readings = FINE.withNitriteMgPerL(0.25).lastRead(0.1);
        Forecast soft = forecast(feedingFish().chlorideMgPerL(2), readings);
        Forecast salted = forecast(feedingFish().chlorideMgPerL(40), readings);
        Forecast unknown = forecast(feedingFish().chlorideMgPerL(null), readings);
        Forecast five = forecast(feedingFish().chlorideMgPerL(5), readings);
        assertThat(soft.driver()).isEqualTo(Driver.NITRITE);
        assertThat(soft.chance()).isGreaterThan(salted.chance() + 0.5);
        assertThat(soft.exposure()).isGreaterThan(10 * salted.exposure());
        assertThat(unknown.exposure()).isEqualTo(five.exposure());
    }

    @Test
    void measuredChloride_countsBeforeTheSourceWaters() {
        List<Observation> readings = FINE.withNitriteMgPerL(0.25).lastRead(0.1);
        Forecast salted = forecast(feedingFish().chlorideMgPerL(2),
                with(readings, read(0.2, Analyte.CHLORIDE, 60, 5)));
        assertThat(salted.chance()).isLessThan(0.3);
    }

    @Test
    void sameWater_isWorseForEggsThanForFeedingFish() {
        List<Observation> warm = FINE.withTemperatureC(14).lastRead(0.1);
        Forecast young = forecast(eggs(), warm);
        Forecast feeding = forecast(feedingFish(), warm);
        assertThat(young.stage().isBeforeFirstFeeding()).isTrue();
        assertThat(feeding.stage()).isEqualTo(Stage.FEEDING);
        assertThat(young.hoursToLimit()).hasValue(0);
        assertThat(feeding.chance()).isLessThan(0.2);

        List<Observation> airless = FINE.withOxygenMgPerL(7).lastRead(0.1);
        assertThat(forecast(eggs(), airless).driver()).isEqualTo(Driver.DISSOLVED_OXYGEN);
        assertThat(forecast(eggs(), airless).chance())
                .isGreaterThan(forecast(feedingFish(), airless).chance() + 0.5);
    }

    @Test
    void exposure_growsWithTheFishAlive() {
        List<Observation> bad = FINE.withTotalAmmoniaMgPerL(3).lastRead(0.1);
        Forecast hundred = forecast(feedingFish(), bad);
        Forecast fifty = forecast(feedingFish().eggs(50), bad);
        assertThat(hundred.exposure()).isBetween(1.7 * fifty.exposure(), 3 * fifty.exposure());
        assertThat(hundred.chance()).isCloseTo(fifty.chance(), within(0.1));
        assertThat(hundred.fishAlive()).isEqualTo(100);
    }

    @Test
    void deathsCounted_leaveTheRestAlive() {
        Forecast forecast = forecast(feedingFish(),
                with(FINE.lastRead(0.1), read(20, Analyte.DEATHS, 12, 0.5),
                read(40, Analyte.DEATHS, 3, 0.5)));
        assertThat(forecast.fishAlive()).isEqualTo(85);
    }

    /** The water was read and found fine; still something is wrong that nobody has read. */
    @Test
    void manyDeaths_raiseChanceAndExposureOfATankThatReadsFine() {
        Forecast none = forecast(feedingFish(), with(FINE.lastRead(0.1), read(0.1, Analyte.DEATHS, 0, 0.5)));
        Forecast many = forecast(feedingFish(), with(FINE.lastRead(0.1), read(0.1, Analyte.DEATHS, 12, 0.5)));
        assertThat(many.chance()).isGreaterThan(3 * none.chance());
        assertThat(many.exposure()).isGreaterThan(2 * none.exposure());
        assertThat(many.driver()).isEqualTo(Driver.DEATHS);
        assertThat(many.reasons()).extracting(Reason::kind).contains(Reason.Kind.DEATHS);
    }

    @Test
    void deaths_raiseTheChanceOfATankNobodyHasReadForAWeek() {
        Forecast none = forecast(feedingFish(), FINE.lastRead(8));
        Forecast some = forecast(feedingFish(), with(FINE.lastRead(8), read(0.1, Analyte.DEATHS, 6, 0.5)));
        assertThat(some.chance()).isGreaterThan(none.chance() * 1.5);
    }

    @Test
    void waterChangeAfterTheReading_lowersTheRiskOfWhatWasRead() {
        List<Observation> readings = FINE.withTotalAmmoniaMgPerL(3).lastRead(1);
        Forecast changed = forecast(feedingFish(), with(readings, read(0.5, Analyte.WATER_CHANGE, 50, 0.5)));
        assertThat(changed.exposure()).isLessThan(forecast(feedingFish(), readings).exposure() / 2);
    }

    @Test
    void chlorine_isDrivenOutByAirWithinDays() {
        Forecast fresh = forecast(feedingFish(),
                with(FINE.lastRead(0.1), read(0.1, Analyte.CHLORINE, 0.2, 0.1)));
        Forecast old = forecast(feedingFish(), with(FINE.lastRead(0.1), read(6, Analyte.CHLORINE, 0.2, 0.1)));
        assertThat(fresh.chance()).isGreaterThan(0.9);
        assertThat(old.chance()).isLessThan(0.1);
    }

    @Test
    void mistypedCountOfDeaths_leavesSomeFishAlive() {
        Forecast forecast = forecast(feedingFish(),
                with(FINE.lastRead(0.1), read(9, Analyte.DEATHS, 5000, 0.5)));
        assertThat(forecast.fishAlive()).isBetween(1, 100);
        assertThat(forecast.exposure()).isPositive();
    }

    @Test
    void readingsAfterTheMomentAskedAbout_doNotCount() {
        List<Observation> known = FINE.lastRead(0.1);
        Forecast before = forecast(feedingFish(), known);
        Forecast with = forecast(feedingFish(), with(known, read(-0.01, Analyte.NITRITE, 4, 0.1),
                read(-1, Analyte.DEATHS, 50, 0.5), read(-2, Analyte.TEMPERATURE, 25, 0.25)));
        assertThat(with).usingRecursiveComparison().isEqualTo(before);
    }

    @Test
    void readingAtTheMomentAskedAbout_counts() {
        Forecast forecast = forecast(feedingFish(),
                with(FINE.lastRead(1), read(0, Analyte.CHLORINE, 0.5, 0.1)));
        assertThat(forecast.driver()).isEqualTo(Driver.CHLORINE);
        assertThat(forecast.readingAgeHours()).hasValue(0);
    }

    @Test
    void orderOfReadings_isOfNoAccount() {
        List<Observation> readings = with(FINE.withNitriteMgPerL(0.2).lastRead(0.1),
                read(0.1, Analyte.DEATHS, 2, 0.5), read(3, Analyte.WATER_CHANGE, 25, 0.5));
        Forecast inOrder = forecast(feedingFish(), readings);
        for (long seed = 1; seed <= 5; seed++) {
            Collections.shuffle(readings, new Random(seed));
            assertThat(forecast(feedingFish(), readings)).as("seed %d", seed)
                    .usingRecursiveComparison().isEqualTo(inOrder);
        }
    }

    @Test
    void tankWithoutReadings_isStillGivenAForecast() {
        Forecast unknown = forecast(TankFacts.of("bare"), List.of());
        assertThat(unknown.chance()).isBetween(0.05, 0.95);
        assertThat(unknown.exposure()).isPositive();
        assertThat(unknown.driver()).isEqualTo(Driver.SILENCE);
        assertThat(unknown.readingAgeHours()).isEmpty();
        assertThat(unknown.reasons()).extracting(Reason::kind).contains(Reason.Kind.NO_READINGS);
    }

    @Test
    void forecast_showsTheSpreadOfEverySeriesInOrder() {
        Forecast forecast = forecast(feedingFish(), FINE.lastRead(2));
        assertThat(forecast.asOf()).isEqualTo(AS_OF);
        assertThat(forecast.series()).hasSize(5).allSatisfy(series -> {
            assertThat(series.fan()).hasSize(13);
            assertThat(series.limit()).isPresent();
            assertThat(series.fan()).allSatisfy(point -> assertThat(List.of(point.q05(), point.q25(),
                    point.q50(), point.q75(), point.q95())).isSorted());
        });
        FanPoint temperature = forecast.series().get(0).fan().get(0);
        assertThat(temperature.q50()).isCloseTo(11, within(0.5));
    }
}
