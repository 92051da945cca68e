package org.tankrounds.season;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;
import org.tankrounds.jobs.AfterChange;
import org.tankrounds.pages.FormPage;
import org.tankrounds.places.Tank;
import org.tankrounds.web.Asked;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Clashes;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.Pages;

/** Adding and editing the lots of eggs that a tank received. */
public final class LotHandlers {
    private static final String FORM = "form";

    private final Transactions transactions;
    private final SeasonReads reads;
    private final LotEdits edits;
    private final AfterChange afterChange;
    private final Pages pages;
    private final Clock clock;

    public LotHandlers(Transactions transactions, SeasonReads reads, LotEdits edits, AfterChange afterChange,
            Pages pages, Clock clock) {
        this.transactions = transactions;
        this.reads = reads;
        this.edits = edits;
        this.afterChange = afterChange;
        this.pages = pages;
        this.clock = clock;
    }

    /** What every page of a lot stands on. */
    private record Where(Season season, Tank tank) {
        String lots() {
            return "/season/" + season.code() + "/tanks/" + tank.code() + "/lots";
        }

        String count() {
            return "/season/" + season.code() + "/tanks/" + tank.code() + "/count";
        }
    }

    public void showNew(Context ctx) {
        show(ctx, load(ctx), FormInput.showing(ctx, LotForm.blank()), List.of(), UUID.randomUUID());
    }

    public void create(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        Where where = load(ctx);
        FormInput form = FormInput.of(ctx, LotForm.LABELS.keySet());
        UUID submission = Asked.submissionId(ctx.queryParam(FORM));
        Optional<LotEdits.Details> details = parse(form, where);
        if (details.isEmpty()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, where, form, List.of(), submission);
            return;
        }
        transactions.inChapter(chapterId, tx -> {
            edits.addOnce(tx, chapterId, where.season().seasonId(), where.tank().tankId(), submission, details.get(),
                    clock.instant());
            return null;
        });
        done(ctx, where);
    }

    public void showEdit(Context ctx) {
        Where where = load(ctx);
        int chapterId = Caller.of(ctx).chapterId();
        Lot lot = transactions.inChapter(chapterId, tx -> lot(tx, ctx, where));
        show(ctx, where, FormInput.showing(ctx, LotForm.textOf(lot, where.tank().zone())), List.of(),
                UUID.randomUUID());
    }

    public void update(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        Where where = load(ctx);
        FormInput form = FormInput.of(ctx, LotForm.LABELS.keySet());
        Optional<LotEdits.Details> details = parse(form, where);
        Clashes clashes = new Clashes(form, LotForm.LABELS);
        boolean saved = transactions.inChapter(chapterId, tx -> store(tx, ctx, where, form, details, clashes));
        if (saved) {
            done(ctx, where);
            return;
        }
        ctx.status(clashes.status());
        show(ctx, where, form, clashes.found(), UUID.randomUUID());
    }

    private boolean store(DSLContext tx, Context ctx, Where where, FormInput form,
            Optional<LotEdits.Details> details, Clashes clashes) {
        int chapterId = Caller.of(ctx).chapterId();
        edits.lock(tx, chapterId, lot(tx, ctx, where).lotId());
        Lot current = lot(tx, ctx, where);
        if (details.isEmpty() || clashes.with(LotForm.textOf(current, where.tank().zone()))) {
            return false;
        }
        CountBook book = new CountBook(reads, tx, chapterId, where.season(), clock.instant());
        reads.tanks().lock(tx, chapterId, List.of(where.tank().tankId()));
        int before = book.account(where.tank()).impossible().size();
        edits.update(tx, chapterId, current, details.get(), clock.instant());
        CountBook after = new CountBook(reads, tx, chapterId, where.season(), clock.instant());
        if (after.account(where.tank()).impossible().size() > before) {
            edits.update(tx, chapterId, current, LotEdits.Details.of(current), clock.instant());
            form.refuse(LotForm.EGGS, "season.eggs.needed");
            return false;
        }
        return true;
    }

    private Optional<LotEdits.Details> parse(FormInput form, Where where) {
        LocalDate today = LocalDate.now(clock.withZone(where.tank().zone()));
        return LotForm.parse(form, where.season().details(), where.tank().zone(), today);
    }

    private void done(Context ctx, Where where) {
        afterChange.changed(Caller.of(ctx).chapterId());
        ctx.redirect("/season/" + where.season().code(), HttpStatus.SEE_OTHER);
    }

    private Where load(Context ctx) {
        Caller caller = Caller.of(ctx);
        return transactions.inChapter(caller.chapterId(), tx -> new Where(
                reads.seasons().get(tx, caller.chapterId(), ctx.pathParam("season")),
                reads.tanks().get(tx, caller, ctx.pathParam("tank"))));
    }

    /** The path says which of the tank's lots in this season, counted from 1. */
    private Lot lot(DSLContext tx, Context ctx, Where where) {
        List<Lot> lots = reads.lots().listOfTank(
                tx, Caller.of(ctx).chapterId(), where.season().seasonId(), where.tank().tankId());
        String number = ctx.pathParam("lot");
        if (!number.matches("[1-9]\\d{0,5}") || Integer.parseInt(number) > lots.size()) {
            throw new NotFoundException("lot");
        }
        return lots.get(Integer.parseInt(number) - 1);
    }

    private void show(Context ctx, Where where, FormInput form, List<FormPage.Clash> clashes, UUID submission) {
        boolean isNew = !ctx.pathParamMap().containsKey("lot");
        String tank = where.tank().school() + ", " + where.tank().classroom();
        String heading = form.say(isNew ? "season.eggsFor" : "season.eggsOf", tank);
        FormPage.Link season = new FormPage.Link(
                form.say("season.named", where.season().name()), "/season/" + where.season().code());
        pages.show(ctx, "form-page", new FormPage(
                form.titled(heading), heading, List.of(season), form.say("season.eggs.lead", where.tank().code()),
                where.lots() + (isNew ? "?" + FORM + "=" + submission : "/" + ctx.pathParam("lot")),
                form.say(isNew ? "season.eggs.add" : "frame.form.save"), form.shown(),
                LotForm.groups(form, where.season(), where.tank().zone()), clashes,
                isNew ? List.of() : List.of(new FormPage.Act(form.say("season.eggs.never"),
                        form.say("season.eggs.never.what"), where.count(), form.say("season.eggs.never.open"), true))));
    }
}
