package org.tankrounds.rounds;

import static org.tankrounds.db.schema.Tables.ROUNDS_VERSIONS;

import java.time.Instant;
import org.jooq.DSLContext;

/** Counts the changes of a chapter's rounds: while the number stands, so does what was sent before. */
public final class RoundsVersions {

    public long get(DSLContext tx, int chapterId) {
        Long version = tx.select(ROUNDS_VERSIONS.VERSION)
                .from(ROUNDS_VERSIONS)
                .where(ROUNDS_VERSIONS.CHAPTER_ID.eq(chapterId))
                .fetchOne(ROUNDS_VERSIONS.VERSION);
        return version == null ? 0 : version;
    }

    public void bump(DSLContext tx, int chapterId, Instant now) {
        tx.insertInto(ROUNDS_VERSIONS)
                .set(ROUNDS_VERSIONS.CHAPTER_ID, chapterId)
                .set(ROUNDS_VERSIONS.VERSION, 1L)
                .set(ROUNDS_VERSIONS.CHANGED_AT, now)
                .onConflict(ROUNDS_VERSIONS.CHAPTER_ID)
                .doUpdate()
                .set(ROUNDS_VERSIONS.VERSION, ROUNDS_VERSIONS.VERSION.plus(1))
                .set(ROUNDS_VERSIONS.CHANGED_AT, now)
                .execute();
    }
}
