package org.tankrounds.readings;

import static org.tankrounds.db.schema.Tables.READINGS;

import java.time.Instant;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;

/** Counts of the readings that hold. */
public final class ReadingTallies {

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
