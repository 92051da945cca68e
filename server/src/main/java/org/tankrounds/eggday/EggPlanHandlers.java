package org.tankrounds.eggday;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.UUID;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.EggStopsPage;
import org.tankrounds.pages.FormPage;
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
import org.tankrounds.web.TypedNumber;
import org.tankrounds.words.Saying;

/** Planning an egg day: the day itself, its stops and their order. */
public final class EggPlanHandlers {
    private static final String FORM = "form";
    private static final String NUMBER = "number";

    private final Transactions transactions;
    private final EggReads reads;
    private final Pages pages;
    private final Clock clock;

    public EggPlanHandlers(Transactions transactions, EggReads reads, Pages pages, Clock clock) {
        this.transactions = transactions;
        this.reads = reads;
        this.pages = pages;
        this.clock = clock;
    }

    public void showNew(Context ctx) {
        showForm(ctx, season(ctx), Optional.empty(), FormInput.showing(ctx, RunForm.blank()), List.of(),
                UUID.randomUUID());
    }

    public void create(Context ctx) {
        Caller caller = Caller.of(ctx);
        Season season = season(ctx);
        UUID submission = Asked.submissionId(ctx.queryParam(FORM));
        FormInput form = FormInput.of(ctx, RunForm.LABELS.keySet());
        Optional<EggRun.Details> details = RunForm.parse(form, season);
        if (details.isEmpty()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            showForm(ctx, season, Optional.empty(), form, List.of(), submission);
            return;
        }
        int runId = transactions.inChapter(caller.chapterId(), tx -> reads.runs().add(tx, caller.chapterId(),
                season.seasonId(), submission, details.get(), caller.personId().orElseThrow(), clock.instant()));
        ctx.redirect(EggRun.addressOf(season.code()) + "/" + runId + "/stops", HttpStatus.SEE_OTHER);
    }

    public void showEdit(Context ctx) {
        KnownRun known = known(ctx);
        showForm(ctx, known.season(), Optional.of(known),
                FormInput.showing(ctx, RunForm.textOf(known.run().details())), List.of(), UUID.randomUUID());
    }

    public void update(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        KnownRun known = known(ctx);
        FormInput form = FormInput.of(ctx, RunForm.LABELS.keySet());
        Optional<EggRun.Details> details = RunForm.parse(form, known.season());
        Clashes clashes = new Clashes(form, RunForm.LABELS);
        boolean saved = transactions.inChapter(chapterId, tx -> {
            EggRun current = reads.runs().lock(tx, chapterId, known.season(), known.run());
            if (details.isEmpty() || clashes.with(RunForm.textOf(current.details()))) {
                return false;
            }
            reads.runs().update(tx, chapterId, current.runId(), details.get());
            return true;
        });
        if (saved) {
            ctx.redirect(known.address() + "?saved=planned", HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(clashes.status());
        showForm(ctx, known.season(), Optional.of(known), form, clashes.found(), UUID.randomUUID());
    }

    /** Not while a class holds a receipt of it. */
    public void callOff(Context ctx) {
        Caller caller = Caller.of(ctx);
        Season season = season(ctx);
        transactions.inChapter(caller.chapterId(), tx -> {
            KnownRun current = lock(tx, ctx, season);
            if (!current.receipts().isEmpty()) {
                throw RefusedException.of(HttpStatus.CONFLICT.getCode(), Saying.of("eggday.callOff.receipts"));
            }
            reads.runs().callOff(tx, caller.chapterId(), current.run().runId(), caller.personId().orElseThrow(),
                    clock.instant());
            return null;
        });
        ctx.redirect("/season/" + season.code(), HttpStatus.SEE_OTHER);
    }

    public void showStops(Context ctx) {
        KnownRun known = known(ctx);
        showStops(ctx, known, FormInput.showing(ctx, StopsForm.textOf(known.stops(), tanks(known))), List.of());
    }

    public void planStops(Context ctx) {
        Season season = season(ctx);
        KnownRun shown = known(ctx);
        List<Tank> tanks = tanks(shown);
        FormInput form = FormInput.of(ctx, StopsForm.labels(tanks).keySet());
        Map<Integer, EggStop.Planned> planned = StopsForm.parse(form, tanks);
        Clashes clashes = new Clashes(form, StopsForm.labels(tanks));
        boolean saved = transactions.inChapter(Caller.of(ctx).chapterId(), tx -> {
            KnownRun current = lock(tx, ctx, season);
            refuseDropped(form, current, planned, tanks);
            if (!form.ok() || clashes.with(StopsForm.textOf(current.stops(), tanks))) {
                return false;
            }
            plan(tx, Caller.of(ctx).chapterId(), current, planned);
            return true;
        });
        if (saved) {
            ctx.redirect(shown.address() + "?saved=planned", HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(clashes.status());
        showStops(ctx, shown, form, clashes.found());
    }

    public void earlier(Context ctx) {
        move(ctx, -1);
    }

    public void later(Context ctx) {
        move(ctx, 1);
    }

    /** Where the stop has moved since the page was shown, nothing moves. */
    private void move(Context ctx, int by) {
        int chapterId = Caller.of(ctx).chapterId();
        Season season = season(ctx);
        OptionalInt number = TypedNumber.whole(Optional.ofNullable(ctx.formParam(NUMBER)).orElse(""));
        String to = transactions.inChapter(chapterId, tx -> {
            Tank tank = reads.season().tanks().get(tx, Caller.of(ctx), ctx.pathParam("tank"));
            KnownRun current = lock(tx, ctx, season);
            EggStop stop = current.stopAt(tank.tankId()).orElseThrow(() -> new NotFoundException("stop"));
            List<EggStop> order = new ArrayList<>(current.stops());
            int at = order.indexOf(stop);
            if (number.isPresent() && number.getAsInt() == at + 1 && at + by >= 0 && at + by < order.size()) {
                order.remove(at);
                order.add(at + by, stop);
                renumber(tx, chapterId, order);
            }
            return current.address() + "?saved=moved#stops";
        });
        ctx.redirect(to, HttpStatus.SEE_OTHER);
    }

    private void renumber(DSLContext tx, int chapterId, List<EggStop> order) {
        for (int i = 0; i < order.size(); i++) {
            reads.runs().place(tx, chapterId, order.get(i).stopId(), i + 1);
        }
    }

    /** A stop with a receipt stays: its eggs are in the count. */
    private static void refuseDropped(
            FormInput form, KnownRun current, Map<Integer, EggStop.Planned> planned, List<Tank> tanks) {
        current.stops().stream()
                .filter(stop -> current.receipt(stop).isPresent() && !planned.containsKey(stop.tankId()))
                .forEach(stop -> tanks.stream().filter(tank -> tank.tankId() == stop.tankId())
                        .forEach(tank -> form.refuse(StopsForm.eggs(tank), "eggday.stops.received",
                                StopsForm.place(tank))));
    }

    /** Stops keep their place; new ones come behind them, by the time at which they are expected. */
    private void plan(DSLContext tx, int chapterId, KnownRun current, Map<Integer, EggStop.Planned> planned) {
        Set<Integer> dropped = new HashSet<>();
        int last = 0;
        for (EggStop stop : current.stops()) {
            last = Math.max(last, stop.place());
            EggStop.Planned now = planned.get(stop.tankId());
            if (now == null) {
                dropped.add(stop.tankId());
            } else {
                reads.runs().plan(tx, chapterId, current.run().runId(), stop.tankId(), stop.place(), now);
            }
        }
        reads.runs().drop(tx, chapterId, current.run().runId(), dropped, clock.instant());
        List<Map.Entry<Integer, EggStop.Planned>> added = planned.entrySet().stream()
                .filter(entry -> current.stopAt(entry.getKey()).isEmpty())
                .sorted(Comparator.comparing(entry -> entry.getValue().plannedFor().orElse(LocalTime.MAX))).toList();
        for (Map.Entry<Integer, EggStop.Planned> one : added) {
            last++;
            reads.runs().plan(tx, chapterId, current.run().runId(), one.getKey(), last, one.getValue());
        }
    }

    /** Those in use, and those that the run has. */
    private static List<Tank> tanks(KnownRun known) {
        return known.tanks().values().stream()
                .filter(tank -> tank.retiredAt().isEmpty() || known.stopAt(tank.tankId()).isPresent())
                .sorted(Comparator.comparing(Tank::school).thenComparing(Tank::classroom).thenComparing(Tank::tankId))
                .toList();
    }

    private void showForm(Context ctx, Season season, Optional<KnownRun> run, FormInput form,
            List<FormPage.Clash> clashes, UUID submission) {
        String heading = form.say(run.isPresent() ? "eggday.run.edit" : "eggday.run.new");
        List<FormPage.Link> trail = new ArrayList<>(List.of(seasonLink(season, form)));
        run.ifPresent(known -> trail.add(runLink(known, form)));
        List<FormPage.Act> acts = run.map(known -> List.of(new FormPage.Act(form.say("eggday.callOff"),
                form.say("eggday.callOff.what"), known.address() + "/called-off", form.say("eggday.callOff.do"))))
                .orElse(List.of());
        pages.show(ctx, "form-page", new FormPage(form.titled(heading), heading, trail, "",
                run.map(KnownRun::address).orElseGet(() ->
                        EggRun.addressOf(season.code()) + "?" + FORM + "=" + submission),
                form.say(run.isPresent() ? "frame.form.save" : "eggday.run.add"), form.shown(),
                RunForm.groups(form, season), clashes, acts));
    }

    private void showStops(Context ctx, KnownRun known, FormInput form, List<FormPage.Clash> clashes) {
        int chapterId = Caller.of(ctx).chapterId();
        List<Lot> lots = transactions.inChapter(chapterId,
                tx -> reads.season().lots().listOfSeason(tx, chapterId, known.season().seasonId()));
        String heading = form.say("eggday.stops.title");
        List<EggStopsPage.Row> rows = tanks(known).stream().map(tank -> new EggStopsPage.Row(tank.school(),
                tank.classroom(), already(form, tank, lots), StopsForm.eggsBox(form, tank),
                StopsForm.timeBox(form, tank))).toList();
        pages.show(ctx, "season/egg-stops", new EggStopsPage(form.titled(heading), heading,
                seasonLink(known.season(), form), runLink(known, form), known.address() + "/stops", form.shown(), rows,
                clashes));
    }

    private static String already(FormInput form, Tank tank, List<Lot> lots) {
        int eggs = lots.stream().filter(lot -> lot.tankId() == tank.tankId()).mapToInt(Lot::eggs).sum();
        return eggs == 0 ? "" : form.say("eggday.stops.already", eggs);
    }

    private static FormPage.Link seasonLink(Season season, FormInput form) {
        return new FormPage.Link(form.say("season.named", season.name()), "/season/" + season.code());
    }

    private static FormPage.Link runLink(KnownRun known, FormInput form) {
        return new FormPage.Link(form.say("eggday.named", form.date(known.run().details().day())), known.address());
    }

    private Season season(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        return transactions.inChapter(chapterId,
                tx -> reads.season().seasons().get(tx, chapterId, ctx.pathParam("season")));
    }

    private KnownRun known(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        Season season = season(ctx);
        return transactions.inChapter(chapterId, tx -> KnownRun.load(reads, tx, chapterId, season,
                reads.runs().get(tx, chapterId, season, ctx.pathParam("run"))));
    }

    private KnownRun lock(DSLContext tx, Context ctx, Season season) {
        int chapterId = Caller.of(ctx).chapterId();
        EggRun run = reads.runs().get(tx, chapterId, season, ctx.pathParam("run"));
        return KnownRun.load(reads, tx, chapterId, season, reads.runs().lock(tx, chapterId, season, run));
    }
}
