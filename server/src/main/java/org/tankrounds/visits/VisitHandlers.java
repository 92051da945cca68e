package org.tankrounds.visits;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.VisitsPage;
import org.tankrounds.places.Tank;
import org.tankrounds.places.TankRepository;
import org.tankrounds.web.Asked;
import org.tankrounds.web.Caller;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Role;
import org.tankrounds.web.Speech;
import org.tankrounds.web.TypedNumber;

/** A tank's visits: shown, written down by who was there, and taken back. */
public final class VisitHandlers {
    private static final String SAVED = "saved";
    private static final String SUBMISSION = "submission_id";
    private static final Set<String> RECEIPTS = Set.of("written", "withdrawn");

    private final Transactions transactions;
    private final TankRepository tanks;
    private final VisitRepository visits;
    private final Pages pages;
    private final Clock clock;

    public VisitHandlers(
            Transactions transactions, TankRepository tanks, VisitRepository visits, Pages pages, Clock clock) {
        this.transactions = transactions;
        this.tanks = tanks;
        this.visits = visits;
        this.pages = pages;
        this.clock = clock;
    }

    public void show(Context ctx) {
        String saved = Optional.ofNullable(ctx.queryParam(SAVED)).filter(RECEIPTS::contains)
                .map(what -> Speech.of(ctx).say("visits.saved." + what)).orElse("");
        Tank tank = load(ctx);
        show(ctx, tank, saved, FormInput.showing(ctx, form(tank).blank()), List.of(), UUID.randomUUID());
    }

    public void create(Context ctx) {
        Caller caller = Caller.of(ctx);
        Tank tank = load(ctx);
        FormInput typed = FormInput.of(ctx, VisitForm.NAMES);
        List<Deed> deeds = VisitForm.deeds(ctx);
        UUID submission = Asked.submissionId(ctx.formParam(SUBMISSION));
        Optional<Visit> visit = form(tank).parse(typed, deeds);
        if (visit.isEmpty()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, tank, "", typed, deeds, submission);
            return;
        }
        transactions.inChapter(caller.chapterId(), tx -> visits.add(tx, caller.chapterId(), tank.tankId(), submission,
                visit.get(), caller.personId().orElseThrow(), clock.instant()));
        done(ctx, "written");
    }

    public void withdraw(Context ctx) {
        Caller caller = Caller.of(ctx);
        Tank tank = load(ctx);
        TypedNumber.whole(ctx.pathParam("visit"))
                .ifPresent(visitId -> transactions.inChapter(caller.chapterId(), tx -> {
                    visits.withdraw(tx, caller.chapterId(), tank.tankId(), visitId, caller.personId().orElseThrow(),
                            clock.instant());
                    return null;
                }));
        done(ctx, "withdrawn");
    }

    private Tank load(Context ctx) {
        Caller caller = Caller.of(ctx);
        return transactions.inChapter(caller.chapterId(), tx -> tanks.get(tx, caller, ctx.pathParam("tank")));
    }

    private VisitForm form(Tank tank) {
        return new VisitForm(tank.zone(), clock.instant());
    }

    private void show(Context ctx, Tank tank, String saved, FormInput typed, List<Deed> deeds, UUID submission) {
        Caller caller = Caller.of(ctx);
        Formats formats = Speech.of(ctx).formats(tank.zone(), clock.instant());
        List<Visit> past = transactions.inChapter(caller.chapterId(),
                tx -> visits.list(tx, caller.chapterId(), tank.tankId(), Instant.EPOCH, clock.instant()));
        boolean mayWrite = Set.of(Role.ROUNDS).contains(caller.role());
        String heading = past.isEmpty() ? typed.say("visits.title.none", tank.classroom())
                : typed.say("visits.title", tank.classroom(), formats.dayRead(past.get(0).at()));
        List<FormField> boxes = mayWrite ? List.of(typed.dayBox(VisitForm.DAY, "visits.day"),
                typed.optional(typed.textBox(VisitForm.TIME, "visits.time")).withType("time", "off"),
                typed.optional(typed.textBox(VisitForm.NOTE, "visits.note")).withHint(typed.say("visits.note.hint")))
                : List.of();
        pages.show(ctx, "visits/visits", new VisitsPage(typed.titled(heading), heading,
                tank.school() + ", " + tank.classroom(), tank.code(), saved, mayWrite, submission.toString(),
                choices(typed, deeds), typed.textBox(VisitForm.DEEDS, "visits.deeds").error(), boxes,
                past.stream().map(visit -> row(visit, tank, formats, mayWrite)).toList()));
    }

    private static List<VisitsPage.Choice> choices(FormInput typed, List<Deed> chosen) {
        List<VisitsPage.Choice> choices = new ArrayList<>();
        Arrays.stream(Deed.values()).forEach(deed -> choices.add(new VisitsPage.Choice(
                VisitForm.id(deed), deed.code(), typed.say("visits.did." + deed.code()), chosen.contains(deed))));
        return choices;
    }

    private static VisitsPage.Row row(Visit visit, Tank tank, Formats formats, boolean mayWrite) {
        String deeds = visit.deeds().stream().map(deed -> formats.speech().say("visits.did." + deed.code()))
                .collect(Collectors.joining(", "));
        return new VisitsPage.Row(formats.dateYearAndClock(visit.at()), visit.by(), deeds, visit.note().orElse(""),
                mayWrite ? "/tanks/" + tank.code() + "/visits/" + visit.visitId() + "/withdrawn" : "");
    }

    private static void done(Context ctx, String receipt) {
        ctx.redirect("/tanks/" + ctx.pathParam("tank") + "/visits?" + SAVED + "=" + receipt, HttpStatus.SEE_OTHER);
    }
}
