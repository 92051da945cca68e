package org.tankrounds.season;

import static org.tankrounds.db.schema.Tables.LOTS;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.tankrounds.jobs.DirtyTanks;
import org.tankrounds.places.Tank;

/**
 * Takes the lot of a receipt away that is taken back, unless the count needs its eggs by now; its numbers stay on the
 * receipt.
 */
public final class LotWithdrawal {
    private final SeasonReads reads;
    private final DirtyTanks dirtyTanks;

    public LotWithdrawal(SeasonReads reads, DirtyTanks dirtyTanks) {
        this.reads = reads;
        this.dirtyTanks = dirtyTanks;
    }

    /**
     * Nothing may refer to the lot any more.
     *
     * @return false where the count needs its eggs; then nothing is changed here, and the caller rolls back
     */
    public boolean withdraw(DSLContext tx, int chapterId, Season season, Tank tank, int lotId, Instant now) {
        reads.tanks().lock(tx, chapterId, List.of(tank.tankId()));
        Optional<Lot> lot = reads.lots().listOfTank(tx, chapterId, season.seasonId(), tank.tankId()).stream()
                .filter(one -> one.lotId() == lotId).findFirst();
        CountBook book = new CountBook(reads, tx, chapterId, season, now);
        if (lot.filter(one -> NeededEggs.stand(book.account(tank), book.accountWithout(tank, one), one)).isPresent()) {
            return false;
        }
        tx.deleteFrom(LOTS).where(LOTS.CHAPTER_ID.eq(chapterId)).and(LOTS.LOT_ID.eq(lotId)).execute();
        dirtyTanks.mark(tx, chapterId, tank.tankId(), now);
        return true;
    }
}
