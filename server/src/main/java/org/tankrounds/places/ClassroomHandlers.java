package org.tankrounds.places;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;
import org.tankrounds.jobs.AfterChange;
import org.tankrounds.jobs.DirtyTanks;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.FormPage;
import org.tankrounds.pages.FormPage.Group;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Clashes;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.Pages;
import org.tankrounds.words.Saying;

/** Adding and renaming the rooms of a school. */
public final class ClassroomHandlers {
    private static final String NAME = "name";
    private static final Map<String, Saying> LABELS = Map.of(NAME, Saying.of("places.room"));
    private static final String TAKEN = "places.room.taken";

    private final Transactions transactions;
    private final PlaceReads reads;
    private final DirtyTanks dirtyTanks;
    private final AfterChange afterChange;
    private final Pages pages;
    private final Clock clock;

    public ClassroomHandlers(Transactions transactions, PlaceReads reads, DirtyTanks dirtyTanks,
            AfterChange afterChange, Pages pages, Clock clock) {
        this.transactions = transactions;
        this.reads = reads;
        this.dirtyTanks = dirtyTanks;
        this.afterChange = afterChange;
        this.pages = pages;
        this.clock = clock;
    }

    public void showNew(Context ctx) {
        show(ctx, load(ctx), Optional.empty(), FormInput.showing(ctx, Map.of(NAME, "")), List.of());
    }

    public void create(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        School school = load(ctx);
        FormInput form = FormInput.of(ctx, LABELS.keySet());
        String name = parse(form);
        if (form.ok() && form.saves(() -> transactions.inChapter(chapterId,
                tx -> reads.classrooms().add(tx, chapterId, school.schoolId(), name)), NAME, TAKEN)) {
            ctx.redirect("/places", HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(ctx, school, Optional.empty(), form, List.of());
    }

    /** The room is named in the query: what stands on a door may contain a slash. */
    public void showEdit(Context ctx) {
        School school = load(ctx);
        String room = room(ctx, school);
        show(ctx, school, Optional.of(room), FormInput.showing(ctx, Map.of(NAME, room)), List.of());
    }

    public void update(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        School school = load(ctx);
        String room = room(ctx, school);
        FormInput form = FormInput.of(ctx, LABELS.keySet());
        String name = parse(form);
        Clashes clashes = new Clashes(form, LABELS);
        boolean saved = form.ok() && form.saves(() -> transactions.inChapter(chapterId,
                tx -> rename(tx, chapterId, school, room, name, clashes)), NAME, TAKEN);
        if (saved && clashes.found().isEmpty()) {
            afterChange.changed(chapterId);
            ctx.redirect("/places", HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(clashes.status());
        show(ctx, school, Optional.of(room), form, clashes.found());
    }

    private Void rename(DSLContext tx, int chapterId, School school, String from, String to, Clashes clashes) {
        reads.schools().lock(tx, chapterId, school.code());
        if (clashes.with(Map.of(NAME, from))) {
            return null;
        }
        if (!reads.classrooms().rename(tx, chapterId, school.schoolId(), from, to)) {
            throw new NotFoundException("classroom");
        }
        Instant now = clock.instant();
        reads.tanks().listOfChapter(tx, chapterId).stream()
                .filter(tank -> tank.room().schoolCode().equals(school.code()) && tank.classroom().equals(to))
                .forEach(tank -> dirtyTanks.mark(tx, chapterId, tank.tankId(), now));
        return null;
    }

    private static String parse(FormInput form) {
        return form.required(NAME, 80, "places.room.noName");
    }

    private School load(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        return transactions.inChapter(chapterId, tx -> reads.schools().get(tx, chapterId, ctx.pathParam("school")));
    }

    private static String room(Context ctx, School school) {
        return Optional.ofNullable(ctx.queryParam("room"))
                .filter(school.classrooms()::contains)
                .orElseThrow(() -> new NotFoundException("classroom"));
    }

    private void show(
            Context ctx, School school, Optional<String> room, FormInput form, List<FormPage.Clash> clashes) {
        FormField name = form.textBox(NAME, "places.room").withHint(form.say("places.room.hint"));
        String heading = room.map(known -> known + ", " + school.name())
                .orElseGet(() -> form.say("places.room.addAt", school.name()));
        pages.show(ctx, "form-page", new FormPage(form.titled(heading), heading, List.of(Trails.places(form)), "",
                room.map(known -> Addresses.room(school, known)).orElse(Addresses.school(school) + "/rooms"),
                form.say(room.isPresent() ? "frame.form.save" : "places.room.addThis"), form.shown(),
                List.of(new Group(form.say("places.room.group"), "", List.of(List.of(name)))), clashes, List.of()));
    }
}
