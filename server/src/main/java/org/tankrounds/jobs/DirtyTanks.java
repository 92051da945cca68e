package org.tankrounds.jobs;

import static org.tankrounds.db.schema.Tables.DIRTY_TANKS;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import org.jooq.DSLContext;

/**
 * Tanks whose forecast is older than what is known of them. Marked in the transaction that learns something, so
 * that a crash between storing and forecasting forgets nothing. Every mark is a row of its own: marking never waits.
 */
public final class DirtyTanks {

    /** @param markId never given twice */
    public record Mark(long markId, int tankId) {}

    public void mark(DSLContext tx, int chapterId, int tankId, Instant since) {
        tx.insertInto(DIRTY_TANKS)
                .set(DIRTY_TANKS.CHAPTER_ID, chapterId)
                .set(DIRTY_TANKS.TANK_ID, tankId)
                .set(DIRTY_TANKS.SINCE, since)
                .execute();
    }

    /** The chapter's oldest marks, but for those put off. */
    public List<Mark> oldest(DSLContext tx, int chapterId, Collection<Long> putOff, int atMost) {
        return tx.select(DIRTY_TANKS.MARK_ID, DIRTY_TANKS.TANK_ID)
                .from(DIRTY_TANKS)
                .where(DIRTY_TANKS.CHAPTER_ID.eq(chapterId))
                .and(DIRTY_TANKS.MARK_ID.notIn(putOff))
                .orderBy(DIRTY_TANKS.MARK_ID)
                .limit(atMost)
                .fetch(row -> new Mark(row.value1(), row.value2()));
    }

    public void remove(DSLContext tx, int chapterId, Collection<Mark> marks) {
        tx.deleteFrom(DIRTY_TANKS)
                .where(DIRTY_TANKS.CHAPTER_ID.eq(chapterId))
                .and(DIRTY_TANKS.MARK_ID.in(marks.stream().map(Mark::markId).toList()))
                .execute();
    }
}
