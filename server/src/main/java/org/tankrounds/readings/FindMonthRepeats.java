package org.tankrounds.readings;

import static org.tankrounds.db.schema.Tables.READINGS;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.tankrounds.places.Kit;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.GivenReading.GivenValue;
import org.tankrounds.readings.MonthRepeats.Repeat;
import org.tankrounds.readings.SubmissionRepository.TankKey;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;

/** Holds the rows of a typed month against what people have put in of the same days. */
final class FindMonthRepeats {
    private final ReadingRepository readings;
    private final SubmissionRepository submissions = new SubmissionRepository();

    FindMonthRepeats(ReadingRepository readings) {
        this.readings = readings;
    }

    /** Of the days that are typed; a row that this very sheet has stored is none. */
    List<Repeat> find(DSLContext tx, int chapterId, Tank tank, Kit kit, MonthForm form, List<LocalDate> days) {
        Map<LocalDate, List<Reading>> there = there(tx, chapterId, tank, YearMonth.from(days.get(0)));
        Map<TankKey, ?> sentBefore = submissions.findAll(tx, chapterId,
                days.stream().map(day -> new TankKey(tank.tankId(), form.key(day))).toList());
        List<Repeat> repeats = new ArrayList<>();
        for (LocalDate day : days) {
            List<Reading> ofDay = there.getOrDefault(day, List.of());
            if (!ofDay.isEmpty() && !sentBefore.containsKey(new TankKey(tank.tankId(), form.key(day)))) {
                GivenReading typed = form.day(day).read(new LogBoxes(tank, kit).forms(), tank.zone(), new Faults());
                boolean same = ofDay.stream().anyMatch(reading -> isSame(typed, reading));
                if (same || bothCountDead(typed, ofDay)) {
                    repeats.add(new Repeat(day, typed, ofDay, same));
                }
            }
        }
        return repeats;
    }

    private Map<LocalDate, List<Reading>> there(DSLContext tx, int chapterId, Tank tank, YearMonth month) {
        Instant from = month.atDay(1).atStartOfDay(tank.zone()).toInstant();
        Instant until = month.plusMonths(1).atDay(1).atStartOfDay(tank.zone()).toInstant();
        return readings.listWhere(tx, chapterId, tank.tankId(), PeoplesReadings.certainly()
                        .and(READINGS.MEASURED_AT.ge(from)).and(READINGS.MEASURED_AT.lt(until))).stream()
                .collect(Collectors.groupingBy(reading -> LocalDate.ofInstant(reading.measuredAt(), tank.zone())));
    }

    /**
     * Rows without a number are told by their note;
     * and a note that is not there yet makes another row of the same numbers.
     */
    private static boolean isSame(GivenReading typed, Reading there) {
        boolean sameValues = typed.values().size() == there.values().size() && typed.values().stream()
                .allMatch(value -> there.values().stream().anyMatch(old -> isSame(value, old)));
        boolean addsNoNote = !typed.values().isEmpty() && typed.note().isEmpty();
        return sameValues && (addsNoNote || typed.note().equals(there.note()));
    }

    private static boolean isSame(GivenValue typed, EnteredValue there) {
        return typed.analyte() == there.analyte() && typed.value().compareTo(there.value()) == 0
                && new UnitForm(typed.unit(), typed.as().orElse("")).equals(there.form());
    }

    private static boolean bothCountDead(GivenReading typed, List<Reading> there) {
        return typed.values().stream().anyMatch(value -> areDead(value.analyte(), value.value()))
                && there.stream().flatMap(reading -> reading.values().stream())
                        .anyMatch(value -> areDead(value.analyte(), value.value()));
    }

    private static boolean areDead(Analyte analyte, BigDecimal count) {
        return analyte == Analyte.DEATHS && count.signum() > 0;
    }
}
