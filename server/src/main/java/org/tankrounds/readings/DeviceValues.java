package org.tankrounds.readings;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.tankrounds.readings.GivenReading.GivenValue;
import org.tankrounds.water.UnitForm;
import org.tankrounds.water.Units;

/**
 * What devices have said of a tank before: loggers by their files, probes, and scripts that say nothing of a class. A
 * value that was corrected since counts, since its device will only repeat it;
 * one of a file that was taken back does not.
 */
final class DeviceValues {

    /**
     * @param code of the reading that it belongs to
     * @param takenBack whether somebody took that reading back by itself: its device will only repeat it, but nothing
     *         of it stands against what is new
     */
    record Said(String code, EnteredValue value, boolean takenBack) {}

    private static final String COLUMNS = """
            SELECT r.measured_at, r.code, r.entered, r.superseded_at IS NOT NULL AND EXISTS (
                SELECT 1 FROM readings word WHERE word.chapter_id = r.chapter_id AND word.code = r.code
                    AND word.flags @> '{taken_back}')
            FROM readings r
            LEFT JOIN logger_files f ON f.chapter_id = r.chapter_id AND f.file_id = r.file_id
            WHERE r.chapter_id = ? AND r.tank_id = ? AND r.measured_at BETWEEN ?::timestamptz AND ?::timestamptz
                AND (r.channel IN ('file', 'probe') OR r.file_id IS NOT NULL
                    OR r.channel IN ('api', 'batch') AND r.by_label IS NULL AND r.note IS NULL)
                AND r.superseded_by_file IS NULL AND f.taken_back_at IS NULL
            """;

    private final NavigableMap<Instant, List<Said>> byTime = new TreeMap<>();

    private DeviceValues() {}

    /** Between two times, both included. */
    static DeviceValues find(DSLContext tx, int chapterId, int tankId, Instant from, Instant until) {
        DeviceValues values = new DeviceValues();
        // Two questions, so that each has an index of its own.
        tx.fetch(COLUMNS + "AND r.superseded_at IS NULL UNION ALL " + COLUMNS + "AND r.superseded_at IS NOT NULL",
                chapterId, tankId, from.toString(), until.toString(),
                chapterId, tankId, from.toString(), until.toString()).forEach(values::add);
        return values;
    }

    private void add(Record row) {
        List<Said> said = byTime.computeIfAbsent(row.get(0, Instant.class), at -> new ArrayList<>());
        ReadingJson.values(row.get(2, String.class))
                .forEach(value -> said.add(new Said(row.get(1, String.class), value, row.get(3, Boolean.class))));
    }

    /** Values of the same analyte at a time. */
    List<Said> at(Instant time, GivenValue given) {
        return byTime.getOrDefault(time, List.of()).stream()
                .filter(said -> said.value().analyte() == given.analyte()).toList();
    }

    List<Said> allAt(Instant time) {
        return byTime.getOrDefault(time, List.of());
    }

    static GivenValue given(EnteredValue value) {
        return new GivenValue("", value.analyte(), value.value(), value.form().unit(),
                Optional.of(value.form().as()).filter(as -> !as.isEmpty()), value.step(), value.below(), false);
    }

    /** Whether the same value is there from within a span before or after. */
    boolean isNear(Instant time, Duration span, GivenValue given) {
        return byTime.subMap(time.minus(span), true, time.plus(span), true).values().stream()
                .flatMap(List::stream).anyMatch(said -> isSame(said.value(), given));
    }

    /** The same in one unit, or in two as far as the digits tell. */
    static boolean isSame(EnteredValue said, GivenValue given) {
        UnitForm form = new UnitForm(given.unit(), given.as().orElse(""));
        if (said.analyte() != given.analyte()) {
            return false;
        }
        if (said.form().equals(form)) {
            return said.value().compareTo(given.value()) == 0;
        }
        double apart = Math.abs(canonical(said.form(), said.value(), given) - canonical(form, given.value(), given));
        return apart <= (lastDigit(said.form(), said.value(), given) + lastDigit(form, given.value(), given)) / 2;
    }

    private static double canonical(UnitForm form, BigDecimal value, GivenValue of) {
        return Units.toCanonical(of.analyte(), form, value.doubleValue(), Double.NaN);
    }

    private static double lastDigit(UnitForm form, BigDecimal value, GivenValue of) {
        return Units.stepToCanonical(of.analyte(), form, value.ulp().doubleValue(), Double.NaN, 0);
    }
}
