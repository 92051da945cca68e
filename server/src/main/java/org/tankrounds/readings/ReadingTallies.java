package org.tankrounds.readings;

import static org.tankrounds.db.schema.Tables.READINGS;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;

/** Counts of the readings that hold. */
public final class ReadingTallies {

    /** How many of them were measured on each day of a school's calendar, from one time to another, both included. */
    public SortedMap<LocalDate, ReadingTally> byDay(
            DSLContext tx, int chapterId, int tankId, Instant from, Instant until, ZoneId zone) {
        SortedMap<LocalDate, ReadingTally> days = new TreeMap<>();
        tx.fetch("""
                SELECT (measured_at AT TIME ZONE ?)::date, count(*)::int, (count(*) FILTER (WHERE version > 1))::int
                FROM readings
                WHERE chapter_id = ? AND tank_id = ? AND superseded_at IS NULL
                    AND measured_at BETWEEN ?::timestamptz AND ?::timestamptz
                GROUP BY 1""", zone.getId(), chapterId, tankId, from.toString(), until.toString())
                .forEach(row -> days.put(row.get(0, LocalDate.class), new ReadingTally(row.get(1, Integer.class),
                        row.get(2, Integer.class), Optional.empty(), Optional.empty())));
        return days;
    }

    /** Measured from one time to another, both included. */
    public ReadingTally get(DSLContext tx, int chapterId, int tankId, Instant from, Instant until) {
        return tx.select(
                        DSL.count(),
                        DSL.count().filterWhere(READINGS.VERSION.gt((short) 1)),
                        DSL.min(READINGS.MEASURED_AT),
                        DSL.max(READINGS.MEASURED_AT))
                .from(READINGS)
                .where(READINGS.CHAPTER_ID.eq(chapterId))
                .and(READINGS.TANK_ID.eq(tankId))
                .and(READINGS.SUPERSEDED_AT.isNull())
                .and(READINGS.MEASURED_AT.between(from, until))
                .fetchSingle(row -> new ReadingTally(row.value1(), row.value2(),
                        Optional.ofNullable(row.value3()), Optional.ofNullable(row.value4())));
    }
}
