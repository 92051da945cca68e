package org.tankrounds.readings;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jooq.exception.DataAccessException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.tankrounds.db.Transactions;
import org.tankrounds.jobs.AfterChange;
import org.tankrounds.jobs.DirtyTanks;
import org.tankrounds.places.KitRepository;
import org.tankrounds.places.TankRepository;
import org.tankrounds.web.Caller;

/**
 * Stores a few hundred lines in one transaction. What is wrong with a line is found before anything is written, so
 * one bad line costs the others nothing; where writing fails all the same, each line is tried by itself.
 */
public final class StoreBatch {
    private static final Logger LOG = LoggerFactory.getLogger(StoreBatch.class);
    private static final int MOST_TRIES = 4;
    static final int LINES_A_TRANSACTION = 500;

    private final Transactions transactions;
    private final TankRepository tanks;
    private final KitRepository kits;
    private final ReadingRepository readings;
    private final DirtyTanks dirtyTanks;
    private final AfterChange afterChange;
    private final Clock clock;

    public StoreBatch(Transactions transactions, TankRepository tanks, KitRepository kits,
            ReadingRepository readings, DirtyTanks dirtyTanks, AfterChange afterChange, Clock clock) {
        this.transactions = transactions;
        this.tanks = tanks;
        this.kits = kits;
        this.readings = readings;
        this.dirtyTanks = dirtyTanks;
        this.afterChange = afterChange;
        this.clock = clock;
    }

    BatchTanks tanksOf(Caller caller) {
        return new BatchTanks(caller, tanks, kits);
    }

    void finished(Caller caller) {
        afterChange.changed(caller.chapterId());
    }

    /**
     * For lines that were made here instead of sent.
     *
     * @param lines as a script would post them
     * @throws IllegalArgumentException when one of them is refused
     */
    public void storeAll(Caller caller, List<byte[]> lines) {
        BatchTanks batchTanks = tanksOf(caller);
        for (int from = 0; from < lines.size(); from += LINES_A_TRANSACTION) {
            List<BatchLine> some = new ArrayList<>();
            for (int i = from; i < Math.min(lines.size(), from + LINES_A_TRANSACTION); i++) {
                some.add(BatchLine.read(new NdjsonLines.Line(i + 1, Optional.of(lines.get(i)))));
            }
            store(caller, batchTanks, some).stream().filter(answer -> answer.readingCode().isEmpty()).findFirst()
                    .ifPresent(answer -> {
                        throw new IllegalArgumentException("refused: " + answer.json());
                    });
        }
        finished(caller);
    }

    /** @return one answer a line, in order; what it says is stored is durable */
    List<BatchAnswer> store(Caller caller, BatchTanks batchTanks, List<BatchLine> lines) {
        for (int tries = 1; ; tries++) {
            try {
                return transactions.inChapter(caller.chapterId(), tx ->
                        new BatchTransaction(tx, caller.chapterId(), batchTanks, readings, dirtyTanks, clock.instant())
                                .store(lines));
            } catch (DataAccessException e) {
                if (StoreReading.waitedTooLong(e) && tries < MOST_TRIES) {
                    continue;
                }
                return lines.size() == 1 ? List.of(failed(lines.get(0), e)) : oneByOne(caller, batchTanks, lines, e);
            }
        }
    }

    private List<BatchAnswer> oneByOne(
            Caller caller, BatchTanks batchTanks, List<BatchLine> lines, DataAccessException why) {
        List<BatchAnswer> answers = new ArrayList<>();
        String state = String.valueOf(why.sqlState());
        boolean dataAtFault = state.startsWith("22") || state.startsWith("23");
        for (BatchLine line : lines) {
            answers.add(dataAtFault ? store(caller, batchTanks, List.of(line)).get(0) : failed(line, why));
        }
        return answers;
    }

    private static BatchAnswer failed(BatchLine line, DataAccessException why) {
        LOG.warn("line of a batch was not stored: {}", why.getMessage());
        return BatchAnswer.refused(line.number(), 503,
                "The database did not take this line. It was not stored; send it again with the same key.");
    }
}
