package org.tankrounds.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.testing.Water.AS_OF;
import static org.tankrounds.testing.Water.FINE;
import static org.tankrounds.testing.Water.eggs;
import static org.tankrounds.testing.Water.feedingFish;
import static org.tankrounds.testing.Water.forecast;
import static org.tankrounds.testing.Water.read;
import static org.tankrounds.testing.Water.with;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.water.Analyte;

/** A worse number is never less risk: the first that anybody reads of a tank, and one that stands alone. */
class WorseReadingTest {
    /** A forecast stands on some hundred courses: this much of it may be luck. */
    private static final double LUCK = 0.05;
    private static final double LUCK_OF_EXPOSURE = 0.15;
    private static final double LUCK_FISH_HOURS = 100;

    static Stream<Arguments> everWorse() {
        return Stream.of(
                Arguments.of(Analyte.TEMPERATURE,
                        new double[] {9, 11, 12, 13, 14, 15, 16, 17, 18, 20, 22, 24}),
                Arguments.of(Analyte.DISSOLVED_OXYGEN, new double[] {11, 10, 9, 8, 7, 6, 5, 4, 3, 2, 1, 0.5}),
                Arguments.of(Analyte.PH, new double[] {7, 6.8, 6.5, 6.2, 6, 5.8, 5.5, 5, 4.5, 4}),
                Arguments.of(Analyte.PH, new double[] {7.4, 7.8, 8.2, 8.6, 8.9, 9.1, 9.4, 9.8, 10.5, 11}),
                Arguments.of(Analyte.NITRITE,
                        new double[] {0, 0.02, 0.05, 0.1, 0.2, 0.3, 0.4, 0.6, 1, 2, 5, 10, 20, 50}),
                Arguments.of(Analyte.CHLORINE, new double[] {0, 0.02, 0.1, 0.5, 1, 2, 4, 5}),
                Arguments.of(Analyte.TOTAL_AMMONIA, new double[] {0, 0.05, 0.1, 0.25, 0.5, 1, 2, 4, 8, 12, 20, 50}));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("everWorse")
    void firstReading_theWorseIsTheMoreRisk(Analyte analyte, double[] levels) {
        DoubleFunction<List<Observation>> first = level -> List.of(read(0.1, analyte, level, 0));
        assertRises(feedingFish(), first, levels);
        assertRises(eggs(), first, levels);
        assertRises(TankFacts.of("bare").volumeL(190), first, levels);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("everWorse")
    void loneReadingAfterACalmRun_theWorseIsTheMoreRisk(Analyte analyte, double[] levels) {
        DoubleFunction<List<Observation>> lone =
                level -> with(FINE.lastRead(1), read(0.1, analyte, level, 0));
        assertRises(feedingFish(), lone, levels);
        assertRises(eggs(), lone, levels);
    }

    /** Not even a number that nobody can have counted, which takes no fish from those that live. */
    @ParameterizedTest(name = "nitrite {0}")
    @ValueSource(doubles = {0.02, 0.2})
    void moreDead_areNeverLessRisk(double nitriteMgPerL) {
        List<Observation> calm = FINE.withNitriteMgPerL(nitriteMgPerL).lastRead(0.1);
        double chance = 0;
        for (double dead : new double[] {0, 1, 2, 5, 10, 20, 30, 40, 41, 50, 60, 80, 99, 100, 101, 150, 1000}) {
            Observation count = read(0.05, Analyte.DEATHS, dead, 0);
            boolean isDoubtful = !Analyte.DEATHS.isLikely(dead);
            double more = forecast(feedingFish(), with(calm, new Observation(count.at(), count.analyte(), dead, 0,
                    false, isDoubtful))).chance();
            assertThat(more).as(dead + " dead").isGreaterThanOrEqualTo(chance - LUCK);
            chance = Math.max(chance, more);
        }
    }

    /** However long ago they were counted; what nobody has read since may have come and gone. */
    @ParameterizedTest(name = "{0} h ago")
    @ValueSource(doubles = {1, 13, 25, 37, 46, 55, 70, 73, 100})
    void moreDead_areNeverLessRisk_howeverLongAgo(double hoursAgo) {
        double chance = 0;
        for (double dead : new double[] {0, 1, 2, 3, 5, 10, 20, 40}) {
            double more = forecast(feedingFish(), with(FINE.lastRead(hoursAgo / 24),
                    read(hoursAgo / 24, Analyte.DEATHS, dead, 0))).chance();
            assertThat(more).as(dead + " dead").isGreaterThanOrEqualTo(chance - LUCK);
            chance = Math.max(chance, more);
        }
    }

    static Stream<Arguments> worseTwice() {
        return Stream.of(
                Arguments.of(Analyte.NITRITE, 0.3, new double[] {0.3, 0.4, 0.5, 0.8, 1, 2, 5}),
                Arguments.of(Analyte.NITRITE, 0.5, new double[] {0.5, 0.6, 0.8, 1, 1.5, 3}),
                Arguments.of(Analyte.NITRITE, 1, new double[] {1, 1.5, 2, 5}),
                Arguments.of(Analyte.DISSOLVED_OXYGEN, 5, new double[] {5, 4.5, 4, 3, 2}),
                Arguments.of(Analyte.DISSOLVED_OXYGEN, 4, new double[] {4, 3.5, 3, 2}),
                Arguments.of(Analyte.PH, 5.8, new double[] {5.8, 5.6, 5.4, 5.2, 5}),
                Arguments.of(Analyte.PH, 9.2, new double[] {9.2, 9.4, 9.6, 9.8, 10}),
                Arguments.of(Analyte.TOTAL_AMMONIA, 1, new double[] {1, 1.5, 2, 3, 4, 6, 8}),
                Arguments.of(Analyte.TOTAL_AMMONIA, 2, new double[] {2, 3, 4, 6, 8}));
    }

    /** Two that cry alarm bear each other out, however much worse the second is. */
    @ParameterizedTest(name = "{0}, after {1}")
    @MethodSource("worseTwice")
    void secondAlarmAfterACalmRun_theWorseIsTheMoreRisk(Analyte analyte, double first, double[] levels) {
        List<Observation> calm = with(FINE.withPh(analyte == Analyte.TOTAL_AMMONIA ? 7.8 : 7.2).lastRead(2),
                read(1.1, analyte, first, 0));
        assertRises(feedingFish(), level -> with(calm, read(0.1, analyte, level, 0)), levels);
    }

    static Stream<Arguments> wayThere() {
        return Stream.of(
                Arguments.of(Analyte.DISSOLVED_OXYGEN, 3, new double[] {9.2, 8.8, 8.5, 8.3, 8, 7.5, 7}),
                Arguments.of(Analyte.PH, 9.6, new double[] {7.6, 7.8, 8, 8.4}),
                Arguments.of(Analyte.PH, 5.5, new double[] {6.8, 6.6, 6.4}),
                Arguments.of(Analyte.NITRITE, 1, new double[] {0.05, 0.1, 0.2}),
                Arguments.of(Analyte.TOTAL_AMMONIA, 4, new double[] {0.5, 1, 1.5}));
    }

    /** An air stone that fails is seen failing: a small oddity before the alarm is no word against it. */
    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("wayThere")
    void alarmWithAStepOnTheWayThere_isNotLessThanTheLoneAlarm(Analyte analyte, double alarm, double[] steps) {
        List<Observation> calm = FINE.withPh(analyte == Analyte.TOTAL_AMMONIA ? 7.8 : 7.2).lastRead(2);
        Observation last = read(0.1, analyte, alarm, 0);
        Forecast lone = forecast(feedingFish(), with(calm, last));
        for (double step : steps) {
            Forecast onTheWay = forecast(feedingFish(), with(calm, read(1.1, analyte, step, 0), last));
            assertThat(onTheWay.chance()).as("after " + step).isGreaterThanOrEqualTo(lone.chance() - LUCK);
            assertThat(onTheWay.exposure()).as("after " + step)
                    .isGreaterThanOrEqualTo(lone.exposure() * (1 - LUCK_OF_EXPOSURE) - LUCK_FISH_HOURS);
        }
    }

    static Stream<Arguments> unbearable() {
        return Stream.of(Arguments.of(Analyte.DISSOLVED_OXYGEN, 3, 1.4), Arguments.of(Analyte.DISSOLVED_OXYGEN, 5, 1),
                Arguments.of(Analyte.PH, 9.2, 10.6), Arguments.of(Analyte.PH, 5.4, 3.9));
    }

    static Stream<Arguments> nonsense() {
        return Stream.of(Arguments.of(Analyte.DISSOLVED_OXYGEN, 3, 1.4, 5), Arguments.of(Analyte.PH, 9.2, 10.6, 2),
                Arguments.of(Analyte.PH, 5.4, 3.9, 9), Arguments.of(Analyte.PH, 9.2, 2.9, 1440),
                Arguments.of(Analyte.PH, 8.8, 0.88, 1440), Arguments.of(Analyte.PH, 5.4, 11, 1440));
    }

    /** A probe that fails as it is dipped again, and digits swapped: neither makes the alarm before it untrue. */
    @ParameterizedTest(name = "{0} {1}, {2} after {3} minutes")
    @MethodSource("nonsense")
    void alarmThatNonsenseFollows_staysAnAlarm(Analyte analyte, double alarm, double nonsense, int minutes) {
        double before = 0.1 + minutes / 1440.0;
        List<Observation> calm = with(FINE.lastRead(before + 0.9), read(before, analyte, alarm, 0));
        Observation doubted = new Observation(read(0.1, analyte, nonsense, 0).at(), analyte, nonsense, 0, false, true);
        assertThat(forecast(feedingFish(), with(calm, doubted)).chance())
                .isGreaterThanOrEqualTo(forecast(feedingFish(), calm).chance() - LUCK);
    }

    /** Even if the second is the reader's fault, it does not make the first untrue. */
    @ParameterizedTest(name = "{0} {1}, {2}")
    @MethodSource("unbearable")
    void alarmThatOneFollowsThatNoFishBears_isBorneOut(Analyte analyte, double alarm, double unbearable) {
        List<Observation> calm = with(FINE.lastRead(2), read(1.1, analyte, alarm, 0));
        Observation second = read(0.1, analyte, unbearable, 0);
        Observation doubted = new Observation(second.at(), analyte, unbearable, 0, false,
                !analyte.isLikely(unbearable));
        assertThat(forecast(feedingFish(), with(calm, doubted)).chance())
                .isGreaterThan(forecast(feedingFish(), calm).chance() + 0.05);
    }

    @Test
    void readingsThatGetWorseDayByDay_areBelieved_andSaid() {
        double[] nitrite = {0.3, 0.5, 0.8, 1.2};
        List<Observation> run = FINE.lastRead(4);
        for (int i = 0; i < nitrite.length; i++) {
            run = with(run, read(3.1 - i, Analyte.NITRITE, nitrite[i], 0));
        }
        Forecast forecast = forecast(feedingFish(), run);
        assertThat(forecast.chance()).isGreaterThan(0.7);
        assertThat(forecast.reasons().get(0).kind()).isEqualTo(Reason.Kind.BEYOND_LIMIT);
        assertThat(forecast.reasons().get(0).value()).hasValue(1.2);
    }

    /** So near its limit that a small step is believed and passes it. */
    @Test
    void loneReadingAfterARunNearTheLimit_theWorseIsTheMoreRisk() {
        List<Observation> calm = FINE.withNitriteMgPerL(0.2).lastRead(1);
        assertRises(feedingFish(), level -> with(calm, read(0.1, Analyte.NITRITE, level, 0.05)),
                0.2, 0.3, 0.4, 0.6, 1, 2, 5, 20);
    }

    @Test
    void loneJumpAfterADailyRun_isTakenForAWarmingAsFarAsATankCanWarm() {
        List<Observation> calm = new ArrayList<>();
        for (int day = 1; day < 15; day++) {
            calm.add(read(day, Analyte.TEMPERATURE, 10.5, 0.1));
        }
        DoubleFunction<List<Observation>> jump =
                level -> with(calm, read(0.05, Analyte.TEMPERATURE, level, 0.1));
        assertRises(feedingFish(), jump, 11, 12, 13, 14, 16, 18, 20, 22, 24);
        assertRises(eggs(), jump, 11, 12, 13, 14, 16, 18, 20, 22, 24);
        double slip = forecast(feedingFish(), jump.apply(30)).chance();
        assertThat(slip).isLessThan(0.6 * forecast(feedingFish(), jump.apply(24)).chance());
        assertThat(forecast(feedingFish(), jump.apply(40)).chance()).isEqualTo(slip);
    }

    /** In an hour no tank warms by six degrees. */
    @Test
    void jumpWithinAnHour_isASlipOfThePen() {
        List<Observation> calm = with(FINE.lastRead(1), read(0.1, Analyte.TEMPERATURE, 11, 0.1));
        Forecast forecast = forecast(eggs(), with(calm, read(0.06, Analyte.TEMPERATURE, 17, 0.1)));
        assertThat(forecast.chance()).isLessThan(0.25);
        assertThat(forecast.reasons()).extracting(Reason::kind).contains(Reason.Kind.READING_SET_ASIDE);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("everWorse")
    void firstReading_isNeverSaidNotToFitItsNeighbours(Analyte analyte, double[] levels) {
        for (double level : levels) {
            assertThat(forecast(feedingFish(), List.of(read(0.1, analyte, level, 0))).reasons())
                    .extracting(Reason::kind).doesNotContain(Reason.Kind.READING_SET_ASIDE);
        }
    }

    /** A first reading that the second denies was the slip, as tanks in general say. */
    @Test
    void firstReadingThatTheSecondDenies_isForgotten() {
        Forecast forecast = forecast(feedingFish(), List.of(read(2, Analyte.TEMPERATURE, 30, 0.1),
                read(0.1, Analyte.TEMPERATURE, 11, 0.1)));
        assertThat(forecast.series().get(0).fan().get(0).q50()).isBetween(10.5, 11.5);
    }

    private static void assertRises(
            TankFacts.Builder facts, DoubleFunction<List<Observation>> readings, double... levels) {
        double chance = 0;
        double exposure = 0;
        for (double level : levels) {
            Forecast forecast = forecast(facts, readings.apply(level));
            String what = facts.build().tank() + " until " + AS_OF + " at " + level;
            assertThat(forecast.chance()).as(what).isGreaterThanOrEqualTo(chance - LUCK);
            assertThat(forecast.exposure()).as(what)
                    .isGreaterThanOrEqualTo(exposure * (1 - LUCK_OF_EXPOSURE) - LUCK_FISH_HOURS);
            chance = Math.max(chance, forecast.chance());
            exposure = Math.max(exposure, forecast.exposure());
        }
    }
}
