package org.tankrounds.readings;

import static org.tankrounds.db.schema.Tables.MEASUREMENTS;

import java.time.Instant;
import java.util.List;
import org.jooq.DSLContext;

/** Measurements of the readings that hold: derived, so they are replaced when a reading is corrected. */
final class MeasurementRepository {

    /** Rows of one reading's version. */
    record Rows(int tankId, long readingId, Instant measuredAt, List<Measured> measured) {}

    void insert(DSLContext tx, int chapterId, List<Rows> readings) {
        int count = readings.stream().mapToInt(rows -> rows.measured().size()).sum();
        if (count == 0) {
            return;
        }
        Columns columns = new Columns(count);
        readings.forEach(columns::add);
        tx.execute("""
                INSERT INTO measurements (chapter_id, tank_id, reading_id, measured_at, value, half_step, \
                flags, analyte)
                SELECT ?, * FROM unnest(?::int[], ?::bigint[], ?::timestamptz[], ?::real[], ?::real[],
                                        ?::smallint[], ?::text[])
                """, chapterId, columns.tankIds, columns.readingIds, columns.measuredAt, columns.values,
                columns.halfSteps, columns.flags, columns.analytes);
    }

    void delete(DSLContext tx, int chapterId, Reading reading) {
        tx.deleteFrom(MEASUREMENTS)
                .where(MEASUREMENTS.CHAPTER_ID.eq(chapterId))
                .and(MEASUREMENTS.TANK_ID.eq(reading.tankId()))
                .and(MEASUREMENTS.MEASURED_AT.eq(reading.measuredAt()))
                .and(MEASUREMENTS.READING_ID.eq(reading.readingId()))
                .execute();
    }

    /** The columns of one statement: a row a value would be a round trip a value. */
    private static final class Columns {
        private final Integer[] tankIds;
        private final Long[] readingIds;
        private final String[] measuredAt;
        private final Float[] values;
        private final Float[] halfSteps;
        private final Short[] flags;
        private final String[] analytes;
        private int next;

        Columns(int count) {
            tankIds = new Integer[count];
            readingIds = new Long[count];
            measuredAt = new String[count];
            values = new Float[count];
            halfSteps = new Float[count];
            flags = new Short[count];
            analytes = new String[count];
        }

        void add(Rows rows) {
            for (Measured one : rows.measured()) {
                tankIds[next] = rows.tankId();
                readingIds[next] = rows.readingId();
                measuredAt[next] = rows.measuredAt().toString();
                values[next] = one.value();
                halfSteps[next] = one.halfStep();
                flags[next] = one.flags();
                analytes[next++] = one.analyte().code();
            }
        }
    }
}
