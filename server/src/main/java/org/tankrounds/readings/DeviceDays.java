package org.tankrounds.readings;

import static org.tankrounds.db.schema.Tables.READINGS;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.Result;
import org.jooq.impl.DSL;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.DeviceDay.Hour;
import org.tankrounds.water.Analyte;

/** The days on which devices read a tank, in sum. */
public final class DeviceDays {
    /** Nobody's own look: a device's, without a label or a note. What somebody corrected is not among them. */
    private static final String BY_DEVICE = " r.superseded_at IS NULL AND r.by_label IS NULL AND r.note IS NULL"
            + " AND r.channel IN ('file', 'probe', 'api', 'batch') ";
    /** From one day to the one before, each by one look into the index of the log. */
    private static final String NEWEST_DAYS = """
            WITH RECURSIVE days (day, steps) AS (
                (SELECT (r.measured_at AT TIME ZONE ?)::date, 1 FROM readings r
                 WHERE r.chapter_id = ? AND r.tank_id = ? AND %1$s ORDER BY r.measured_at DESC LIMIT 1)
                UNION ALL
                SELECT before.day, days.steps + 1 FROM days CROSS JOIN LATERAL (
                    SELECT (r.measured_at AT TIME ZONE ?)::date AS day FROM readings r
                    WHERE r.chapter_id = ? AND r.tank_id = ? AND %1$s
                        AND r.measured_at < days.day::timestamp AT TIME ZONE ?
                    ORDER BY r.measured_at DESC LIMIT 1) AS before
                WHERE days.steps < ?)
            SELECT day FROM days""".formatted(BY_DEVICE);
    /**
     * In two steps, since before a table is analysed the planner takes many new rows for one and joins them row by row:
     * first which readings are a device's, then their hours.
     */
    private static final String BY_DEVICE_BETWEEN = """
            SELECT r.reading_id, r.channel, (r.measured_at AT TIME ZONE ?)::date FROM readings r
            WHERE r.chapter_id = ? AND r.tank_id = ? AND %s
                AND r.measured_at >= ?::timestamptz AND r.measured_at < ?::timestamptz""".formatted(BY_DEVICE);
    private static final String HOURS = """
            SELECT (m.measured_at AT TIME ZONE ?)::date, m.analyte,
                   extract(hour FROM m.measured_at AT TIME ZONE ?)::int,
                   count(*)::int, min(m.value), avg(m.value), max(m.value), max(m.measured_at)
            FROM measurements m
            WHERE m.chapter_id = ? AND m.tank_id = ? AND m.reading_id = ANY (?::bigint[])
                AND m.measured_at >= ?::timestamptz AND m.measured_at < ?::timestamptz
            GROUP BY 1, 2, 3 ORDER BY 1, 2, 3""";

    private final ReadingRepository readings;

    public DeviceDays(ReadingRepository readings) {
        this.readings = readings;
    }

    /** The newest days on which devices read, those with much to sum up only; newest first. */
    public List<DeviceDay> newest(DSLContext tx, int chapterId, Tank tank, int most) {
        String zone = tank.zone().getId();
        List<LocalDate> days = tx.fetch(NEWEST_DAYS, zone, chapterId, tank.tankId(),
                zone, chapterId, tank.tankId(), zone, most).getValues(0, LocalDate.class);
        if (days.isEmpty()) {
            return List.of();
        }
        List<DeviceDay> all = summed(tx, chapterId, tank, days.get(days.size() - 1), days.get(0));
        List<DeviceDay> newestFirst = new ArrayList<>(all);
        newestFirst.removeIf(day -> day.readings() < DeviceDay.MANY);
        Collections.reverse(newestFirst);
        return newestFirst;
    }

    public Optional<DeviceDay> find(DSLContext tx, int chapterId, Tank tank, LocalDate day) {
        return summed(tx, chapterId, tank, day, day).stream().findFirst();
    }

    /** Each reading of such a day, oldest first. */
    public List<Reading> list(DSLContext tx, int chapterId, Tank tank, LocalDate day) {
        return readings.listWhere(tx, chapterId, tank.tankId(), byDevice().and(on(day, tank.zone())));
    }

    /** The newest readings but for those that are summed up. */
    public List<Reading> listOthers(DSLContext tx, int chapterId, Tank tank, List<DeviceDay> summed, int limit) {
        Condition others = DSL.noCondition();
        if (!summed.isEmpty()) {
            Condition days = DSL.or(summed.stream().map(day -> on(day.day(), tank.zone())).toList());
            others = DSL.not(byDevice().and(days));
        }
        if (summed.size() >= limit) {
            LocalDate oldest = summed.get(summed.size() - 1).day();
            others = others.and(READINGS.MEASURED_AT.ge(start(oldest, tank.zone())));
        }
        return readings.listNewest(tx, chapterId, tank.tankId(), others, limit);
    }

    /** The same as {@link #BY_DEVICE}. */
    private static Condition byDevice() {
        return READINGS.BY_LABEL.isNull().and(READINGS.NOTE.isNull())
                .and(READINGS.CHANNEL.in(Reading.CHANNEL_FILE, Reading.CHANNEL_PROBE, Reading.CHANNEL_API,
                        Reading.CHANNEL_BATCH));
    }

    private static Condition on(LocalDate day, ZoneId zone) {
        return READINGS.MEASURED_AT.ge(start(day, zone)).and(READINGS.MEASURED_AT.lt(start(day.plusDays(1), zone)));
    }

    private static List<DeviceDay> summed(DSLContext tx, int chapterId, Tank tank, LocalDate first, LocalDate last) {
        String zone = tank.zone().getId();
        String from = start(first, tank.zone()).toString();
        String until = start(last.plusDays(1), tank.zone()).toString();
        Result<Record> readings = tx.fetch(BY_DEVICE_BETWEEN, zone, chapterId, tank.tankId(), from, until);
        Set<LocalDate> notOnlyFromFiles = readings.stream()
                .filter(row -> !row.get(1, String.class).equals(Reading.CHANNEL_FILE))
                .map(row -> row.get(2, LocalDate.class)).collect(Collectors.toSet());
        Map<LocalDate, List<Record>> byDay = new TreeMap<>();
        Long[] readingIds = readings.getValues(0, Long.class).toArray(Long[]::new);
        tx.fetch(HOURS, zone, zone, chapterId, tank.tankId(), readingIds, from, until)
                .forEach(row -> byDay.computeIfAbsent(row.get(0, LocalDate.class), day -> new ArrayList<>()).add(row));
        return byDay.entrySet().stream().map(entry -> day(
                entry.getKey(), entry.getValue(), !notOnlyFromFiles.contains(entry.getKey()))).toList();
    }

    private static DeviceDay day(LocalDate day, List<Record> rows, boolean fromFile) {
        Map<Analyte, List<Hour>> hours = new EnumMap<>(Analyte.class);
        rows.forEach(row -> hours.computeIfAbsent(Analyte.ofCode(row.get(1, String.class)).orElseThrow(),
                analyte -> new ArrayList<>()).add(new Hour(row.get(2, Integer.class), row.get(3, Integer.class),
                        row.get(4, Double.class), row.get(5, Double.class), row.get(6, Double.class))));
        int most = hours.values().stream().mapToInt(list -> list.stream().mapToInt(Hour::count).sum()).max().orElse(0);
        Instant last = rows.stream().map(row -> row.get(7, Instant.class)).max(Instant::compareTo).orElseThrow();
        return new DeviceDay(day, most, last, fromFile, hours);
    }

    private static Instant start(LocalDate day, ZoneId zone) {
        return day.atStartOfDay(zone).toInstant();
    }
}
