package org.tankrounds.summary;

import java.util.List;
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

    /** @return the number of the version; the same one for the same form */
    int freeze(Caller caller, String season, UUID submissionId) {
        for (int left = TRIES; ; left--) {
            try {
                return transactions.inChapterAtOneMoment(caller.chapterId(),
                        tx -> freeze(tx, caller, reads.season(tx, caller.chapterId(), season), submissionId));
            } catch (DataAccessException e) {
                // Somebody else froze it meanwhile: theirs is then the version before ours, or is ours.
                if (!Duplicates.caused(e) || left == 1) {
                    throw e;
                }
            }
        }
    }

    private int freeze(DSLContext tx, Caller caller, Season season, UUID submissionId) {
        int chapterId = caller.chapterId();
        Optional<Integer> already = versions.frozenBy(tx, chapterId, season, submissionId);
        if (already.isPresent()) {
            return already.get();
        }
        SeasonSummary summary = reads.summary(tx, chapterId, season);
        Optional<FrozenVersion> before = versions.list(tx, chapterId, season).stream().findFirst();
        Stamp stamp = files.stamp(before.map(FrozenVersion::version).orElse(0) + 1,
                before.map(one -> changesSince(tx, chapterId, season, one.version(), summary)).orElse(List.of()));
        versions.add(tx, chapterId, season, submissionId, caller.personId().orElseThrow(), stamp,
                files.all(tx, chapterId, season, summary, stamp));
        return stamp.version().orElseThrow();
    }

    /** What is otherwise now than it was in a version. */
    List<Change> changesSince(DSLContext tx, int chapterId, Season season, int version, SeasonSummary now) {
        return SummaryChanges.between(saved(tx, chapterId, season, version), SummaryChanges.Saved.of(now),
                ChangeWording::isDerived);
    }

    /** What is otherwise in a version than in the one before; nothing in the first. */
    List<Change> changesOf(DSLContext tx, int chapterId, Season season, int version) {
        return version == 1 ? List.of() : SummaryChanges.between(saved(tx, chapterId, season, version - 1),
                saved(tx, chapterId, season, version), ChangeWording::isDerived);
    }

    private SummaryChanges.Saved saved(DSLContext tx, int chapterId, Season season, int version) {
        return new SummaryChanges.Saved(
                versions.content(tx, chapterId, season, version, SummaryFormat.CSV.extension()).orElseThrow(),
                versions.content(tx, chapterId, season, version, SummaryFormat.JSON.extension()).orElseThrow());
    }
}
