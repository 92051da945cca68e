package org.tankrounds.breaks;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jooq.DSLContext;
import org.tankrounds.breaks.BreakPages.Known;
import org.tankrounds.breaks.BreakPages.Typed;
import org.tankrounds.db.Transactions;
import org.tankrounds.jobs.TankChange;
import org.tankrounds.pages.AskBack;
import org.tankrounds.places.Tank;
import org.tankrounds.places.TankRepository;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Clashes;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Formats;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.Pages;
import org.tankrounds.web.RefusedException;
import org.tankrounds.web.Role;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Saying;

/** The page of a tank's breaks, and what is changed there. */
public final class BreakHandlers {
    private static final int NOT_FOUND = 404;
    private static final String SAVED = "saved";
    private static final Set<String> RECEIPTS = Set.of("added", "planned", "dropped");

    private final Transactions transactions;
    private final TankRepository tanks;
    private final BreakRepository breaks;
    private final BreakWatches watches;
    private final TankChange tankChange;
    private final Pages pages;
    private final Clock clock;

    public BreakHandlers(Transactions transactions, TankRepository tanks, BreakRepository breaks, BreakWatches watches,
            TankChange tankChange, Pages pages, Clock clock) {
        this.transactions = transactions;
        this.tanks = tanks;
        this.breaks = breaks;
        this.watches = watches;
        this.tankChange = tankChange;
        this.pages = pages;
        this.clock = clock;
    }

    public void show(Context ctx) {
        String saved = Optional.ofNullable(ctx.queryParam(SAVED)).filter(RECEIPTS::contains)
                .map(what -> Speech.of(ctx).say("breaks.saved." + what)).orElse("");
        show(ctx, known(ctx), saved, Optional.empty());
    }

    public void calendar(Context ctx) {
        Known known = known(ctx);
        String file = new BreakCalendar(known.tank(), formats(ctx, known)).write(known.watches())
                .orElseThrow(() -> RefusedException.of(NOT_FOUND, Saying.of("breaks.noEvents")));
        ctx.contentType("text/calendar; charset=utf-8");
        ctx.header("Content-Disposition", "attachment; filename=\"breaks-" + known.tank().code() + ".ics\"");
        ctx.result(file);
    }

    public void create(Context ctx) {
        Caller caller = Caller.of(ctx);
        Known known = known(ctx);
        FormInput form = FormInput.of(ctx, BreakForm.DAYS);
        tankChange.make(caller.chapterId(), known.tank().tankId(), tx -> {
            LocalDate today = today(known.tank());
            List<SchoolBreak> before = breaks.lock(tx, caller.chapterId(), known.tank().tankId(), today);
            Optional<SchoolBreak> planned = new BreakForm(form).readDays(
                    today, before, new BreakWording(formats(ctx, known)));
            planned.ifPresent(one -> breaks.add(tx, caller, known.tank().tankId(), one, clock.instant()));
            return planned.isPresent();
        });
        answer(ctx, "added", new Typed(0, form, List.of(), List.of()));
    }

    public void plan(Context ctx) {
        Caller caller = Caller.of(ctx);
        Known known = known(ctx);
        SchoolBreak shown = find(ctx, known);
        List<String> names = new ArrayList<>(BreakForm.plan(shown).keySet());
        FormInput form = FormInput.of(ctx, names);
        FormInput withOthers = FormInput.of(ctx, join(names, List.of(BreakForm.others(shown), BreakForm.SURE)));
        List<AskBack> asks = new ArrayList<>();
        Clashes clashes = new Clashes(form, new BreakPages(known, formats(ctx, known)).labels(shown));
        tankChange.make(caller.chapterId(), known.tank().tankId(), tx -> {
            SchoolBreak current = lock(tx, caller, known.tank(), shown);
            if (clashes.with(BreakForm.plan(current))) {
                withOthers.haveSeen(BreakForm.plan(current));
                return false;
            }
            BreakForm typed = new BreakForm(withOthers);
            Map<LocalDate, String> lookers = typed.readPlan(current, today(known.tank()));
            if (!withOthers.ok()) {
                return false;
            }
            typed.askOfNames(current, lookers).ifPresent(asks::add);
            if (asks.isEmpty()) {
                breaks.plan(tx, caller.chapterId(), current.breakId(), lookers);
            }
            return asks.isEmpty();
        });
        answer(ctx, "planned", new Typed(shown.breakId(), withOthers, clashes.found(), asks));
    }

    /** One that somebody else took out before is out. */
    public void drop(Context ctx) {
        Caller caller = Caller.of(ctx);
        Tank tank = known(ctx).tank();
        int breakId = number(ctx.pathParam("break"));
        tankChange.make(caller.chapterId(), tank.tankId(),
                tx -> breaks.drop(tx, caller.chapterId(), tank.tankId(), breakId, clock.instant()));
        back(ctx, "dropped");
    }

    private void answer(Context ctx, String receipt, Typed typed) {
        if (typed.form().ok() && typed.clashes().isEmpty() && typed.asks().isEmpty()) {
            back(ctx, receipt);
            return;
        }
        ctx.status(typed.clashes().isEmpty() ? HttpStatus.UNPROCESSABLE_CONTENT : HttpStatus.CONFLICT);
        show(ctx, known(ctx), "", Optional.of(typed));
    }

    private SchoolBreak lock(DSLContext tx, Caller caller, Tank tank, SchoolBreak shown) {
        return breaks.lock(tx, caller.chapterId(), tank.tankId(), today(tank)).stream()
                .filter(one -> one.breakId() == shown.breakId()).findFirst()
                .orElseThrow(() -> new NotFoundException("break"));
    }

    private static SchoolBreak find(Context ctx, Known known) {
        return known.watches().stream().map(BreakWatch::schoolBreak)
                .filter(one -> Integer.toString(one.breakId()).equals(ctx.pathParam("break"))).findFirst()
                .orElseThrow(() -> new NotFoundException("break"));
    }

    private static int number(String text) {
        if (!text.matches("[0-9]{1,9}")) {
            throw new NotFoundException("break");
        }
        return Integer.parseInt(text);
    }

    private Known known(Context ctx) {
        Caller caller = Caller.of(ctx);
        Instant now = clock.instant();
        return transactions.inChapter(caller.chapterId(), tx -> {
            Tank tank = tanks.get(tx, caller, ctx.pathParam("tank"));
            return new Known(tank, watches.list(tx, caller.chapterId(), tank, now),
                    breaks.suggest(tx, caller.chapterId(), tank.tankId(), today(tank)));
        });
    }

    private LocalDate today(Tank tank) {
        return clock.instant().atZone(tank.zone()).toLocalDate();
    }

    private Formats formats(Context ctx, Known known) {
        return Speech.of(ctx).formats(known.tank().zone(), clock.instant());
    }

    private void show(Context ctx, Known known, String saved, Optional<Typed> typed) {
        boolean mayPlan = List.of(Role.SIGNED_IN).contains(Caller.of(ctx).role());
        pages.show(ctx, "classroom/breaks", new BreakPages(known, formats(ctx, known)).page(saved, typed, mayPlan));
    }

    private static List<String> join(List<String> names, List<String> last) {
        List<String> all = new ArrayList<>(names);
        all.addAll(last);
        return all;
    }

    private static void back(Context ctx, String saved) {
        ctx.redirect("/tanks/" + ctx.pathParam("tank") + "/breaks?" + SAVED + "=" + saved, HttpStatus.SEE_OTHER);
    }
}
