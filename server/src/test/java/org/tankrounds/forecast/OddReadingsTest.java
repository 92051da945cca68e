package org.tankrounds.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.tankrounds.testing.Water.FINE;
import static org.tankrounds.testing.Water.feedingFish;
import static org.tankrounds.testing.Water.forecast;
import static org.tankrounds.testing.Water.read;
import static org.tankrounds.testing.Water.with;

import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.belief.BeliefFilter;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.testing.Water;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.OxygenSaturation;

/** Slips of the pen: one odd number is not believed at once, two that agree are. */
class OddReadingsTest {
    private static final List<Observation> CALM = FINE.lastRead(1);
    /** Less than even: of seasons played in worlds that differ, most such values were slips. */
    private static final double MOST_OF_A_SLIP = 0.4;

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"TEMPERATURE, 54", "TEMPERATURE, 30", "NITRITE, 3", "PH, 9.6", "TOTAL_AMMONIA, 8"})
    void loneOutlier_movesTheChanceLittle(Analyte analyte, double value) {
        Forecast once = forecast(feedingFish(), with(CALM, read(0.2, analyte, value, 0.1)));
        assertThat(once.chance()).isLessThan(MOST_OF_A_SLIP);
    }

    /** Ammonia builds up over days, but air stones stop within the hour. */
    @Test
    void loneReadingWithoutOxygen_isAsLikelyRightAsWrong() {
        Forecast once = forecast(feedingFish(), with(CALM, read(0.2, Analyte.DISSOLVED_OXYGEN, 2, 0.1)));
        assertThat(once.chance()).isBetween(0.35, 0.65);
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"TEMPERATURE, 30", "TEMPERATURE, 19.5", "NITRITE, 3", "PH, 9.6", "TOTAL_AMMONIA, 8",
        "DISSOLVED_OXYGEN, 2"})
    void twoThatAgree_areBelieved(Analyte analyte, double value) {
        Forecast twice = forecast(feedingFish(), with(CALM, read(0.5, analyte, value, 0.1),
                read(0.1, analyte, value, 0.1)));
        assertThat(twice.chance()).isGreaterThan(0.65);
        assertThat(twice.hoursToLimit()).hasValue(0);
    }

    /** Only tanks in general speak against it, and this one may be the exception. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"TOTAL_AMMONIA, 3", "TOTAL_AMMONIA, 6", "NITRITE, 1", "NITRITE, 5"})
    void firstReadingOfATank_isBelievedHoweverHigh(Analyte analyte, double value) {
        Forecast forecast = forecast(feedingFish(), List.of(read(0.1, analyte, value, 0.25)));
        assertThat(forecast.chance()).isGreaterThan(0.7);
        assertThat(forecast.driver()).isIn(Driver.UN_IONISED_AMMONIA, Driver.NITRITE);
    }

    /** A file pasted together from two exports, or sent twice: the same line again is no second look. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"TEMPERATURE, 30", "NITRITE, 3", "PH, 9.6", "TOTAL_AMMONIA, 8", "DISSOLVED_OXYGEN, 2", "DEATHS, 3",
        "WATER_CHANGE, 30"})
    void readingThatIsThereTwice_countsOnce(Analyte analyte, double value) {
        Observation odd = read(0.2, analyte, value, 0.1);
        assertThat(forecast(feedingFish(), with(CALM, odd, odd)))
                .usingRecursiveComparison().isEqualTo(forecast(feedingFish(), with(CALM, odd)));
    }

    @Test
    void everyReadingTwice_isAsOnce() {
        assertThat(forecast(feedingFish(), with(CALM, CALM.toArray(Observation[]::new))))
                .usingRecursiveComparison().isEqualTo(forecast(feedingFish(), CALM));
    }

    @Test
    void twoThatDisagree_areNotBelieved() {
        Forecast forecast = forecast(feedingFish(), with(CALM, read(0.5, Analyte.TEMPERATURE, 30, 0.1),
                read(0.1, Analyte.TEMPERATURE, 1, 0.1)));
        assertThat(forecast.chance()).isLessThan(0.25);
    }

    @Test
    void fahrenheitInACelsiusField_isTakenAsFahrenheit() {
        Forecast forecast = forecast(feedingFish(), with(CALM, read(0.1, Analyte.TEMPERATURE, 54, 0.5)));
        assertThat(forecast.chance()).isLessThan(0.15);
        assertThat(forecast.series().get(0).fan().get(0).q50()).isCloseTo(12.2, within(1.0));
    }

    /** A number that no water shows in its own scale is one in the other, whatever the tank was before. */
    @ParameterizedTest(name = "{0} °C, noted as {1} °C")
    @CsvSource({"17, -8.33", "19, -7.22", "20, -6.67", "25, -3.89", "5.56, 42", "7.22, 45", "11.11, 52", "16.67, 62"})
    void scaleMixedUp_isAsInTheRightScale(double temperatureC, double notedC) {
        List<Observation> right = FINE.withTemperatureC(temperatureC).lastRead(0.1);
        List<Observation> mixedUp = FINE.withTemperatureC(notedC).lastRead(0.1);
        assertThat(chance(mixedUp)).isCloseTo(chance(right), within(0.1));
        assertThat(chance(mixedUp.subList(0, 1))).isCloseTo(chance(right.subList(0, 1)), within(0.3));
        List<Observation> before = FINE.lastRead(6.1);
        assertThat(chance(with(before, mixedUp.subList(0, 15).toArray(Observation[]::new))))
                .isCloseTo(chance(with(before, right.subList(0, 15).toArray(Observation[]::new))), within(0.1));
    }

    /**
     * By itself it is as if the thermometer's scale had been noted with it:
     * the newest reading may be the only warm one.
     */
    @ParameterizedTest(name = "{0} °F")
    @ValueSource(doubles = {51.8, 56, 58, 62.6, 66.2, 69.8, 73.4})
    void loneReadingInFahrenheit_isAsInTheRightScale(double fahrenheit) {
        TankFacts.Builder eggs = Water.eggs();
        Observation right = read(0.1, Analyte.TEMPERATURE, (fahrenheit - 32) / 1.8, 0.5 / 1.8);
        Observation mixedUp = read(0.1, Analyte.TEMPERATURE, fahrenheit, 0.5);
        assertThat(chance(with(CALM, mixedUp))).isCloseTo(chance(with(CALM, right)), within(0.02));
        assertThat(forecast(eggs, with(CALM, mixedUp)).chance())
                .isCloseTo(forecast(eggs, with(CALM, right)).chance(), within(0.02));
    }

    /** 25 mg/L is more than water holds; as 25 % it is less than a classroom's tank has ever shown. */
    @Test
    void firstOxygenOfAllThatNoUnitExplains_makesNoAlarm() {
        List<Observation> neverRead = CALM.stream().filter(o -> o.analyte() != Analyte.DISSOLVED_OXYGEN).toList();
        assertThat(chance(with(neverRead, doubted(0.1, Analyte.DISSOLVED_OXYGEN, 25)))).isLessThan(0.2);
        assertThat(chance(with(neverRead, doubted(0.115, Analyte.DISSOLVED_OXYGEN, 25),
                doubted(0.1, Analyte.DISSOLVED_OXYGEN, 22)))).as("read twice").isGreaterThan(0.6);
    }

    /** A meter that was set to show the share of saturation. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"30", "40", "49"})
    void oxygenInPercentUnderMgPerL_isTakenAsPercent(double percent) {
        List<Observation> right = FINE.withOxygenMgPerL(percent / 100 * OxygenSaturation.mgPerL(11, 0)).lastRead(0.1);
        assertThat(chance(FINE.withOxygenMgPerL(percent).lastRead(0.1))).isCloseTo(chance(right), within(0.1));
        Observation lone = read(0.05, Analyte.DISSOLVED_OXYGEN, percent, 0.5);
        assertThat(chance(with(FINE.lastRead(0.1), lone))).isLessThan(0.35);
    }

    /** Such as fish do not live in for an hour, or no tap brings: a dry electrode, a column mixed up. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"PH, 0", "PH, 0.74", "PH, 14", "DISSOLVED_OXYGEN, 0", "DISSOLVED_OXYGEN, 1.02", "CHLORINE, 7.4",
        "CHLORINE, 10"})
    void loneReadingThatNoFishOutlives_tellsOfTheReader(Analyte analyte, double value) {
        Observation odd = doubted(0.2, analyte, value);
        assertThat(chance(with(CALM, odd))).isLessThan(chance(CALM) + 0.1);
        List<Observation> neverReadBefore = CALM.stream().filter(o -> o.analyte() != analyte).toList();
        assertThat(chance(with(neverReadBefore, odd))).isLessThan(chance(neverReadBefore) + 0.15);
    }

    /** Nobody has looked twice at the same slip. */
    @Test
    void oxygenFarTooLow_readTwice_isBelieved() {
        assertThat(chance(with(CALM, doubted(0.3, Analyte.DISSOLVED_OXYGEN, 1),
                doubted(0.1, Analyte.DISSOLVED_OXYGEN, 1.1)))).isGreaterThan(0.8);
    }

    /** As the service and the ranking of files mark what is unlikely. */
    private static Observation doubted(double daysAgo, Analyte analyte, double value) {
        Observation read = read(daysAgo, analyte, value, 0.1);
        return new Observation(read.at(), analyte, value, 0.1, false, true);
    }

    /** Fish-hours beyond a limit order the board: a slip in the stock must not head it for good. */
    @Test
    void stockThatTheTankCannotHold_isTakenAsTheUsual() {
        List<Observation> bad = FINE.withNitriteMgPerL(0.4).lastRead(0.1);
        Forecast usual = forecast(feedingFish().eggs(BeliefFilter.EGGS_WHERE_UNKNOWN), bad);
        assertThat(forecast(feedingFish().eggs(10_000_000), bad).exposure()).isEqualTo(usual.exposure());
        assertThat(forecast(feedingFish().eggs(2000), bad).exposure()).isGreaterThan(10 * usual.exposure());
    }

    @Test
    void noStockWhereFishAreFed_isTakenAsTheUsual() {
        List<Observation> fed = with(FINE.withNitriteMgPerL(0.4).lastRead(0.1), read(1, Analyte.FEED, 2, 0));
        assertThat(forecast(feedingFish().eggs(0), fed).exposure()).isEqualTo(
                forecast(feedingFish().eggs(BeliefFilter.EGGS_WHERE_UNKNOWN), fed).exposure());
    }

    private static double chance(List<Observation> readings) {
        return forecast(feedingFish(), readings).chance();
    }

    @Test
    void readingSetAside_isNamedAndNobodyCallsTheTankSteady() {
        Forecast forecast = forecast(feedingFish(), with(CALM, read(0.1, Analyte.NITRITE, 3, 0.05)));
        assertThat(forecast.reasons()).anySatisfy(reason -> {
            assertThat(reason.kind()).isEqualTo(Reason.Kind.READING_SET_ASIDE);
            assertThat(reason.value()).hasValue(3);
        });
        assertThat(forecast.reasons()).extracting(Reason::kind).doesNotContain(Reason.Kind.STEADY);
    }

    @Test
    void readingSetAsideLongAgo_isForgotten() {
        List<Observation> calmSince = with(FINE.lastRead(9), read(8.5, Analyte.NITRITE, 3, 0.05),
                read(0.2, Analyte.TEMPERATURE, 11, 0.5));
        assertThat(forecast(feedingFish(), calmSince).reasons()).extracting(Reason::kind)
                .doesNotContain(Reason.Kind.READING_SET_ASIDE);
    }

    @Test
    void markedAsDoubtful_countsForLess() {
        Observation plain = read(0.1, Analyte.NITRITE, 0.6, 0.05);
        Observation doubtful = new Observation(plain.at(), plain.analyte(), plain.value(), 0.05, false, true);
        assertThat(forecast(feedingFish(), with(CALM, doubtful)).chance())
                .isLessThan(forecast(feedingFish(), with(CALM, plain)).chance());
    }

    /** What is marked as doubtful waits for somebody to say that it is right. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"DEATHS, 90", "CHLORIDE, 900", "WATER_CHANGE, 95", "ALKALINITY, 900"})
    void doubtfulCountOrTest_hidesNoBadWater(Analyte analyte, double value) {
        List<Observation> bad = FINE.withNitriteMgPerL(0.4).lastRead(0.1);
        Observation doubtful = new Observation(read(0.05, analyte, value, 0.5).at(), analyte, value, 0.5, false, true);
        assertThat(forecast(feedingFish(), with(bad, doubtful)).exposure())
                .isGreaterThan(0.85 * forecast(feedingFish(), bad).exposure());
    }

    /** 9 becomes 90 by a slip, and a number from another box cannot be the lot's at all. */
    @ParameterizedTest(name = "{1} deaths {0} days ago")
    @CsvSource({"10, 90", "60, 90", "60, 5000", "10, 101"})
    void mistypedDeaths_hideBadWaterByHalfAtMost(double daysAgo, double count) {
        List<Observation> bad = FINE.withNitriteMgPerL(0.4).lastRead(0.1);
        Forecast mistyped = forecast(feedingFish(), with(bad, read(daysAgo, Analyte.DEATHS, count, 0)));
        assertThat(mistyped.exposure()).isGreaterThan(0.45 * forecast(feedingFish(), bad).exposure());
    }

    @Test
    void deathsCountedDayAfterDay_areBelieved() {
        List<Observation> dying = with(CALM, read(5, Analyte.DEATHS, 30, 0), read(4, Analyte.DEATHS, 40, 0),
                read(3, Analyte.DEATHS, 20, 0), read(2, Analyte.DEATHS, 4, 0));
        assertThat(forecast(feedingFish(), dying).fishAlive()).isEqualTo(6);
    }

    @ParameterizedTest(name = "then {0}")
    @CsvSource({"30, 10", "60, 5"})
    void mostOfALotDead_isBelievedOnceTheNextCountIsLargeToo(double next, int alive) {
        Observation most = read(5, Analyte.DEATHS, 60, 0);
        assertThat(forecast(feedingFish(), with(CALM, most)).fishAlive()).isEqualTo(50);
        assertThat(forecast(feedingFish(), with(CALM, most, read(4, Analyte.DEATHS, next, 0))).fishAlive())
                .isEqualTo(alive);
    }

    @Test
    void fewDeadAfterAMistypedCount_doNotBearItOut() {
        List<Observation> mistyped = with(CALM, read(5, Analyte.DEATHS, 90, 0), read(4, Analyte.DEATHS, 3, 0));
        assertThat(forecast(feedingFish(), mistyped).fishAlive()).isEqualTo(47);
    }

    @ParameterizedTest(name = "source known: {0}")
    @CsvSource({"true", "false"})
    void mistypedChloride_hidesNoBadWater(boolean sourceKnown) {
        TankFacts.Builder facts = sourceKnown ? feedingFish() : feedingFish().chlorideMgPerL(null);
        List<Observation> bad = FINE.withNitriteMgPerL(0.4).lastRead(0.1);
        assertThat(forecast(facts, with(bad, read(10, Analyte.CHLORIDE, 900, 0.5))))
                .usingRecursiveComparison().isEqualTo(forecast(facts, bad));
    }

    /** The column says °C, the class means °F all along: then a warming is one. */
    @Test
    void fahrenheitInTheColumnOfCelsiusAllSeason_warmsAllTheSame() {
        assertThat(forecast(feedingFish(), warming(false)).chance())
                .isCloseTo(forecast(feedingFish(), warming(true)).chance(), within(0.1))
                .isGreaterThan(0.6);
    }

    /** A visitor's Celsius among them, and a number that is no water in degrees Fahrenheit, are what they say. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"20", "22", "25"})
    void celsiusAmongFahrenheit_isCelsius(double celsius) {
        List<Observation> run = FINE.lastRead(0.1).stream().filter(o -> o.analyte() != Analyte.TEMPERATURE).toList();
        for (int day = 1; day <= 20; day++) {
            run = with(run, fahrenheit(2.1 + day, day == 7 ? 11 : 52, false));
        }
        run = with(run, read(1.1, Analyte.TEMPERATURE, celsius - 2, 0.5), read(0.1, Analyte.TEMPERATURE, celsius, 0.5));
        assertThat(forecast(feedingFish(), run).chance()).isGreaterThan(0.6);
        assertThat(forecast(feedingFish(), run).reasons().get(0).value().orElse(0)).isGreaterThan(15);
    }

    @Test
    void oneCelsiusReading_endsNoHabitOfFahrenheit() {
        List<Observation> run = warming(false);
        assertThat(forecast(feedingFish(), with(run, read(1.6, Analyte.TEMPERATURE, 11, 0.5))).chance())
                .isGreaterThan(0.6);
    }

    private static List<Observation> warming(boolean inCelsius) {
        List<Observation> run = FINE.lastRead(0.1).stream().filter(o -> o.analyte() != Analyte.TEMPERATURE).toList();
        for (int day = 1; day <= 30; day++) {
            run = with(run, fahrenheit(2.1 + day, 52, inCelsius));
        }
        return with(with(run, fahrenheit(1.1, 59, inCelsius)), fahrenheit(0.1, 68, inCelsius));
    }

    private static Observation fahrenheit(double daysAgo, double value, boolean inCelsius) {
        return inCelsius ? read(daysAgo, Analyte.TEMPERATURE, (value - 32) / 1.8, 0.28)
                : new Observation(read(daysAgo, Analyte.TEMPERATURE, value, 0).at(), Analyte.TEMPERATURE, value, 0.5,
                        false, true);
    }

    /** Nobody finds as many dead again within minutes: the form was sent again. */
    @Test
    void deathsSentAgainWithinMinutes_areTheSameFish() {
        List<Observation> once = with(FINE.lastRead(0.1), read(0.1, Analyte.DEATHS, 5, 0));
        List<Observation> again = with(once, read(0.1 - 1 / 1440.0, Analyte.DEATHS, 5, 0));
        assertThat(forecast(feedingFish(), again).fishAlive()).isEqualTo(forecast(feedingFish(), once).fishAlive());
    }

    /** Nobody draws half a tank twice in half an hour. */
    @ParameterizedTest(name = "{0} minutes later")
    @ValueSource(ints = {5, 12, 25})
    void waterChangeSentAgain_isNoFreshWater(int minutes) {
        List<Observation> once = with(FINE.withNitriteMgPerL(0.8).lastRead(0.2),
                read(0.15, Analyte.WATER_CHANGE, 50, 0));
        List<Observation> again = with(once, read(0.15 - minutes / 1440.0, Analyte.WATER_CHANGE, 50, 0));
        assertThat(forecast(feedingFish(), again).chance()).isEqualTo(forecast(feedingFish(), once).chance());
    }

    /** From Friday to Monday: who found them dead is the last that was heard. */
    @Test
    void manyDead_areToldUntilSomebodyIsHeardAgain() {
        List<Observation> found = with(FINE.lastRead(4.1), read(4.1, Analyte.DEATHS, 30, 0));
        assertThat(forecast(feedingFish(), found).reasons()).extracting(Reason::kind).contains(Reason.Kind.DEATHS);
        assertThat(forecast(feedingFish(), with(found, read(0.1, Analyte.DEATHS, 0, 0))).reasons())
                .extracting(Reason::kind).doesNotContain(Reason.Kind.DEATHS);
    }

    /** Who salted a tank says so by reading its chloride: once is enough within what tanks show. */
    @Test
    void chlorideOfASaltedTank_isBelieved() {
        List<Observation> bad = FINE.withNitriteMgPerL(0.4).lastRead(0.1);
        double fresh = forecast(feedingFish(), bad).exposure();
        assertThat(forecast(feedingFish(), with(bad, read(0.2, Analyte.CHLORIDE, 100, 5))).exposure())
                .isLessThan(0.6 * fresh);
        assertThat(forecast(feedingFish(), with(bad, read(3, Analyte.CHLORIDE, 700, 5),
                read(0.2, Analyte.CHLORIDE, 650, 5))).exposure()).isLessThan(0.6 * fresh);
    }

    @ParameterizedTest(name = "{0} {1}, {2} minutes later")
    @CsvSource({"TEMPERATURE, 30, 1", "NITRITE, 3, 1", "PH, 9.6, 1", "TOTAL_AMMONIA, 8, 9", "NITRITE, 3, 0"})
    void oddValueAgainWithinMinutes_isNoSecondLook(Analyte analyte, double value, int minutes) {
        Observation odd = read(0.2, analyte, value, 0.1);
        Observation again = Observation.of(odd.at().plus(Duration.ofMinutes(minutes)), analyte, value, 0.2);
        assertThat(forecast(feedingFish(), with(CALM, odd, again)).chance()).isLessThan(MOST_OF_A_SLIP);
    }

    @ParameterizedTest(name = "{0} {1} every {2} s")
    @CsvSource({"TEMPERATURE, 30, 30", "TEMPERATURE, 30, 300", "PH, 9.6, 60", "DISSOLVED_OXYGEN, 2, 300"})
    void probeThatSaysSoForAnHour_isBelieved(Analyte analyte, double value, int seconds) {
        List<Observation> hour = IntStream.rangeClosed(0, 3600 / seconds).mapToObj(i -> Observation.of(
                Water.AS_OF.minusSeconds((long) i * seconds), analyte, value, 0.1)).toList();
        Forecast forecast = forecast(feedingFish(), with(CALM, hour.toArray(Observation[]::new)));
        assertThat(forecast.chance()).isGreaterThan(0.7);
        assertThat(forecast.hoursToLimit()).hasValue(0);
    }

    /** A probe's clock, or a date written from memory: all of it a day off, or every other look. */
    @ParameterizedTest(name = "{0} days, every {1}")
    @CsvSource({"1, 1", "-1, 1", "1, 2", "-1, 2"})
    void clockADayOff_neitherHidesBadWaterNorMakesIt(int days, int every) {
        Water bad = FINE.withNitriteMgPerL(0.6).withTotalAmmoniaMgPerL(1);
        assertThat(forecast(feedingFish(), shifted(CALM, days, every)).chance()).isLessThan(0.1);
        Forecast troubled = forecast(feedingFish(), shifted(bad.lastRead(0.1), days, every));
        assertThat(troubled.chance()).isGreaterThan(0.8);
        assertThat(troubled.driver()).isEqualTo(Driver.NITRITE);
    }

    /** @param every so many looks, of five values each */
    private static List<Observation> shifted(List<Observation> readings, int days, int every) {
        return IntStream.range(0, readings.size()).mapToObj(i -> i / 5 % every > 0 ? readings.get(i)
                : Observation.of(readings.get(i).at().plus(Duration.ofDays(days)), readings.get(i).analyte(),
                        readings.get(i).value(), readings.get(i).halfStep())).toList();
    }
}
