package org.tankrounds.summary;

import java.time.Clock;
import java.util.Optional;
import org.jooq.DSLContext;
import org.tankrounds.web.Speech;

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
        return reads.find(tx, chapterId, season).map(summary -> write(summary, format, Speech.PLAIN));
    }

    /** @param speech of whoever reads what is printed; the other formats are English for everybody */
    byte[] write(SeasonSummary summary, SummaryFormat format, Speech speech) {
        return switch (format) {
            case JSON -> SummaryJson.write(summary);
            case CSV -> SummaryCsv.write(summary);
            case XLSX -> SummaryWorkbook.write(summary, version, clock.instant());
            case PDF -> paper.write(pageMaker(summary, speech, false).page(), speech.language());
        };
    }

    SummaryPageMaker pageMaker(SeasonSummary summary, Speech speech, boolean linked) {
        return new SummaryPageMaker(summary, version, clock.instant(), speech, linked);
    }
}
