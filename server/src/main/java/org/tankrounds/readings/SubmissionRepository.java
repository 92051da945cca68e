package org.tankrounds.readings;

import static org.tankrounds.db.schema.Tables.SUBMISSIONS;

import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jooq.DSLContext;

/** Which key stored which reading. */
final class SubmissionRepository {

    /** @param fingerprint of what was posted */
    record Submission(byte[] fingerprint, String readingCode) {}

    /** A key is the tank's own. */
    record TankKey(int tankId, String key) {}

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

    Map<TankKey, Submission> findAll(DSLContext tx, int chapterId, List<TankKey> keys) {
        Map<TankKey, Submission> found = new HashMap<>();
        tx.fetch("""
                SELECT s.tank_id, s.idempotency_key, s.fingerprint, s.reading_code
                FROM unnest(?::int[], ?::text[]) AS wanted (tank_id, key)
                JOIN submissions s ON s.chapter_id = ? AND s.tank_id = wanted.tank_id
                    AND s.idempotency_key = wanted.key
                """, tankIds(keys), texts(keys), chapterId)
                .forEach(row -> found.put(
                        new TankKey(row.get(0, Integer.class), row.get(1, String.class)),
                        new Submission(row.get(2, byte[].class), row.get(3, String.class))));
        return found;
    }

    /**
     * Takes many keys, each at most once, always in the same order, so that two batches cannot wait for each other.
     *
     * @return the keys that were free
     */
    Set<TankKey> claimAll(
            DSLContext tx, int chapterId, List<TankKey> keys, List<Submission> submissions, Instant now) {
        byte[][] fingerprints = submissions.stream().map(Submission::fingerprint).toArray(byte[][]::new);
        String[] codes = submissions.stream().map(Submission::readingCode).toArray(String[]::new);
        Set<TankKey> claimed = new HashSet<>();
        tx.fetch("""
                INSERT INTO submissions (chapter_id, tank_id, idempotency_key, fingerprint, reading_code, created_at)
                SELECT ?, tank_id, key, fingerprint, code, ?::timestamptz
                FROM unnest(?::int[], ?::text[], ?::bytea[], ?::text[]) AS given (tank_id, key, fingerprint, code)
                ORDER BY tank_id, key
                ON CONFLICT DO NOTHING
                RETURNING tank_id, idempotency_key
                """, chapterId, now.toString(), tankIds(keys), texts(keys), fingerprints, codes)
                .forEach(row -> claimed.add(new TankKey(row.get(0, Integer.class), row.get(1, String.class))));
        return claimed;
    }

    private static Integer[] tankIds(List<TankKey> keys) {
        return keys.stream().map(TankKey::tankId).toArray(Integer[]::new);
    }

    private static String[] texts(List<TankKey> keys) {
        return keys.stream().map(TankKey::key).toArray(String[]::new);
    }
}
