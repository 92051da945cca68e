package org.tankrounds.readings;

import static org.tankrounds.db.schema.Tables.SUBMISSIONS;

import java.time.Instant;
import java.util.Optional;
import org.jooq.DSLContext;

/** Which key stored which reading. */
final class SubmissionRepository {

    /** @param fingerprint of what was posted */
    record Submission(byte[] fingerprint, String readingCode) {}

    Optional<Submission> find(DSLContext tx, int chapterId, int tankId, String key) {
        return tx.select(SUBMISSIONS.FINGERPRINT, SUBMISSIONS.READING_CODE)
                .from(SUBMISSIONS)
                .where(SUBMISSIONS.CHAPTER_ID.eq(chapterId)).and(SUBMISSIONS.TANK_ID.eq(tankId))
                .and(SUBMISSIONS.IDEMPOTENCY_KEY.eq(key))
                .fetchOptional(row -> new Submission(row.value1(), row.value2()));
    }

    /**
     * Takes the key. Where another transaction is just taking the same one, waits for how that ends.
     *
     * @return false where the key was taken before
     */
    boolean claim(DSLContext tx, int chapterId, int tankId, String key, Submission submission, Instant now) {
        return tx.insertInto(SUBMISSIONS)
                .set(SUBMISSIONS.CHAPTER_ID, chapterId)
                .set(SUBMISSIONS.TANK_ID, tankId)
                .set(SUBMISSIONS.IDEMPOTENCY_KEY, key)
                .set(SUBMISSIONS.FINGERPRINT, submission.fingerprint())
                .set(SUBMISSIONS.READING_CODE, submission.readingCode())
                .set(SUBMISSIONS.CREATED_AT, now)
                .onConflictDoNothing()
                .execute() == 1;
    }
}
