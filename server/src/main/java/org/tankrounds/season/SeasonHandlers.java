package org.tankrounds.season;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.tankrounds.belief.Observation;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.FormPage;
import org.tankrounds.pages.SeasonPage;
import org.tankrounds.places.Tank;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Clashes;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Speech;

/** The season's page, and adding and editing seasons. */
public final class SeasonHandlers {
    private static final String TAKEN = "season.taken";

    private final Transactions transactions;
    private final SeasonReads reads;
    private final Pages pages;
    private final Clock clock;

    public SeasonHandlers(Transactions transactions, SeasonReads reads, Pages pages, Clock clock) {
        this.transactions = transactions;
        this.reads = reads;
        this.pages = pages;
        this.clock = clock;
    }

    /** The season that runs today, else the newest. */
    public void showCurrent(Context ctx) {
        Caller caller = Caller.of(ctx);
        LocalDate today = LocalDate.now(clock.withZone(caller.zone()));
        List<Season> seasons = list(caller);
        showPage(ctx, seasons, Season.runningOn(today, seasons));
    }

    public void show(Context ctx) {
        Caller caller = Caller.of(ctx);
        showPage(ctx, list(caller), Optional.of(load(ctx)));
    }

    public void showNew(Context ctx) {
        showForm(ctx, Optional.empty(), FormInput.showing(ctx, SeasonForm.blank()), List.of());
    }

    public void create(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        FormInput form = FormInput.of(ctx, SeasonForm.LABELS.keySet());
        Optional<Season.Details> details = SeasonForm.parse(form);
        boolean saved = details.isPresent() && form.saves(() -> transactions.inChapter(chapterId, tx -> {
            refuseOverlap(tx, chapterId, form, details.get(), 0);
            return form.ok() ? reads.seasons().add(tx, chapterId, details.get()) : null;
        }), SeasonForm.NAME, TAKEN);
        if (saved && form.ok()) {
            ctx.redirect("/season", HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        showForm(ctx, Optional.empty(), form, List.of());
    }

    public void showEdit(Context ctx) {
        Season season = load(ctx);
        showForm(ctx, Optional.of(season), FormInput.showing(ctx, SeasonForm.textOf(season.details())), List.of());
    }

    public void update(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        Season season = load(ctx);
        FormInput form = FormInput.of(ctx, SeasonForm.LABELS.keySet());
        Optional<Season.Details> details = SeasonForm.parse(form);
        Clashes clashes = new Clashes(form, SeasonForm.LABELS);
        boolean saved = details.isPresent() && form.saves(() -> transactions.inChapter(chapterId,
                tx -> store(tx, chapterId, season, form, details.get(), clashes)), SeasonForm.NAME, TAKEN);
        if (saved && form.ok() && clashes.found().isEmpty()) {
            ctx.redirect("/season/" + season.code(), HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(clashes.status());
        showForm(ctx, Optional.of(season), form, clashes.found());
    }

    private Void store(DSLContext tx, int chapterId, Season season, FormInput form, Season.Details details,
            Clashes clashes) {
        Season current = reads.seasons().lock(tx, chapterId, season.code());
        if (clashes.with(SeasonForm.textOf(current.details()))) {
            return null;
        }
        refuseOverlap(tx, chapterId, form, details, current.seasonId());
        Season changed = new Season(current.seasonId(), current.code(), details);
        refuseLotsOutside(tx, chapterId, form, changed);
        refuseCountsOutside(tx, chapterId, form, current, changed);
        if (form.ok()) {
            reads.seasons().update(tx, chapterId, current.seasonId(), details);
        }
        return null;
    }

    /** A death would otherwise be counted in two seasons. */
    private void refuseOverlap(
            DSLContext tx, int chapterId, FormInput form, Season.Details details, int itself) {
        reads.seasons().list(tx, chapterId).stream()
                .filter(other -> other.seasonId() != itself && other.details().overlaps(details))
                .findFirst()
                .ifPresent(other -> form.refuse(SeasonForm.STARTS, "season.overlaps", other.name(),
                        form.date(other.details().startsOn()), form.date(other.details().endsOn())));
    }

    private void refuseLotsOutside(DSLContext tx, int chapterId, FormInput form, Season changed) {
        long outside = reads.lots().listOfSeason(tx, chapterId, changed.seasonId()).stream()
                .filter(lot -> reads.tanks().findById(tx, chapterId, lot.tankId())
                        .map(tank -> !changed.details().holds(lot.receivedAt().atZone(tank.zone()).toLocalDate()))
                        .orElse(false))
                .count();
        if (outside > 0) {
            form.refuse(SeasonForm.STARTS, "season.lotsOutside", outside);
        }
    }

    /** What was counted stays in the season in which it was. */
    private void refuseCountsOutside(DSLContext tx, int chapterId, FormInput form, Season current, Season changed) {
        List<CountEntry> entries = reads.counts().list(tx, chapterId, current.seasonId());
        long outside = 0;
        for (Tank tank : reads.tanks().listWithRetired(tx, chapterId)) {
            Stream<Instant> counted =
                    entries.stream().filter(entry -> entry.tankId() == tank.tankId()).map(CountEntry::at);
            Stream<Instant> died = reads.observations().deaths(tx, chapterId, tank.tankId(), current.from(tank.zone()),
                    current.until(tank.zone())).stream().filter(seen -> seen.value() > 0).map(Observation::at);
            outside += Stream.concat(counted, died)
                    .filter(at -> !changed.details().holds(at.atZone(tank.zone()).toLocalDate())).count();
        }
        if (outside > 0) {
            form.refuse(SeasonForm.ENDS, "season.countsOutside", outside);
        }
    }

    private List<Season> list(Caller caller) {
        return transactions.inChapter(caller.chapterId(), tx -> reads.seasons().list(tx, caller.chapterId()));
    }

    private Season load(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        return transactions.inChapter(chapterId,
                tx -> reads.seasons().get(tx, chapterId, ctx.pathParam("season")));
    }

    private void showPage(Context ctx, List<Season> seasons, Optional<Season> shown) {
        int chapterId = Caller.of(ctx).chapterId();
        Instant now = clock.instant();
        Speech speech = Speech.of(ctx);
        SeasonPage page = shown
                .map(season -> transactions.inChapter(chapterId,
                        tx -> new SeasonPageMaker(reads, tx, chapterId, now, speech).page(season, seasons)))
                .orElseGet(() -> SeasonPageMaker.empty(speech));
        pages.show(ctx, "season/season", page);
    }

    private void showForm(Context ctx, Optional<Season> season, FormInput form, List<FormPage.Clash> clashes) {
        String heading = season.map(known -> form.say("season.named", known.name()))
                .orElseGet(() -> form.say("season.add"));
        pages.show(ctx, "form-page", new FormPage(
                form.titled(heading), heading, List.of(new FormPage.Link(form.say("frame.season"), "/season")), "",
                "/season" + season.map(known -> "/" + known.code()).orElse(""),
                form.say(season.isPresent() ? "frame.form.save" : "season.addThis"), form.shown(),
                SeasonForm.groups(form), clashes, List.of()));
    }
}
