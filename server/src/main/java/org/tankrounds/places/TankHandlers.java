package org.tankrounds.places;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;
import org.tankrounds.jobs.AfterChange;
import org.tankrounds.pages.FormField.Option;
import org.tankrounds.pages.FormPage;
import org.tankrounds.pages.FormPage.Act;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Clashes;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.Pages;

/** Adding, editing, retiring and returning tanks. */
public final class TankHandlers {
    private final Transactions transactions;
    private final PlaceReads reads;
    private final TankEdits edits;
    private final AfterChange afterChange;
    private final Pages pages;
    private final Clock clock;

    public TankHandlers(Transactions transactions, PlaceReads reads, TankEdits edits, AfterChange afterChange,
            Pages pages, Clock clock) {
        this.transactions = transactions;
        this.reads = reads;
        this.edits = edits;
        this.afterChange = afterChange;
        this.pages = pages;
        this.clock = clock;
    }

    public void showNew(Context ctx) {
        Caller caller = Caller.of(ctx);
        School school = transactions.inChapter(caller.chapterId(),
                tx -> reads.schools().get(tx, caller.chapterId(), ctx.pathParam("school")));
        String room = new RoomChoice(school.code(), String.valueOf(ctx.queryParam("room"))).value();
        String kit = transactions.inChapter(caller.chapterId(), tx -> reads.usualKit(tx, caller.chapterId()));
        show(ctx, Optional.empty(), FormInput.showing(ctx, TankForm.blank(room, kit)), List.of());
    }

    public void create(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        transactions.inChapter(chapterId, tx -> reads.schools().get(tx, chapterId, ctx.pathParam("school")));
        FormInput form = FormInput.of(ctx, TankForm.LABELS.keySet());
        Optional<TankForm.Typed> typed = TankForm.parse(form, latestDay(ctx));
        boolean added = typed.isPresent() && transactions.inChapter(chapterId, tx -> {
            Optional<TankEdits.Details> details = details(tx, chapterId, form, typed.get());
            details.ifPresent(known -> edits.add(tx, chapterId, known, clock.instant()));
            return details.isPresent();
        });
        if (added) {
            afterChange.changed(chapterId);
            ctx.redirect("/places", HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(ctx, Optional.empty(), form, List.of());
    }

    public void showEdit(Context ctx) {
        Caller caller = Caller.of(ctx);
        Tank tank = load(ctx);
        String kit = transactions.inChapter(caller.chapterId(),
                tx -> reads.kits().get(tx, caller.chapterId(), tank.kitId()).name());
        show(ctx, Optional.of(tank), FormInput.showing(ctx, TankForm.textOf(tank, kit)), List.of());
    }

    public void update(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        Tank tank = load(ctx);
        FormInput form = FormInput.of(ctx, TankForm.LABELS.keySet());
        Optional<TankForm.Typed> typed = TankForm.parse(form, latestDay(ctx));
        Clashes clashes = new Clashes(form, TankForm.LABELS);
        boolean saved = typed.isPresent() && transactions.inChapter(chapterId,
                tx -> store(tx, chapterId, tank.tankId(), form, typed.get(), clashes));
        if (saved) {
            afterChange.changed(chapterId);
            ctx.redirect("/places", HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(clashes.status());
        show(ctx, Optional.of(tank), form, clashes.found());
    }

    public void retire(Context ctx) {
        Tank tank = load(ctx);
        change(ctx, (tx, chapterId) -> edits.retire(tx, chapterId, tank.tankId(), clock.instant()));
    }

    public void putBack(Context ctx) {
        Tank tank = load(ctx);
        change(ctx, (tx, chapterId) -> edits.putBack(tx, chapterId, tank.tankId(), clock.instant()));
    }

    private interface Write {
        void run(DSLContext tx, int chapterId);
    }

    private void change(Context ctx, Write write) {
        int chapterId = Caller.of(ctx).chapterId();
        transactions.inChapter(chapterId, tx -> {
            write.run(tx, chapterId);
            return null;
        });
        afterChange.changed(chapterId);
        ctx.redirect("/places", HttpStatus.SEE_OTHER);
    }

    private boolean store(
            DSLContext tx, int chapterId, int tankId, FormInput form, TankForm.Typed typed, Clashes clashes) {
        edits.lock(tx, chapterId, tankId);
        Tank current = reads.tanks().findById(tx, chapterId, tankId).orElseThrow(() -> new NotFoundException("tank"));
        String kit = reads.kits().get(tx, chapterId, current.kitId()).name();
        if (clashes.with(TankForm.textOf(current, kit))) {
            return false;
        }
        Optional<TankEdits.Details> details = details(tx, chapterId, form, typed);
        details.ifPresent(known -> edits.update(tx, chapterId, tankId, known, clock.instant()));
        return details.isPresent();
    }

    private Optional<TankEdits.Details> details(
            DSLContext tx, int chapterId, FormInput form, TankForm.Typed typed) {
        OptionalInt room = reads.classroom(tx, chapterId, typed.room());
        Optional<Kit> kit = reads.kits().find(tx, chapterId, typed.kit());
        if (room.isEmpty()) {
            form.refuse(TankForm.ROOM, "places.tank.roomGone");
        }
        if (kit.isEmpty()) {
            form.refuse(TankForm.KIT, "places.tank.kitGone");
        }
        return !form.ok() ? Optional.empty() : Optional.of(new TankEdits.Details(
                room.getAsInt(), kit.get().kitId(), typed.volumeL(), typed.chillerSetPointC(), typed.filterKind(),
                typed.filterStartedOn(), typed.filterAreaM2(), typed.alkalinityMgPerL(), typed.chlorideMgPerL(),
                typed.disinfectant(), typed.thermometerUnit()));
    }

    /** Tomorrow in the chapter's zone: today has ended there for no school yet. */
    private LocalDate latestDay(Context ctx) {
        return LocalDate.now(clock.withZone(Caller.of(ctx).zone())).plusDays(1);
    }

    private Tank load(Context ctx) {
        Caller caller = Caller.of(ctx);
        return transactions.inChapter(caller.chapterId(),
                tx -> reads.tanks().get(tx, caller, ctx.pathParam("tank")));
    }

    private void show(Context ctx, Optional<Tank> tank, FormInput form, List<FormPage.Clash> clashes) {
        int chapterId = Caller.of(ctx).chapterId();
        List<Option> rooms = transactions.inChapter(chapterId,
                tx -> RoomChoice.options(reads.schools().list(tx, chapterId)));
        List<Option> kits = transactions.inChapter(chapterId, tx -> reads.kits().list(tx, chapterId).stream()
                .map(kit -> new Option(kit.name(), kit.name()))
                .toList());
        String heading = tank.map(known -> known.school() + ", " + known.classroom())
                .orElseGet(() -> form.say("places.tank.add"));
        String lead = tank.map(known -> form.say("places.tank.code", known.code())).orElse("");
        String action = tank.map(Addresses::tank)
                .orElseGet(() -> "/places/schools/" + ctx.pathParam("school") + "/tanks");
        pages.show(ctx, "form-page", new FormPage(
                form.titled(heading), heading, List.of(Trails.places(form)), lead, action,
                form.say(tank.isPresent() ? "frame.form.save" : "places.tank.addThis"), form.shown(),
                TankForm.groups(form, rooms, kits), clashes,
                tank.map(known -> List.of(act(form, known))).orElse(List.of())));
    }

    private static Act act(FormInput form, Tank tank) {
        return tank.retiredAt().isPresent()
                ? new Act(form.say("places.tank.return"), form.say("places.tank.return.what"),
                        Addresses.tank(tank) + "/return", form.say("places.tank.return.do"))
                : new Act(form.say("places.tank.retire"), form.say("places.tank.retire.what"),
                        Addresses.tank(tank) + "/retirement", form.say("places.tank.retire"));
    }
}
