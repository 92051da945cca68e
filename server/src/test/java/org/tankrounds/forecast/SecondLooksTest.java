package org.tankrounds.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.tankrounds.testing.Water.FINE;
import static org.tankrounds.testing.Water.feedingFish;
import static org.tankrounds.testing.Water.forecast;
import static org.tankrounds.testing.Water.read;
import static org.tankrounds.testing.Water.with;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.belief.Observation;
import org.tankrounds.water.Analyte;

/** A second look bears an odd reading out; the same look that comes in twice does not. */
class SecondLooksTest {
    private static final List<Observation> CALM = FINE.lastRead(1);

    /** By who was not sure that it had gone off. */
    @ParameterizedTest(name = "{0} {1}, {2} minutes later")
    @CsvSource({"TEMPERATURE, 30, 20", "NITRITE, 3, 20", "PH, 9.6, 25", "TOTAL_AMMONIA, 8, 30",
        "DISSOLVED_OXYGEN, 2, 20"})
    void oddValueResentSoonAfter_isNoSecondLook(Analyte analyte, double value, int minutes) {
        Observation odd = read(0.2, analyte, value, 0.1);
        assertThat(forecast(feedingFish(), with(CALM, odd, later(odd, minutes / 60.0))).chance())
                .isCloseTo(forecast(feedingFish(), with(CALM, odd)).chance(), within(0.05));
    }

    /** With the time zone mistaken, or a day left out; the odd value may be the last of the log or not. */
    @ParameterizedTest(name = "{0} {1}, {2} h later, {3} days before the end")
    @CsvSource({"NITRITE, 3, 3, 0", "PH, 9.6, 3, 0", "TOTAL_AMMONIA, 8, 3, 0", "DISSOLVED_OXYGEN, 2, 3, 0",
        "TEMPERATURE, 30, 3, 0", "NITRITE, 3, 5, 4", "PH, 9.6, 1, 4", "NITRITE, 3, 24, 0", "TOTAL_AMMONIA, 8, 24, 0",
        "PH, 9.6, 24, 0", "TEMPERATURE, 30, 24, 0", "DEATHS, 90, 3, 4"})
    void logPastedAgainUnderOtherHours_doesNotBearItsSlipsOut(
            Analyte analyte, double value, double hours, double daysBefore) {
        Observation odd = read(1 + daysBefore, analyte, value, 0.1);
        List<Observation> log = with(asNoted(2.1), odd);
        Forecast once = forecast(feedingFish(), log);
        Forecast pasted = forecast(feedingFish(), with(log, later(log, hours).toArray(Observation[]::new)));
        assertThat(pasted.chance()).isCloseTo(once.chance(), within(0.1)).isLessThan(0.65);
        assertThat(pasted.fishAlive()).isGreaterThan(once.fishAlive() / 2 - 5);
    }

    /** Else a tank whose fish die, or whose water is changed often, falls on the board by being noted twice. */
    @ParameterizedTest(name = "{0} h later, nitrite {1}, {2} dead, {3} % changed")
    @CsvSource({"1, 0.2, 30, 25", "5, 0.2, 30, 25", "20, 0.2, 30, 25", "3, 0.2, 12, 25", "1, 0.5, 0, 50",
        "5, 0.5, 0, 50", "20, 0.5, 0, 50", "5, 0.02, 1, 25"})
    void logPastedAgainUnderOtherHours_countsDeathsChangesAndFeedOnce(
            double hours, double nitriteMgPerL, int dead, int changedPercent) {
        List<Observation> log = with(FINE.withNitriteMgPerL(nitriteMgPerL).lastRead(1),
                read(1.3, Analyte.DEATHS, dead, 0));
        for (int day = 0; day < 35; day++) {
            log.add(read(day + 1.1, day % 7 == 0 ? Analyte.WATER_CHANGE : Analyte.FEED,
                    day % 7 == 0 ? changedPercent : 2, 0));
        }
        Forecast once = forecast(feedingFish(), log);
        Forecast pasted = forecast(feedingFish(), with(log, later(log, hours).toArray(Observation[]::new)));
        assertThat(pasted.chance()).isCloseTo(once.chance(), within(0.1));
        assertThat(pasted.exposure()).isCloseTo(once.exposure(), withinPercentage(10));
        assertThat(pasted.fishAlive()).isEqualTo(once.fishAlive());
    }

    /** A class that tests by the timetable, with cards that mostly show the same colour. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"NITRITE, 3", "TOTAL_AMMONIA, 8", "PH, 9.6", "DISSOLVED_OXYGEN, 2", "TEMPERATURE, 19.5"})
    void sameOddValueOnTwoSchoolDays_isBelieved(Analyte analyte, double value) {
        List<Observation> daily = new ArrayList<>(CALM);
        daily.addAll(later(CALM, -24));
        assertThat(forecast(feedingFish(), with(FINE.lastRead(2.2), read(1.2, analyte, value, 0.1),
                read(0.2, analyte, value, 0.1))).chance()).isGreaterThan(0.65);
        assertThat(forecast(feedingFish(), with(later(daily, -24), read(1, analyte, value, 0.1),
                read(0, analyte, value, 0.1))).chance()).isGreaterThan(0.65);
    }

    private static Observation later(Observation reading, double hours) {
        return new Observation(reading.at().plusSeconds(Math.round(hours * 3600)), reading.analyte(), reading.value(),
                reading.halfStep(), reading.below(), reading.doubtful());
    }

    private static List<Observation> later(List<Observation> readings, double hours) {
        return readings.stream().map(reading -> later(reading, hours)).toList();
    }

    /** Fine water as it is really written down: never at quite the same time, a degree up or down. */
    private static List<Observation> asNoted(double daysAgo) {
        List<Observation> fine = FINE.lastRead(daysAgo);
        return IntStream.range(0, fine.size()).mapToObj(i -> {
            int look = i / 5;
            Observation o = later(fine.get(i), look * 7 % 13 / 20.0);
            return o.analyte() != Analyte.TEMPERATURE ? o
                    : Observation.of(o.at(), o.analyte(), o.value() + look * 3 % 5 / 4.0, o.halfStep());
        }).toList();
    }
}
