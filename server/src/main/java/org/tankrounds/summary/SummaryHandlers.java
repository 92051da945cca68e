package org.tankrounds.summary;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.SummaryPage;
import org.tankrounds.web.Accept;
import org.tankrounds.web.Caller;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.Pages;
import org.tankrounds.web.RefusedException;
import org.tankrounds.web.Speech;

/** The season summary: a page, its files, and the same for scripts. */
public final class SummaryHandlers {
    private final Transactions transactions;
    private final SummaryReads reads;
    private final SummaryFiles files;
    private final Pages pages;

    public SummaryHandlers(Transactions transactions, SummaryReads reads, SummaryFiles files, Pages pages) {
        this.transactions = transactions;
        this.reads = reads;
        this.files = files;
        this.pages = pages;
    }

    public void showPage(Context ctx) {
        SummaryPage page = files.pageMaker(load(ctx), Speech.of(ctx), true).page();
        pages.show(ctx, "summary/summary", page);
    }

    /** For scripts: the format by what they accept. */
    public void show(Context ctx) {
        ctx.header("Vary", "Accept");
        List<String> offered = SummaryFormat.mediaTypes();
        SummaryFormat format = Accept.choose(ctx.header("Accept"), offered)
                .flatMap(SummaryFormat::ofMediaType)
                .orElseThrow(() -> RefusedException.of(HttpStatus.NOT_ACCEPTABLE.getCode(),
                        "The summary is there as " + String.join(", ", offered) + ", and as .csv, .xlsx and .pdf."));
        send(ctx, format, false);
    }

    public void showCsv(Context ctx) {
        send(ctx, SummaryFormat.CSV, true);
    }

    public void showXlsx(Context ctx) {
        send(ctx, SummaryFormat.XLSX, true);
    }

    public void showPdf(Context ctx) {
        send(ctx, SummaryFormat.PDF, true);
    }

    public void showJson(Context ctx) {
        send(ctx, SummaryFormat.JSON, false);
    }

    private void send(Context ctx, SummaryFormat format, boolean asFile) {
        SeasonSummary summary = load(ctx);
        if (asFile) {
            ctx.header("Content-Disposition", "attachment; filename=\"season-summary-"
                    + summary.heading().seasonCode() + "." + format.extension() + "\"");
        }
        ctx.contentType(format.contentType()).result(files.write(summary, format, Speech.of(ctx)));
    }

    private SeasonSummary load(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        Optional<SeasonSummary> found = transactions.inChapter(chapterId,
                tx -> reads.find(tx, chapterId, ctx.pathParam("season")));
        return found.orElseThrow(() -> new NotFoundException("season"));
    }
}
