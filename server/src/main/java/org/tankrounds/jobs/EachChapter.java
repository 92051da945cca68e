package org.tankrounds.jobs;

import java.util.function.IntConsumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.tankrounds.db.Transactions;

/** Does something for every chapter, one after the other; one that fails does not stop the others. */
public final class EachChapter implements Runnable {
    private static final Logger LOG = LoggerFactory.getLogger(EachChapter.class);

    private final Transactions transactions;
    private final IntConsumer work;

    public EachChapter(Transactions transactions, IntConsumer work) {
        this.transactions = transactions;
        this.work = work;
    }

    @Override
    public void run() {
        for (int chapterId : transactions.chapterIds()) {
            try {
                work.accept(chapterId);
            } catch (RuntimeException e) {
                LOG.warn("chapter {} has to wait for the next time", chapterId, e);
            }
        }
    }
}
