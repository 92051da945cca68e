package org.tankrounds;

import java.time.Clock;
import org.tankrounds.calendar.CalendarHandlers;
import org.tankrounds.calendar.CalendarReads;
import org.tankrounds.db.Transactions;
import org.tankrounds.eggday.ReceiptRepository;
import org.tankrounds.jobs.AfterChange;
import org.tankrounds.jobs.DirtyTanks;
import org.tankrounds.people.ChapterRepository;
import org.tankrounds.people.SiteAddress;
import org.tankrounds.places.TankRepository;
import org.tankrounds.readings.MeasurementRows;
import org.tankrounds.readings.ObservationRepository;
import org.tankrounds.readings.ReadingRepository;
import org.tankrounds.readings.ReadingTallies;
import org.tankrounds.release.DayRepository;
import org.tankrounds.release.SiteRepository;
import org.tankrounds.release.StreamCheckRepository;
import org.tankrounds.season.CountHandlers;
import org.tankrounds.season.CountRepository;
import org.tankrounds.season.DeathCauseRepository;
import org.tankrounds.season.DeathHandlers;
import org.tankrounds.season.FishSampleRepository;
import org.tankrounds.season.LotEdits;
import org.tankrounds.season.LotHandlers;
import org.tankrounds.season.LotRepository;
import org.tankrounds.season.LotWithdrawalHandlers;
import org.tankrounds.season.SeasonHandlers;
import org.tankrounds.season.SeasonReads;
import org.tankrounds.season.SeasonRepository;
import org.tankrounds.summary.DataPackage;
import org.tankrounds.summary.FreezeHandlers;
import org.tankrounds.summary.ReaderHandlers;
import org.tankrounds.summary.SummaryFiles;
import org.tankrounds.summary.SummaryFreezer;
import org.tankrounds.summary.SummaryHandlers;
import org.tankrounds.summary.SummaryLinks;
import org.tankrounds.summary.SummaryPaper;
import org.tankrounds.summary.SummaryReads;
import org.tankrounds.summary.SummaryRowsHandlers;
import org.tankrounds.summary.SummaryVersions;
import org.tankrounds.summary.WatersideReads;
import org.tankrounds.tasks.TaskRepository;
import org.tankrounds.visits.VisitRepository;
import org.tankrounds.web.Pages;
import org.tankrounds.years.YearHandlers;
import org.tankrounds.years.YearReads;

/** The pages of seasons, lots and counts, and the summary. */
record SeasonPages(SeasonHandlers seasons, LotHandlers lots, LotWithdrawalHandlers lotWithdrawals,
        CountHandlers counts, DeathHandlers deaths, CalendarHandlers calendar, SummaryHandlers summary,
        SummaryRowsHandlers summaryRows, FreezeHandlers freeze, ReaderHandlers readers, YearHandlers years) {

    static SeasonPages of(Transactions transactions, DirtyTanks dirtyTanks, AfterChange afterChange,
            SiteAddress siteAddress, Pages pages, Clock clock) {
        SeasonReads reads = seasonReads();
        SummaryReads summaryReads = summaryReads(reads, clock);
        SummaryVersions versions = new SummaryVersions();
        SummaryFiles files = summaryFiles(summaryReads, pages, clock);
        SummaryFreezer freezer = new SummaryFreezer(transactions, summaryReads, versions, files);
        return new SeasonPages(
                new SeasonHandlers(transactions, reads, pages, clock),
                new LotHandlers(transactions, reads, new LotEdits(dirtyTanks), afterChange, pages, clock),
                new LotWithdrawalHandlers(transactions, reads, new ReceiptRepository(), new LotEdits(dirtyTanks),
                        afterChange, pages, clock),
                new CountHandlers(transactions, reads, new ReceiptRepository(), dirtyTanks, afterChange, pages, clock),
                new DeathHandlers(transactions, reads, pages, clock),
                new CalendarHandlers(transactions, new CalendarReads(reads, new FishSampleRepository()),
                        new LotEdits(dirtyTanks), afterChange, pages, clock),
                new SummaryHandlers(transactions, summaryReads, versions, freezer, files, pages),
                new SummaryRowsHandlers(transactions, summaryReads, pages),
                new FreezeHandlers(transactions, summaryReads, versions, freezer, new SummaryLinks(), siteAddress,
                        pages, clock),
                new ReaderHandlers(transactions, summaryReads, versions, pages, clock),
                new YearHandlers(transactions, new YearReads(reads), pages, clock));
    }

    /** Freezes summaries where nobody presses a button for it. */
    static SummaryFreezer freezer(Transactions transactions, Pages pages, Clock clock) {
        SummaryReads reads = summaryReads(seasonReads(), clock);
        return new SummaryFreezer(transactions, reads, new SummaryVersions(), summaryFiles(reads, pages, clock));
    }

    /** The same files for the command line, which has no server. */
    static SummaryFiles summaryFiles(Pages pages, Clock clock) {
        return summaryFiles(summaryReads(seasonReads(), clock), pages, clock);
    }

    static SeasonReads seasonReads() {
        return new SeasonReads(
                new SeasonRepository(), new LotRepository(), new CountRepository(), new DeathCauseRepository(),
                new TankRepository(),
                new ObservationRepository());
    }

    private static SummaryReads summaryReads(SeasonReads reads, Clock clock) {
        return new SummaryReads(new ChapterRepository(), reads, new ReadingTallies(), new ReadingRepository(),
                new TaskRepository(), new VisitRepository(), new WatersideReads(reads.counts(), new DayRepository(),
                        new SiteRepository(), new StreamCheckRepository()), clock);
    }

    private static SummaryFiles summaryFiles(SummaryReads reads, Pages pages, Clock clock) {
        String version = SeasonPages.class.getPackage().getImplementationVersion();
        return new SummaryFiles(reads, new SummaryVersions(), new SummaryPaper(pages::print),
                new DataPackage(reads, new MeasurementRows()), version == null ? "from source" : version, clock);
    }
}
