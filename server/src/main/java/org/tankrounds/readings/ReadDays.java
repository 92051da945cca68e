package org.tankrounds.readings;

import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.Map;
import org.jooq.DSLContext;
import org.tankrounds.places.Tank;

/** The days of a month on which somebody put a reading in; what devices read is not counted. */
final class ReadDays {

    /** @param first when the first of them was taken */
    record Looks(int readings, Instant first) {}

    Map<LocalDate, Looks> find(DSLContext tx, int chapterId, Tank tank, YearMonth month) {
        String zone = tank.zone().getId();
        Map<LocalDate, Looks> days = new HashMap<>();
        tx.fetch("""
                SELECT (r.measured_at AT TIME ZONE ?)::date, count(*)::int, min(r.measured_at)
                FROM readings r
                WHERE r.chapter_id = ? AND r.tank_id = ? AND r.superseded_at IS NULL
                    AND NOT (r.by_label IS NULL AND r.note IS NULL AND r.channel IN ('file', 'probe', 'api', 'batch'))
                    AND r.measured_at >= ?::timestamptz AND r.measured_at < ?::timestamptz
                GROUP BY 1
                """, zone, chapterId, tank.tankId(), start(month, tank), start(month.plusMonths(1), tank))
                .forEach(row -> days.put(row.get(0, LocalDate.class),
                        new Looks(row.get(1, Integer.class), row.get(2, Instant.class))));
        return days;
    }

    private static String start(YearMonth month, Tank tank) {
        return month.atDay(1).atStartOfDay(tank.zone()).toInstant().toString();
    }
}
