package org.tankrounds.release;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;
import org.tankrounds.jobs.AfterChange;
import org.tankrounds.jobs.DirtyTanks;
import org.tankrounds.pages.ReleaseDayPage;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.DeviceClock;
import org.tankrounds.readings.OutboxAnswers;
import org.tankrounds.season.CountBook;
import org.tankrounds.season.SameDay;
import org.tankrounds.season.Season;
import org.tankrounds.web.Asked;
import org.tankrounds.web.Caller;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Formats;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Scale;
import org.tankrounds.web.Speech;
import org.tankrounds.web.TypedNumber;
import org.tankrounds.words.Saying;

/** The page that is filled in at the water, for one tank of a plan. */
public final class DayHandlers {
    private final Transactions transactions;
    private final ReleaseReads reads;
    private final DirtyTanks dirtyTanks;
    private final AfterChange afterChange;
    private final Pages pages;
    private final Clock clock;

    public DayHandlers(Transactions transactions, ReleaseReads reads, DirtyTanks dirtyTanks, AfterChange afterChange,
            Pages pages, Clock clock) {
        this.transactions = transactions;
        this.reads = reads;
        this.dirtyTanks = dirtyTanks;
        this.afterChange = afterChange;
        this.pages = pages;
        this.clock = clock;
    }

    /** What the page stands on. */
    private record Where(ReleasePlan plan, Load load, Tank tank, Site site, Approval approval, Season season,
            GoNoGo verdict) {
        String address() {
            return plan.address() + "/tanks/" + tank.code();
        }
    }

    /** What the form carries along unseen. */
    private record Hidden(UUID submission, String asked) {}

    /** @param asked entries that were asked about, now or before; empty for none */
    private record Refusal(Saying why, String asked) {}

    public void show(Context ctx) {
        show(ctx, load(ctx), FormInput.showing(ctx, DayForm.blank()), new Hidden(UUID.randomUUID(), ""),
                Speech.of(ctx).scale());
    }

    /** Written into the count by the count's own rules, and once, however often the form comes. */
    public void create(Context ctx) {
        if (OutboxAnswers.refuseAnothers(ctx)) {
            return;
        }
        Where where = load(ctx);
        UUID submission = Asked.submissionId(ctx.formParam(DayForm.SUBMISSION));
        FormInput typed = FormInput.of(ctx, DayForm.NAMES);
        Instant filledIn = DeviceClock.takenAt(
                name -> Optional.ofNullable(ctx.formParam(name)).orElse(""), clock.instant());
        DayForm form = new DayForm(where.plan(), where.site(), where.approval(), where.season(), where.tank(), filledIn);
        String answered = Optional.ofNullable(ctx.formParam(DayForm.ASKED)).orElse("");
        Optional<Refusal> refusal = form.parse(typed, submission)
                .flatMap(parsed -> write(ctx, where, parsed, answered));
        refusal.ifPresent(one -> typed.refuse(DayForm.FISH, one.why()));
        answer(ctx, where, typed, new Hidden(submission, refusal.map(Refusal::asked).orElse(answered)));
    }

    private Optional<Refusal> write(Context ctx, Where where, DayForm.Typed typed, String answered) {
        Caller caller = Caller.of(ctx);
        if (where.plan().droppedAt().isPresent()) {
            return Optional.of(new Refusal(Saying.of("release.day.dropped"), answered));
        }
        return transactions.inChapter(caller.chapterId(), tx -> {
            reads.plans().lock(tx, caller.chapterId());
            CountBook book = new CountBook(reads.season(), tx, caller.chapterId(), where.season(), clock.instant());
            SameDay before = book.ofTheSameDay(where.tank(), typed.day().submission(), typed.entry());
            if (!before.isSettledBy(answered)) {
                // Two who each write down what both let swim would count it twice.
                Formats formats = Speech.of(ctx).formats(where.tank().zone(), clock.instant());
                return Optional.of(new Refusal(
                        Saying.of("release.day.again", before.wording(formats)), before.asked()));
            }
            Optional<Saying> refusal = book.write(
                    where.tank(), typed.day().submission(), typed.entry(), caller.personId().orElseThrow());
            if (refusal.isEmpty()) {
                reads.days().add(tx, caller.chapterId(), typed.day());
                dirtyTanks.mark(tx, caller.chapterId(), where.tank().tankId(), clock.instant());
            }
            return refusal.map(why -> new Refusal(why, answered));
        });
    }

    private void answer(Context ctx, Where where, FormInput typed, Hidden hidden) {
        String savedTo = where.plan().address() + "?saved=released";
        if (typed.ok()) {
            afterChange.changed(Caller.of(ctx).chapterId());
            if (OutboxAnswers.wanted(ctx)) {
                OutboxAnswers.stored(ctx, hidden.submission().toString(), savedTo);
            } else {
                ctx.redirect(savedTo, HttpStatus.SEE_OTHER);
            }
        } else if (OutboxAnswers.wanted(ctx)) {
            OutboxAnswers.needsFixing(ctx, typed.faults());
        } else {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, where, typed, hidden, Scale.ofUnit(typed.text(DayForm.SCALE)));
        }
    }

    private Where load(Context ctx) {
        Caller caller = Caller.of(ctx);
        return transactions.inChapter(caller.chapterId(), tx -> load(ctx, caller, tx));
    }

    private Where load(Context ctx, Caller caller, DSLContext tx) {
        Tank tank = reads.season().tanks().get(tx, caller, ctx.pathParam("tank"));
        ReleasePlan plan = reads.plans().get(tx, caller.chapterId(), TypedNumber.whole(ctx.pathParam("plan")));
        Load load = plan.details().loads().stream().filter(one -> one.tankId() == tank.tankId()).findFirst()
                .orElseThrow(() -> new NotFoundException("tank"));
        PlanFacts facts = new PlanFacts(reads, tx, caller, clock.instant());
        ReleaseJudge.Facts known = facts.of(plan);
        Site site = reads.sites().list(tx, caller.chapterId()).stream()
                .filter(one -> one.siteId() == known.approval().siteId()).findFirst().orElseThrow();
        Formats formats = Speech.of(ctx).formats(caller.zone(), clock.instant());
        return new Where(plan, load, tank, site, known.approval(), facts.season(plan),
                new ReleaseJudge(known, caller.zone(), formats).judge());
    }

    private void show(Context ctx, Where where, FormInput typed, Hidden hidden, Scale scale) {
        String place = where.tank().school() + ", " + where.tank().classroom();
        String verdict = switch (where.verdict().verdict()) {
            case GO -> "";
            case NOT_YET -> typed.say("release.day.notYet");
            case NO_GO -> typed.say("release.day.noGo");
        };
        pages.show(ctx, "release/day", page(typed, scale, new ReleaseDayPage.Facts(
                typed.titled(typed.say("release.day.title", place)), typed.say("release.day.title", place),
                where.site().name(), where.plan().address(), where.address(),
                typed.say("release.day.planned", where.load().fish(), where.approval().number()),
                verdict, hidden.submission().toString(), hidden.asked(), where.tank().code(),
                TemperingHelp.rows(scale))));
    }

    private static ReleaseDayPage page(FormInput typed, Scale scale, ReleaseDayPage.Facts facts) {
        return new ReleaseDayPage(facts, scale.unit(), DayForm.counts(typed), DayForm.water(typed, scale),
                DayForm.kept(typed, ""), DayForm.lengthsBox(typed), DayForm.noteBox(typed), DayForm.when(typed));
    }
}
