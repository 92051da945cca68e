package org.tankrounds.jobs;

import static org.tankrounds.db.schema.Tables.SESSIONS;

import java.time.Clock;
import java.time.Duration;
import java.time.ZoneOffset;
import java.time.OffsetDateTime;
import org.tankrounds.db.Transactions;

/** Once a day: room for the months to come, and no sessions that have ended. */
public final class Housekeeping implements Runnable {
    private static final Duration MONTHS_AHEAD = Duration.ofDays(92);

    private final Transactions transactions;
    private final Clock clock;

    public Housekeeping(Transactions transactions, Clock clock) {
        this.transactions = transactions;
        this.clock = clock;
    }

    @Override
    public void run() {
        OffsetDateTime upTo = clock.instant().plus(MONTHS_AHEAD).atOffset(ZoneOffset.UTC);
        transactions.outside(tx -> tx.fetch("SELECT ensure_measurement_months(?::timestamptz)", upTo.toString()));
        new EachChapter(transactions, this::forgetEndedSessions).run();
    }

    private void forgetEndedSessions(int chapterId) {
        transactions.inChapter(chapterId, tx -> tx.deleteFrom(SESSIONS)
                .where(SESSIONS.CHAPTER_ID.eq(chapterId)).and(SESSIONS.EXPIRES_AT.le(clock.instant()))
                .execute());
    }
}
