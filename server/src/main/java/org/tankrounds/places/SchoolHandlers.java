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
import org.tankrounds.pages.FormPage;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Clashes;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Pages;

/** Adding and editing schools. */
public final class SchoolHandlers {
    private static final String TAKEN = "places.school.taken";

    private final Transactions transactions;
    private final PlaceReads reads;
    private final DirtyTanks dirtyTanks;
    private final AfterChange afterChange;
    private final Pages pages;
    private final Clock clock;

    public SchoolHandlers(Transactions transactions, PlaceReads reads, DirtyTanks dirtyTanks,
            AfterChange afterChange, Pages pages, Clock clock) {
        this.transactions = transactions;
        this.reads = reads;
        this.dirtyTanks = dirtyTanks;
        this.afterChange = afterChange;
        this.pages = pages;
        this.clock = clock;
    }

    public void showNew(Context ctx) {
        show(ctx, Optional.empty(), FormInput.showing(ctx, SchoolForm.blank(Caller.of(ctx).zone())), List.of());
    }

    public void create(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        FormInput form = FormInput.of(ctx, SchoolForm.LABELS.keySet());
        Optional<School.Details> details = SchoolForm.parse(form);
        if (details.isPresent() && form.saves(() -> transactions.inChapter(chapterId,
                tx -> reads.schools().add(tx, chapterId, details.get())), SchoolForm.NAME, TAKEN)) {
            ctx.redirect("/places", HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(ctx, Optional.empty(), form, List.of());
    }

    public void showEdit(Context ctx) {
        School school = load(ctx);
        show(ctx, Optional.of(school), FormInput.showing(ctx, SchoolForm.textOf(school.details())), List.of());
    }

    public void update(Context ctx) {
        School school = load(ctx);
        int chapterId = Caller.of(ctx).chapterId();
        FormInput form = FormInput.of(ctx, SchoolForm.LABELS.keySet());
        Optional<School.Details> details = SchoolForm.parse(form);
        Clashes clashes = new Clashes(form, SchoolForm.LABELS);
        boolean saved = details.isPresent() && form.saves(() -> transactions.inChapter(chapterId,
                tx -> store(tx, chapterId, school.code(), details.get(), clashes)), SchoolForm.NAME, TAKEN);
        if (saved && clashes.found().isEmpty()) {
            afterChange.changed(chapterId);
            ctx.redirect("/places", HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(clashes.status());
        show(ctx, Optional.of(school), form, clashes.found());
    }

    private Void store(DSLContext tx, int chapterId, String code, School.Details details, Clashes clashes) {
        School current = reads.schools().lock(tx, chapterId, code);
        Map<String, String> text = SchoolForm.textOf(current.details());
        if (clashes.with(text)) {
            return null;
        }
        reads.schools().update(tx, chapterId, current.schoolId(), details);
        Instant now = clock.instant();
        reads.tanks().listOfChapter(tx, chapterId).stream()
                .filter(tank -> tank.room().schoolCode().equals(code))
                .forEach(tank -> dirtyTanks.mark(tx, chapterId, tank.tankId(), now));
        return null;
    }

    private School load(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        return transactions.inChapter(chapterId, tx -> reads.schools().get(tx, chapterId, ctx.pathParam("school")));
    }

    private void show(Context ctx, Optional<School> school, FormInput form, List<FormPage.Clash> clashes) {
        String heading = school.map(School::name).orElseGet(() -> form.say("places.school.add"));
        String action = "/places/schools" + school.map(known -> "/" + known.code()).orElse("");
        pages.show(ctx, "form-page", new FormPage(
                form.titled(heading), heading, List.of(Trails.places(form)), "", action,
                form.say(school.isPresent() ? "frame.form.save" : "places.school.addThis"), form.shown(),
                SchoolForm.groups(form), clashes, List.of()));
    }
}
