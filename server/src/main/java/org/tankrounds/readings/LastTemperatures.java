package org.tankrounds.readings;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jooq.DSLContext;
import org.tankrounds.water.KnownTemperatures;
import org.tankrounds.water.Units;

/** The newest temperatures that hold and that nobody doubts, each before some moment of a tank. */
final class LastTemperatures {
    /** Numbers of readings start at 1. */
    private static final long NO_READING = 0;

    record Moment(int tankId, Instant at) {}

    double find(DSLContext tx, int chapterId, Moment moment) {
        return find(tx, chapterId, moment, NO_READING);
    }

    /** @param exceptReadingId a version that is about to be superseded */
    double find(DSLContext tx, int chapterId, Moment moment, long exceptReadingId) {
        return find(tx, chapterId, List.of(moment), exceptReadingId).get(moment.tankId()).at(moment.at());
    }

    /** By tank. */
    Map<Integer, KnownTemperatures> findAll(DSLContext tx, int chapterId, List<Moment> moments) {
        return find(tx, chapterId, moments, NO_READING);
    }

    /** The primary key serves it, one short look into a month or two of measurements for each moment. */
    private static Map<Integer, KnownTemperatures> find(
            DSLContext tx, int chapterId, List<Moment> moments, long exceptReadingId) {
        Map<Integer, KnownTemperatures> found = new HashMap<>();
        moments.forEach(moment -> found.put(moment.tankId(), new KnownTemperatures()));
        tx.fetch("""
                SELECT wanted.tank_id, last.measured_at, last.value
                FROM unnest(?::int[], ?::timestamptz[]) AS wanted (tank_id, until)
                CROSS JOIN LATERAL (
                    SELECT m.measured_at, m.value FROM measurements m
                    WHERE m.chapter_id = ? AND m.tank_id = wanted.tank_id AND m.analyte = 'temperature'
                        AND m.measured_at BETWEEN wanted.until - ?::interval AND wanted.until
                        AND m.flags & ? = 0 AND m.value BETWEEN ? AND ? AND m.reading_id <> ?
                    ORDER BY m.measured_at DESC, m.value DESC LIMIT 1) AS last
                """, moments.stream().map(Moment::tankId).toArray(Integer[]::new),
                moments.stream().map(moment -> moment.at().toString()).toArray(String[]::new),
                chapterId, KnownTemperatures.HOLDS.toString(), ObservationRepository.DOUBTFUL,
                Units.WATER_WITH_FISH_C.min(), Units.WATER_WITH_FISH_C.max(), exceptReadingId)
                .forEach(row -> found.get(row.get(0, Integer.class))
                        .add(row.get(1, Instant.class), row.get(2, Float.class), false));
        return found;
    }
}
