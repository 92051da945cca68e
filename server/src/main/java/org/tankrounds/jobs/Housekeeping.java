package org.tankrounds.jobs;

import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.function.IntConsumer;
import org.tankrounds.db.Transactions;

/** Once a day: room for the months to come, and in every chapter no sessions that have ended. */
public final class Housekeeping implements Runnable {
    private static final Duration MONTHS_AHEAD = Duration.ofDays(92);

    private final Transactions transactions;
    private final IntConsumer forgetEndedSessions;
    private final Clock clock;

    /** @param forgetEndedSessions of a chapter by its number */
    public Housekeeping(Transactions transactions, IntConsumer forgetEndedSessions, Clock clock) {
        this.transactions = transactions;
        this.forgetEndedSessions = forgetEndedSessions;
        this.clock = clock;
    }

    @Override
    public void run() {
        OffsetDateTime upTo = clock.instant().plus(MONTHS_AHEAD).atOffset(ZoneOffset.UTC);
        transactions.outside(tx -> tx.fetch("SELECT ensure_measurement_months(?::timestamptz)",
                upTo.toString()));
        new EachChapter(transactions, forgetEndedSessions).run();
    }
}
