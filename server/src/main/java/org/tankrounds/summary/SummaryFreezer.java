package org.tankrounds.summary;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.exception.DataAccessException;
import org.tankrounds.db.Duplicates;
import org.tankrounds.db.Transactions;
import org.tankrounds.season.Season;
import org.tankrounds.web.Caller;

/** Freezes a season's summary: all its files, from the rows of one moment, kept for good. */
public final class SummaryFreezer {
    private static final int TRIES = 3;

    private final Transactions transactions;
    private final SummaryReads reads;
    private final SummaryVersions versions;
    private final SummaryFiles files;

    public SummaryFreezer(Transactions transactions, SummaryReads reads, SummaryVersions versions, SummaryFiles files) {
        this.transactions = transactions;
        this.reads = reads;
        this.versions = versions;
        this.files = files;
    }

    /**
     * What is to be frozen, of one moment's rows.
     *
     * @param already the version that the same form was frozen as, or that says the same
     */
    private record Taken(Season season, Optional<Integer> already, SeasonSummary summary, Stamp stamp, byte[] zip) {}

    /** @return the number of the version; the same one for the same form */
    public int freeze(Caller caller, String season, UUID submissionId) {
        for (int left = TRIES; ; left--) {
            try {
                return freezeOnce(caller, season, submissionId);
            } catch (DataAccessException e) {
                // Somebody else froze it meanwhile: theirs is then the version before ours, or is ours.
                if (!Duplicates.caused(e) || left == 1) {
                    throw e;
                }
            }
        }
    }

    /** Paper is laid out between the transactions: no connection waits for it. */
    private int freezeOnce(Caller caller, String season, UUID submissionId) {
        int chapterId = caller.chapterId();
        Taken taken = transactions.inChapterAtOneMoment(chapterId,
                tx -> take(tx, chapterId, reads.season(tx, chapterId, season), submissionId));
        if (taken.already().isPresent()) {
            return taken.already().get();
        }
        Map<String, byte[]> all = files.all(taken.summary(), taken.stamp(), taken.zip());
        transactions.inChapter(chapterId, tx -> {
            versions.add(tx, chapterId, taken.season(), submissionId, caller.personId().orElseThrow(),
                    taken.stamp(), all);
            return null;
        });
        return taken.stamp().version().orElseThrow();
    }

    private Taken take(DSLContext tx, int chapterId, Season season, UUID submissionId) {
        Optional<Integer> already = versions.frozenBy(tx, chapterId, season, submissionId);
        if (already.isPresent()) {
            return new Taken(season, already, null, null, null);
        }
        SeasonSummary summary = reads.summary(tx, chapterId, season);
        Optional<FrozenVersion> before = versions.list(tx, chapterId, season).stream().findFirst();
        Stamp stamp = files.stamp(before.map(FrozenVersion::version).orElse(0) + 1);
        byte[] zip = files.zip(tx, chapterId, season, stamp);
        List<Change> changes = before.map(one -> changes(tx, chapterId, season, one, summary, zip)).orElse(List.of());
        return before.isPresent() && changes.isEmpty()
                ? new Taken(season, before.map(FrozenVersion::version), null, null, null)
                : new Taken(season, already, summary, stamp.telling(changes), zip);
    }

    /** All that is otherwise than in a version: its figures, and the rows behind them. */
    private List<Change> changes(
            DSLContext tx, int chapterId, Season season, FrozenVersion before, SeasonSummary now, byte[] zip) {
        List<Change> changes = new ArrayList<>(changesSince(tx, chapterId, season, before.version(), now));
        changes.addAll(PackageChanges.between(versions.content(
                tx, chapterId, season, before.version(), SummaryFormat.ZIP.extension()).orElseThrow(), zip));
        return changes;
    }

    /** Which figures are otherwise now than they were in a version; the rows behind them are not looked at. */
    List<Change> changesSince(DSLContext tx, int chapterId, Season season, int version, SeasonSummary now) {
        return SummaryChanges.between(saved(tx, chapterId, season, version), SummaryChanges.Saved.of(now),
                ChangeWording::isDerived);
    }

    /** What is otherwise in a version than in the one before, as it tells itself; nothing in the first. */
    List<Change> changesOf(DSLContext tx, int chapterId, Season season, int version) {
        return SummaryChanges.toldBy(saved(tx, chapterId, season, version).json());
    }

    private SummaryChanges.Saved saved(DSLContext tx, int chapterId, Season season, int version) {
        return new SummaryChanges.Saved(
                versions.content(tx, chapterId, season, version, SummaryFormat.CSV.extension()).orElseThrow(),
                versions.content(tx, chapterId, season, version, SummaryFormat.JSON.extension()).orElseThrow());
    }
}
