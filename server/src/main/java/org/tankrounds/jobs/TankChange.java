package org.tankrounds.jobs;

import java.time.Clock;
import java.util.function.Predicate;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;

/** A change that the board tells of: what it shows of the tank is made anew right after. */
public final class TankChange {
    private final Transactions transactions;
    private final DirtyTanks dirtyTanks;
    private final AfterChange afterChange;
    private final Clock clock;

    public TankChange(Transactions transactions, DirtyTanks dirtyTanks, AfterChange afterChange, Clock clock) {
        this.transactions = transactions;
        this.dirtyTanks = dirtyTanks;
        this.afterChange = afterChange;
        this.clock = clock;
    }

    /** @param work false where nothing was changed after all */
    public void make(int chapterId, int tankId, Predicate<DSLContext> work) {
        boolean changed = transactions.inChapter(chapterId, tx -> {
            boolean done = work.test(tx);
            if (done) {
                dirtyTanks.mark(tx, chapterId, tankId, clock.instant());
            }
            return done;
        });
        if (changed) {
            afterChange.changed(chapterId);
        }
    }
}
