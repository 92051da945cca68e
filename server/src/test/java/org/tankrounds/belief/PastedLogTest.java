package org.tankrounds.belief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.testing.Water.AS_OF;
import static org.tankrounds.testing.Water.FINE;
import static org.tankrounds.testing.Water.read;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.water.Analyte;

/** What comes twice by a paste is left out; what was read twice is not. */
class PastedLogTest {

    @ParameterizedTest(name = "{0} minutes later")
    @ValueSource(ints = {-300, 18, 60, 300, 839, 1200})
    void logPastedAgain_isThereOnce(int minutes) {
        List<Observation> log = changedWeekly(FINE.lastRead(2));
        List<Observation> again = later(log, Duration.ofMinutes(minutes));
        List<Observation> both = Stream.concat(log.stream(), again.stream()).toList();
        assertThat(PastedLog.once(both)).containsExactlyInAnyOrderElementsOf(minutes > 0 ? log : again);
    }

    @Test
    void readingsAfterThePaste_stay() {
        List<Observation> log = changedWeekly(FINE.lastRead(4));
        List<Observation> since = List.of(read(1, Analyte.PH, 7.3, 0.1), read(0.5, Analyte.TEMPERATURE, 11, 0.1));
        List<Observation> all = Stream.of(log, later(log, Duration.ofHours(5)), since).flatMap(List::stream).toList();
        assertThat(PastedLog.once(all)).containsExactlyInAnyOrderElementsOf(
                Stream.concat(log.stream(), since.stream()).toList());
    }

    /** Cards that show the same colour morning and afternoon, in a tank that is steady. */
    @Test
    void steadyTankReadTwiceADay_losesNothing() {
        List<Observation> mornings = FINE.lastRead(2);
        List<Observation> log = changedWeekly(
                Stream.concat(mornings.stream(), later(mornings, Duration.ofHours(5)).stream()).toList());
        assertThat(PastedLog.once(log)).isEqualTo(log);
    }

    @ParameterizedTest(name = "every {0} minutes")
    @CsvSource({"5", "60", "180"})
    void probeOfTwoThings_losesNothing(int minutes) {
        List<Observation> log = new ArrayList<>();
        for (int i = 0; i < 600; i++) {
            double days = i * minutes / 1440.0;
            log.add(read(days, Analyte.TEMPERATURE, 11 + i / 2 % 4 / 10.0, 0.05));
            log.add(read(days, Analyte.DISSOLVED_OXYGEN, 10 - i / 2 % 3 / 10.0, 0.05));
        }
        assertThat(PastedLog.once(log)).isEqualTo(log);
    }

    /** Every Tuesday and Wednesday at nine. */
    @Test
    void timetable_losesNothing() {
        List<Observation> log = new ArrayList<>();
        for (int week = 0; week < 20; week++) {
            for (int day = 0; day < 2; day++) {
                log.add(read(week * 7 + day, Analyte.TEMPERATURE, 11 + week % 3, 0.5));
                log.add(read(week * 7 + day, Analyte.PH, 7.4, 0.1));
            }
        }
        assertThat(PastedLog.once(log)).isEqualTo(log);
    }

    private static List<Observation> changedWeekly(List<Observation> readings) {
        List<Observation> log = new ArrayList<>(readings);
        for (int week = 0; week < 5; week++) {
            log.add(Observation.of(AS_OF.minus(Duration.ofDays(7L * week + 3)), Analyte.WATER_CHANGE, 25, 0));
        }
        return log;
    }

    private static List<Observation> later(List<Observation> readings, Duration later) {
        return readings.stream().map(o -> new Observation(o.at().plus(later), o.analyte(), o.value(), o.halfStep(),
                o.below(), o.doubtful())).toList();
    }
}
