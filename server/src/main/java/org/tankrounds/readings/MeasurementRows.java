package org.tankrounds.readings;

import static org.tankrounds.db.schema.Tables.MEASUREMENTS;
import static org.tankrounds.db.schema.Tables.READINGS;

import java.time.Instant;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.tankrounds.belief.Observation;
import org.tankrounds.water.Analyte;

/** All that was measured in a tank, each with the reading that it stands in, a few at a time. */
public final class MeasurementRows {
    private static final int A_FEW = 2000;

    /**
     * @param reading its public code
     * @param channel by which the reading came
     */
    public record Row(String reading, String channel, Observation measured) {}

    /** Those that hold, measured from one time to another, both included: the oldest first. */
    public void each(DSLContext tx, int chapterId, int tankId, Instant from, Instant until, Consumer<Row> use) {
        try (Stream<Row> rows = tx.select(READINGS.CODE, READINGS.CHANNEL, MEASUREMENTS.MEASURED_AT,
                        MEASUREMENTS.ANALYTE, MEASUREMENTS.VALUE, MEASUREMENTS.HALF_STEP, MEASUREMENTS.FLAGS)
                .from(MEASUREMENTS)
                .join(READINGS).on(READINGS.CHAPTER_ID.eq(MEASUREMENTS.CHAPTER_ID))
                .and(READINGS.READING_ID.eq(MEASUREMENTS.READING_ID))
                .where(MEASUREMENTS.CHAPTER_ID.eq(chapterId)).and(MEASUREMENTS.TANK_ID.eq(tankId))
                .and(MEASUREMENTS.MEASURED_AT.between(from, until))
                .orderBy(MEASUREMENTS.MEASURED_AT, MEASUREMENTS.ANALYTE, MEASUREMENTS.READING_ID)
                .fetchSize(A_FEW)
                .fetchLazy().stream().map(MeasurementRows::row)) {
            rows.forEach(use);
        }
    }

    private static Row row(Record row) {
        short flags = row.get(MEASUREMENTS.FLAGS);
        return new Row(row.get(READINGS.CODE), row.get(READINGS.CHANNEL), new Observation(
                row.get(MEASUREMENTS.MEASURED_AT),
                Analyte.ofCode(row.get(MEASUREMENTS.ANALYTE)).orElseThrow(),
                row.get(MEASUREMENTS.VALUE),
                row.get(MEASUREMENTS.HALF_STEP),
                (flags & ObservationRepository.NOT_DETECTED) != 0,
                (flags & ObservationRepository.DOUBTFUL) != 0));
    }
}
