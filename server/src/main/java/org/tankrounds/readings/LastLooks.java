package org.tankrounds.readings;

import static org.tankrounds.db.schema.Tables.READINGS;

import java.time.Instant;
import java.util.Optional;
import org.jooq.DSLContext;

/** Who looked at a tank last. */
public final class LastLooks {

    public Optional<LastLook> find(DSLContext tx, int chapterId, int tankId, Instant until) {
        return tx.select(READINGS.MEASURED_AT, READINGS.BY_LABEL)
                .from(READINGS)
                .where(READINGS.CHAPTER_ID.eq(chapterId))
                .and(READINGS.TANK_ID.eq(tankId))
                .and(READINGS.SUPERSEDED_AT.isNull())
                .and(READINGS.MEASURED_AT.le(until))
                .orderBy(READINGS.MEASURED_AT.desc(), READINGS.READING_ID.desc())
                .limit(1)
                .fetchOptional(row -> new LastLook(
                        row.get(READINGS.MEASURED_AT),
                        row.get(READINGS.BY_LABEL) == null ? "" : row.get(READINGS.BY_LABEL)));
    }
}
