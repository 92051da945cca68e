package org.tankrounds.summary;

import java.time.Clock;
import java.util.Optional;
import org.jooq.DSLContext;

/** A season's summary as a file of one of the formats. */
public final class SummaryFiles {
    private final SummaryReads reads;
    private final SummaryPaper paper;
    private final String version;
    private final Clock clock;

    /** @param version of the software, as it stands on paper */
    public SummaryFiles(SummaryReads reads, SummaryPaper paper, String version, Clock clock) {
        this.reads = reads;
        this.paper = paper;
        this.version = version;
        this.clock = clock;
    }

    /** Empty where the chapter has no such season. */
    public Optional<byte[]> find(DSLContext tx, int chapterId, String season, SummaryFormat format) {
        return reads.find(tx, chapterId, season).map(summary -> write(summary, format));
    }

    byte[] write(SeasonSummary summary, SummaryFormat format) {
        return switch (format) {
            case JSON -> SummaryJson.write(summary);
            case CSV -> SummaryCsv.write(summary);
            case XLSX -> SummaryWorkbook.write(summary, version, clock.instant());
            case PDF -> paper.write(new SummaryPageMaker(summary, version, clock.instant()).page());
        };
    }

    SummaryPageMaker pageMaker(SeasonSummary summary) {
        return new SummaryPageMaker(summary, version, clock.instant());
    }
}
