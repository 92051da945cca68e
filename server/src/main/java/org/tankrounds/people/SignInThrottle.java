package org.tankrounds.people;

import static org.tankrounds.db.schema.Tables.SIGN_IN_THROTTLES;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.Record;

/**
 * Slows down guessing at one account, known or not: after a few failures each further one doubles the wait, up to a
 * quarter of an hour. Nobody is locked out for good, and a school behind one address does not slow down
 * another account.
 */
final class SignInThrottle {
    private static final int FREE_FAILURES = 4;
    private static final Duration LONGEST = Duration.ofMinutes(15);
    private static final Duration KEPT = Duration.ofDays(1);

    /** How long after so many failures in a row. */
    static Duration waitAfter(int failures) {
        if (failures < FREE_FAILURES) {
            return Duration.ZERO;
        }
        int doublings = Math.min(failures - FREE_FAILURES, 20);
        Duration wait = Duration.ofSeconds(1L << doublings);
        return wait.compareTo(LONGEST) > 0 ? LONGEST : wait;
    }

    /**
     * Counts an attempt as failed before it is judged, so that many at the same moment do not slip through together.
     *
     * @return how long to wait, or empty to go on; an attempt during the wait is not counted
     */
    Optional<Duration> enter(DSLContext tx, byte[] accountHash, Instant now) {
        tx.insertInto(SIGN_IN_THROTTLES)
                .set(SIGN_IN_THROTTLES.ACCOUNT_HASH, accountHash)
                .set(SIGN_IN_THROTTLES.FAILURES, 0)
                .set(SIGN_IN_THROTTLES.LAST_FAILED_AT, now)
                .onConflictDoNothing()
                .execute();
        Record throttle = tx.selectFrom(SIGN_IN_THROTTLES)
                .where(SIGN_IN_THROTTLES.ACCOUNT_HASH.eq(accountHash))
                .forUpdate()
                .fetchSingle();
        int failures = throttle.get(SIGN_IN_THROTTLES.FAILURES);
        Instant free = throttle.get(SIGN_IN_THROTTLES.LAST_FAILED_AT).plus(waitAfter(failures));
        // The database rounds to microseconds, up as well as down: a first attempt must not wait for a fraction of one.
        if (failures >= FREE_FAILURES && now.isBefore(free)) {
            return Optional.of(Duration.between(now, free));
        }
        tx.update(SIGN_IN_THROTTLES)
                .set(SIGN_IN_THROTTLES.FAILURES, failures + 1)
                .set(SIGN_IN_THROTTLES.LAST_FAILED_AT, now)
                .where(SIGN_IN_THROTTLES.ACCOUNT_HASH.eq(accountHash))
                .execute();
        return Optional.empty();
    }

    /** Without a name, the wall shows only failures that are more than a day old. */
    void forgetOld(DSLContext tx, Instant now) {
        tx.deleteFrom(SIGN_IN_THROTTLES)
                .where(SIGN_IN_THROTTLES.LAST_FAILED_AT.lt(now.minus(KEPT)))
                .execute();
    }

    void forget(DSLContext tx, byte[] accountHash) {
        tx.deleteFrom(SIGN_IN_THROTTLES).where(SIGN_IN_THROTTLES.ACCOUNT_HASH.eq(accountHash)).execute();
    }
}
