package org.tankrounds.summary;

import java.time.Instant;
import java.util.Optional;
import org.tankrounds.pages.SummaryPage;
import org.tankrounds.web.Paper;
import org.tankrounds.words.Language;

/** The summary on paper: a page of its own, laid out for A4 and Letter alike. */
public final class SummaryPaper {
    private final Paper paper;

    public SummaryPaper(Paper.Printer printer) {
        this.paper = new Paper(printer);
    }

    byte[] write(SummaryPage page, Language language, Instant at) {
        return paper.write("summary/paper", page, "/paper/summary.css", language, Optional.of(at));
    }
}
