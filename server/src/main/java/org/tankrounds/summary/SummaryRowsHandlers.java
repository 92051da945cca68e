package org.tankrounds.summary;

import io.javalin.http.Context;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.SummaryRowsPage;
import org.tankrounds.season.Season;
import org.tankrounds.web.Caller;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Speech;

/** The rows behind a figure of the summary: of the chapter, a school, a tank or one day of a tank. */
public final class SummaryRowsHandlers {
    private final Transactions transactions;
    private final SummaryReads reads;
    private final Pages pages;

    public SummaryRowsHandlers(Transactions transactions, SummaryReads reads, Pages pages) {
        this.transactions = transactions;
        this.reads = reads;
        this.pages = pages;
    }

    public void show(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        SummaryFigure figure = SummaryFigure.of(ctx.pathParam("figure"))
                .orElseThrow(() -> new NotFoundException("page"));
        SummaryRowsPage page = transactions.inChapter(chapterId, tx -> {
            Season season = reads.season(tx, chapterId, ctx.pathParam("season"));
            String tank = ctx.queryParam("tank");
            return tank == null ? ofTanks(tx, ctx, season, figure) : ofTank(tx, ctx, season, figure, tank);
        });
        pages.show(ctx, "summary/rows", page);
    }

    private SummaryRowsPage ofTanks(DSLContext tx, Context ctx, Season season, SummaryFigure figure) {
        SeasonSummary summary = reads.summary(tx, Caller.of(ctx).chapterId(), season);
        Optional<SeasonSummary.Row> school = Optional.ofNullable(ctx.queryParam("school"))
                .map(code -> summary.schools().stream().filter(row -> row.schoolCode().equals(code)).findFirst()
                        .orElseThrow(() -> new NotFoundException("school")));
        return new SummaryRowsMaker(summary, figure, Speech.of(ctx)).ofTanks(school);
    }

    private SummaryRowsPage ofTank(DSLContext tx, Context ctx, Season season, SummaryFigure figure, String code) {
        int chapterId = Caller.of(ctx).chapterId();
        TankEvidence evidence = reads.get(tx, chapterId, season, code);
        SeasonSummary alone = SeasonSummary.of(reads.heading(tx, chapterId, season));
        SummaryRowsMaker maker = new SummaryRowsMaker(alone, figure, Speech.of(ctx));
        String day = ctx.queryParam("day");
        if (day != null) {
            LocalDate asked = day(day, season);
            return maker.ofDay(evidence.tank(), asked, reads.readings(tx, chapterId, evidence.tank(), asked));
        }
        return maker.ofTank(evidence, reads.readingDays(tx, chapterId, season, evidence.tank()),
                reads.tanks(tx, chapterId));
    }

    private static LocalDate day(String text, Season season) {
        try {
            LocalDate day = LocalDate.parse(text);
            if (!day.isBefore(season.details().startsOn()) && !day.isAfter(season.details().endsOn())) {
                return day;
            }
        } catch (DateTimeException e) {
            // Names no day, as one outside the season names none of it.
        }
        throw new NotFoundException("day");
    }
}
