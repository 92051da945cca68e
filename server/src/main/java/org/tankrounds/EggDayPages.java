package org.tankrounds;

import java.time.Clock;
import org.tankrounds.db.Transactions;
import org.tankrounds.eggday.BookReceipt;
import org.tankrounds.eggday.CoolerRepository;
import org.tankrounds.eggday.EggPlanHandlers;
import org.tankrounds.eggday.EggReads;
import org.tankrounds.eggday.EggRunHandlers;
import org.tankrounds.eggday.EggRunRepository;
import org.tankrounds.eggday.EggStopHandlers;
import org.tankrounds.eggday.ReceiptRepository;
import org.tankrounds.jobs.AfterChange;
import org.tankrounds.jobs.DirtyTanks;
import org.tankrounds.readings.AlongReadings;
import org.tankrounds.season.LotEdits;
import org.tankrounds.season.LotWithdrawal;
import org.tankrounds.season.SeasonReads;
import org.tankrounds.web.Pages;

/** The pages of egg day: planning it, driving it, and what classes received. */
record EggDayPages(EggPlanHandlers plans, EggRunHandlers runs, EggStopHandlers stops) {

    static EggDayPages of(Transactions transactions, DirtyTanks dirtyTanks, AlongReadings readings,
            AfterChange afterChange, Pages pages, Clock clock) {
        SeasonReads season = SeasonPages.seasonReads();
        EggReads reads =
                new EggReads(new EggRunRepository(), new CoolerRepository(), new ReceiptRepository(), season);
        BookReceipt book = new BookReceipt(
                reads, new LotEdits(dirtyTanks), new LotWithdrawal(season, dirtyTanks), readings, clock);
        return new EggDayPages(
                new EggPlanHandlers(transactions, reads, pages, clock),
                new EggRunHandlers(transactions, reads, pages, clock),
                new EggStopHandlers(transactions, reads, book, afterChange, pages, clock));
    }
}
