package org.tankrounds.eggday;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;
import org.tankrounds.eggday.EggStopPages.Typed;
import org.tankrounds.jobs.AfterChange;
import org.tankrounds.pages.AskBack;
import org.tankrounds.places.Tank;
import org.tankrounds.season.Lot;
import org.tankrounds.season.Season;
import org.tankrounds.web.Asked;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Clashes;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.Pages;
import org.tankrounds.web.RefusedException;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Saying;

/** What is done with the eggs at one tank: tempering, and the receipt that begins its count. */
public final class EggStopHandlers {
    private static final String FORM = "form";
    private static final Set<String> RECEIPTS = Set.of("tempered", "received", "takenBack");

    private final Transactions transactions;
    private final EggReads reads;
    private final BookReceipt bookReceipt;
    private final AfterChange afterChange;
    private final Pages pages;
    private final Clock clock;

    public EggStopHandlers(Transactions transactions, EggReads reads, BookReceipt bookReceipt, AfterChange afterChange,
            Pages pages, Clock clock) {
        this.transactions = transactions;
        this.reads = reads;
        this.bookReceipt = bookReceipt;
        this.afterChange = afterChange;
        this.pages = pages;
        this.clock = clock;
    }

    /** @param lots of the tank in the season */
    private record Where(KnownRun known, EggStop stop, Tank tank, List<Lot> lots) {
        String address() {
            return known.address() + "/tanks/" + tank.code();
        }
    }

    public void show(Context ctx) {
        Where where = load(ctx);
        show(ctx, where, shown(ctx, where), UUID.randomUUID());
    }

    public void temper(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        Where where = load(ctx);
        TemperForm temper = temperForm(ctx, where);
        FormInput form = FormInput.of(ctx, TemperForm.LABELS.keySet());
        Optional<EggStop.Tempered> typed = temper.parse(form);
        Clashes clashes = new Clashes(form, TemperForm.LABELS);
        boolean saved = transactions.inChapter(chapterId, tx -> {
            EggStop current = lock(tx, ctx, where).stop();
            if (typed.isEmpty() || clashes.with(temper.textOf(current.tempered()))) {
                return false;
            }
            reads.runs().temper(tx, chapterId, current.stopId(), typed.get());
            return true;
        });
        if (saved) {
            ctx.redirect(where.address() + "?saved=tempered#temper", HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(clashes.status());
        show(ctx, where, shown(ctx, where).withTemper(form, clashes.found()), UUID.randomUUID());
    }

    public void receive(Context ctx) {
        Caller caller = Caller.of(ctx);
        Where where = load(ctx);
        UUID submission = Asked.submissionId(ctx.queryParam(FORM));
        ReceiptForm receiptForm = receiptForm(where);
        FormInput form = FormInput.of(ctx, ReceiptForm.NAMES);
        Optional<EggReceipt.Details> details = receiptForm.parse(form);
        List<AskBack> asks = details.flatMap(known -> receiptForm.askOfNames(form, known)).stream().toList();
        if (details.isPresent() && asks.isEmpty()) {
            Optional<Saying> refusal = transactions.inChapter(caller.chapterId(), tx -> {
                Where current = lock(tx, ctx, where);
                return bookReceipt.write(tx, caller, current.known(), current.stop(), submission, details.get(),
                        Speech.of(ctx).formats(where.tank().zone(), clock.instant()));
            });
            if (refusal.isEmpty()) {
                done(ctx, where, "received");
                return;
            }
            ctx.status(HttpStatus.CONFLICT);
            Where now = load(ctx);
            show(ctx, now, shown(ctx, now).withRefusal(form, form.say(refusal.get()) + " " + form.say(
                    "eggday.receipt.yours", details.get().eggs(), form.text(ReceiptForm.DEAD))), UUID.randomUUID());
            return;
        }
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(ctx, where, shown(ctx, where).withReceipt(form, asks), submission);
    }

    /** One that was taken back before is taken back. */
    public void withdraw(Context ctx) {
        Caller caller = Caller.of(ctx);
        Where where = load(ctx);
        transactions.inChapter(caller.chapterId(), tx -> {
            Where current = lock(tx, ctx, where);
            if (!bookReceipt.takeBack(tx, caller, current.known(), current.stop(), Speech.of(ctx))) {
                throw RefusedException.of(HttpStatus.CONFLICT.getCode(), Saying.of("count.withdraw.needed"));
            }
            return null;
        });
        done(ctx, where, "takenBack");
    }

    private void done(Context ctx, Where where, String receipt) {
        afterChange.changed(Caller.of(ctx).chapterId());
        ctx.redirect(where.address() + "?saved=" + receipt, HttpStatus.SEE_OTHER);
    }

    private Typed shown(Context ctx, Where where) {
        return new Typed(FormInput.showing(ctx, temperForm(ctx, where).textOf(where.stop().tempered())), List.of(),
                FormInput.showing(ctx, receiptForm(where).blank(where.stop())), List.of(), "");
    }

    private TemperForm temperForm(Context ctx, Where where) {
        return new TemperForm(where.tank(), clock.instant(), Speech.of(ctx));
    }

    private ReceiptForm receiptForm(Where where) {
        return new ReceiptForm(where.known().season(), where.known().run(), where.tank(), clock.instant());
    }

    private void show(Context ctx, Where where, Typed typed, UUID submission) {
        String saved = Optional.ofNullable(ctx.queryParam("saved")).filter(RECEIPTS::contains).orElse("");
        EggStopPages page = new EggStopPages(where.known(), where.stop(), where.tank(), where.lots(),
                Speech.of(ctx).formats(where.tank().zone(), clock.instant()));
        pages.show(ctx, "season/egg-stop", page.page(Caller.of(ctx).role(), saved, typed,
                temperForm(ctx, where).boxes(typed.temper()), receiptForm(where).rows(typed.receipt()),
                where.address(), where.address() + "/receipt?" + FORM + "=" + submission));
    }

    private Where load(Context ctx) {
        return transactions.inChapter(Caller.of(ctx).chapterId(), tx -> {
            int chapterId = Caller.of(ctx).chapterId();
            Season season = reads.season().seasons().get(tx, chapterId, ctx.pathParam("season"));
            return where(tx, ctx, season, reads.runs().get(tx, chapterId, season, ctx.pathParam("run")));
        });
    }

    private Where lock(DSLContext tx, Context ctx, Where where) {
        Season season = where.known().season();
        return where(tx, ctx, season,
                reads.runs().lock(tx, Caller.of(ctx).chapterId(), season, where.known().run()));
    }

    private Where where(DSLContext tx, Context ctx, Season season, EggRun run) {
        Caller caller = Caller.of(ctx);
        Tank tank = reads.season().tanks().get(tx, caller, ctx.pathParam("tank"));
        KnownRun known = KnownRun.load(reads, tx, caller.chapterId(), season, run);
        EggStop stop = known.stopAt(tank.tankId()).orElseThrow(() -> new NotFoundException("stop"));
        List<Lot> lots = reads.season().lots().listOfSeason(tx, caller.chapterId(), season.seasonId()).stream()
                .filter(lot -> lot.tankId() == tank.tankId()).toList();
        return new Where(known, stop, tank, lots);
    }
}
