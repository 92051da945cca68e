package org.tankrounds.eggday;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.UUID;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.EggSheetPage;
import org.tankrounds.season.Season;
import org.tankrounds.web.Asked;
import org.tankrounds.web.Caller;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Formats;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Paper;
import org.tankrounds.web.Role;
import org.tankrounds.web.Speech;
import org.tankrounds.web.TypedNumber;

/** The page of an egg day, the cooler's temperatures on the way, and all of it on paper. */
public final class EggRunHandlers {
    private static final String FORM = "form";
    private static final Set<String> RECEIPTS = Set.of("planned", "moved", "checked", "withdrawn");

    private final Transactions transactions;
    private final EggReads reads;
    private final Pages pages;
    private final Paper paper;
    private final Clock clock;

    public EggRunHandlers(Transactions transactions, EggReads reads, Pages pages, Clock clock) {
        this.transactions = transactions;
        this.reads = reads;
        this.pages = pages;
        this.paper = new Paper(pages::print);
        this.clock = clock;
    }

    /** The egg day that is today or comes next, else the last; where there is none, where one is planned. */
    public void showCurrent(Context ctx) {
        Caller caller = Caller.of(ctx);
        LocalDate today = LocalDate.ofInstant(clock.instant(), caller.zone());
        String to = transactions.inChapter(caller.chapterId(), tx -> {
            Season season = reads.season().seasons().get(tx, caller.chapterId(), ctx.pathParam("season"));
            List<EggRun> runs = reads.runs().list(tx, caller.chapterId(), season.seasonId());
            return runs.stream().filter(run -> !run.details().day().isBefore(today)).findFirst()
                    .or(() -> runs.stream().reduce((first, next) -> next))
                    .map(run -> run.address(season.code()))
                    .orElse(caller.role() == Role.COORDINATOR ? EggRun.addressOf(season.code()) + "/new" : "/rounds");
        });
        ctx.redirect(to, HttpStatus.SEE_OTHER);
    }

    public void show(Context ctx) {
        show(ctx, known(ctx), FormInput.showing(ctx, CheckForm.blank()), UUID.randomUUID());
    }

    public void check(Context ctx) {
        Caller caller = Caller.of(ctx);
        KnownRun known = known(ctx);
        UUID submission = Asked.submissionId(ctx.queryParam(FORM));
        FormInput form = FormInput.of(ctx, CheckForm.NAMES);
        Optional<CoolerCheck> check =
                new CheckForm(known.run(), caller.zone(), clock.instant()).parse(form, Speech.of(ctx));
        if (check.isEmpty()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, known, form, submission);
            return;
        }
        transactions.inChapter(caller.chapterId(), tx -> {
            reads.checks().add(tx, caller.chapterId(), known.run().runId(), submission, check.get(),
                    caller.personId().orElseThrow(), clock.instant());
            return null;
        });
        ctx.redirect(known.address() + "?saved=checked#on-the-way", HttpStatus.SEE_OTHER);
    }

    public void withdrawCheck(Context ctx) {
        Caller caller = Caller.of(ctx);
        KnownRun known = known(ctx);
        OptionalInt check = TypedNumber.whole(ctx.pathParam("check"));
        if (check.isEmpty()) {
            throw new NotFoundException("check");
        }
        transactions.inChapter(caller.chapterId(), tx -> {
            reads.checks().withdraw(tx, caller.chapterId(), known.run().runId(), check.getAsInt(),
                    caller.personId().orElseThrow(), clock.instant());
            return null;
        });
        ctx.redirect(known.address() + "?saved=withdrawn#on-the-way", HttpStatus.SEE_OTHER);
    }

    public void showSheet(Context ctx) {
        pages.show(ctx, "paper/egg-sheet", sheet(ctx));
    }

    public void showPdf(Context ctx) {
        EggSheetPage page = sheet(ctx);
        byte[] pdf = paper.write("paper/egg-sheet-paper", page, "/paper/egg-sheet.css", Speech.of(ctx).language());
        ctx.header("Content-Disposition", "attachment; filename=\"egg-day-" + known(ctx).run().details().day()
                + ".pdf\"");
        ctx.contentType("application/pdf").result(pdf);
    }

    private EggSheetPage sheet(Context ctx) {
        return new EggSheets(known(ctx), formats(ctx)).page();
    }

    private void show(Context ctx, KnownRun known, FormInput form, UUID submission) {
        Caller caller = Caller.of(ctx);
        String saved = Optional.ofNullable(ctx.queryParam("saved")).filter(RECEIPTS::contains).orElse("");
        List<EggRun> runs = transactions.inChapter(caller.chapterId(),
                tx -> reads.runs().list(tx, caller.chapterId(), known.season().seasonId()));
        pages.show(ctx, "season/egg-run", new EggRunPages(known, formats(ctx)).page(
                caller.role(), saved, runs, form, known.address() + "/checks?" + FORM + "=" + submission));
    }

    private Formats formats(Context ctx) {
        return Speech.of(ctx).formats(Caller.of(ctx).zone(), clock.instant());
    }

    private KnownRun known(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        return transactions.inChapter(chapterId, tx -> {
            Season season = reads.season().seasons().get(tx, chapterId, ctx.pathParam("season"));
            return KnownRun.load(reads, tx, chapterId, season,
                    reads.runs().get(tx, chapterId, season, ctx.pathParam("run")));
        });
    }
}
