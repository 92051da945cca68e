package org.tankrounds.jobs;

import static org.tankrounds.db.schema.Tables.DIRTY_TANKS;

import java.time.Instant;
import java.util.List;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;

/**
 * Tanks whose forecast is older than what is known of them. Marked in the transaction that learns something, so
 * that a crash between storing and forecasting forgets nothing.
 */
public final class DirtyTanks {

    public void mark(DSLContext tx, int chapterId, int tankId, Instant since) {
        tx.insertInto(DIRTY_TANKS)
                .set(DIRTY_TANKS.CHAPTER_ID, chapterId)
                .set(DIRTY_TANKS.TANK_ID, tankId)
                .set(DIRTY_TANKS.SINCE, since)
                .onConflict(DIRTY_TANKS.CHAPTER_ID, DIRTY_TANKS.TANK_ID)
                .doUpdate().set(DIRTY_TANKS.SINCE, since)
                .execute();
    }

    /** Takes the chapter's oldest marks away and hands them over; a roll-back puts them back. */
    public List<Integer> take(DSLContext tx, int chapterId, int atMost) {
        return tx.deleteFrom(DIRTY_TANKS)
                .where(DIRTY_TANKS.CHAPTER_ID.eq(chapterId))
                .and(DIRTY_TANKS.TANK_ID.in(DSL.select(DIRTY_TANKS.TANK_ID)
                        .from(DIRTY_TANKS)
                        .where(DIRTY_TANKS.CHAPTER_ID.eq(chapterId))
                        .orderBy(DIRTY_TANKS.SINCE, DIRTY_TANKS.TANK_ID)
                        .limit(atMost)))
                .returning(DIRTY_TANKS.TANK_ID)
                .fetch(DIRTY_TANKS.TANK_ID);
    }
}
