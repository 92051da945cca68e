package org.tankrounds.calendar;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;
import org.tankrounds.fish.Milestone;
import org.tankrounds.jobs.AfterChange;
import org.tankrounds.places.Tank;
import org.tankrounds.season.Lot;
import org.tankrounds.season.LotEdits;
import org.tankrounds.season.Season;
import org.tankrounds.web.Caller;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Formats;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Speech;

/** The dates ahead of a tank and of a season, and what a class saw its lot come to. */
public final class CalendarHandlers {
    private static final String SAVED = "saved";
    private static final Set<String> RECEIPTS = Set.of("seen", "withdrawn", "changed");

    private final Transactions transactions;
    private final CalendarReads reads;
    private final LotEdits edits;
    private final AfterChange afterChange;
    private final Pages pages;
    private final Clock clock;

    public CalendarHandlers(Transactions transactions, CalendarReads reads, LotEdits edits, AfterChange afterChange,
            Pages pages, Clock clock) {
        this.transactions = transactions;
        this.reads = reads;
        this.edits = edits;
        this.afterChange = afterChange;
        this.pages = pages;
        this.clock = clock;
    }

    public void show(Context ctx) {
        String saved = Optional.ofNullable(ctx.queryParam(SAVED)).filter(RECEIPTS::contains)
                .map(what -> Speech.of(ctx).say("calendar.saved." + what)).orElse("");
        show(ctx, saved, FormInput.showing(ctx, SeenForm.blank()));
    }

    public void showSeason(Context ctx) {
        Caller caller = Caller.of(ctx);
        pages.show(ctx, "calendar/season", transactions.inChapter(caller.chapterId(), tx -> {
            Season season = reads.season().seasons().get(tx, caller.chapterId(), ctx.pathParam("season"));
            Formats formats = Speech.of(ctx).formats(caller.zone(), clock.instant());
            return new SeasonCalendarPages(season, formats, caller.role())
                    .page(reads.list(tx, caller.chapterId(), season, clock.instant()));
        }));
    }

    /** A class says what it saw; what was said before has to be taken back first. */
    public void see(Context ctx) {
        Caller caller = Caller.of(ctx);
        FormInput form = FormInput.of(ctx, SeenForm.NAMES);
        String receipt = transactions.inChapter(caller.chapterId(), tx -> {
            TankAhead ahead = lockAndLoad(tx, ctx, caller);
            Lot lot = ahead.lot().orElseThrow(() -> new NotFoundException("lot"));
            Optional<SeenForm.Seen> seen = new SeenForm(ahead).parse(form, ctx.formParam(SeenForm.ASKED));
            if (seen.isEmpty()) {
                return "";
            }
            Optional<LocalDate> before = lot.seenOn().of(seen.get().milestone());
            if (before.isPresent()) {
                return before.equals(Optional.of(seen.get().day())) ? "seen" : "changed";
            }
            edits.see(tx, caller.chapterId(), lot,
                    lot.seenOn().with(seen.get().milestone(), Optional.of(seen.get().day())), clock.instant());
            return "seen";
        });
        if (receipt.isEmpty()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, "", form);
            return;
        }
        done(ctx, receipt);
    }

    /** What was taken back before is taken back. */
    public void withdraw(Context ctx) {
        Caller caller = Caller.of(ctx);
        Milestone milestone = Arrays.stream(Milestone.values())
                .filter(one -> SeenForm.code(one).equals(ctx.pathParam("milestone"))).findFirst()
                .orElseThrow(() -> new NotFoundException("page"));
        transactions.inChapter(caller.chapterId(), tx -> {
            lockAndLoad(tx, ctx, caller).lot().ifPresent(lot -> edits.see(tx, caller.chapterId(), lot,
                    lot.seenOn().with(milestone, Optional.empty()), clock.instant()));
            return null;
        });
        done(ctx, "withdrawn");
    }

    private TankAhead lockAndLoad(DSLContext tx, Context ctx, Caller caller) {
        load(tx, ctx, caller).flatMap(TankAhead::lot).ifPresent(lot -> edits.lock(tx, caller.chapterId(), lot.lotId()));
        return load(tx, ctx, caller).orElseThrow(() -> new NotFoundException("season"));
    }

    /** Empty while the chapter has no season. */
    private Optional<TankAhead> load(DSLContext tx, Context ctx, Caller caller) {
        Tank tank = reads.season().tanks().get(tx, caller, ctx.pathParam("tank"));
        LocalDate today = clock.instant().atZone(tank.zone()).toLocalDate();
        return Season.runningOn(today, reads.season().seasons().list(tx, caller.chapterId()))
                .map(season -> reads.load(tx, caller.chapterId(), season, tank, clock.instant()));
    }

    private void show(Context ctx, String saved, FormInput form) {
        Caller caller = Caller.of(ctx);
        pages.show(ctx, "calendar/tank", transactions.inChapter(caller.chapterId(), tx -> {
            Tank tank = reads.season().tanks().get(tx, caller, ctx.pathParam("tank"));
            Formats formats = Speech.of(ctx).formats(tank.zone(), clock.instant());
            return load(tx, ctx, caller)
                    .map(ahead -> new CalendarPages(ahead, formats).page(saved, form, caller.role()))
                    .orElseGet(() -> CalendarPages.withoutSeason(tank, formats));
        }));
    }

    private void done(Context ctx, String receipt) {
        afterChange.changed(Caller.of(ctx).chapterId());
        ctx.redirect("/tanks/" + ctx.pathParam("tank") + "/calendar?" + SAVED + "=" + receipt, HttpStatus.SEE_OTHER);
    }
}
