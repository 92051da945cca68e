package org.tankrounds.readings;

import java.time.Instant;
import java.util.function.Consumer;
import org.jooq.DSLContext;
import org.tankrounds.belief.Observation;

/** All that was measured in a tank, each with the reading that it stands in, a few at a time. */
public final class MeasurementRows {
    private static final String BETWEEN = """
            SELECT date_part('epoch', m.measured_at), m.analyte, m.value, m.half_step, m.flags, r.code, r.channel
            FROM measurements m JOIN readings r ON r.chapter_id = m.chapter_id AND r.reading_id = m.reading_id
            WHERE m.chapter_id = ? AND m.tank_id = ? AND m.measured_at BETWEEN ?::timestamptz AND ?::timestamptz
            ORDER BY m.measured_at, m.analyte, m.reading_id""";

    /**
     * @param reading its public code
     * @param channel by which the reading came
     */
    public record Row(String reading, String channel, Observation measured) {}

    /** Those that hold, measured from one time to another, both included: the oldest first. */
    public void each(DSLContext tx, int chapterId, int tankId, Instant from, Instant until, Consumer<Row> use) {
        ObservationRepository.each(tx, BETWEEN, chapterId, tankId, from, until, row -> use.accept(
                new Row(row.getString(6), row.getString(7), ObservationRepository.observation(row))));
    }
}
