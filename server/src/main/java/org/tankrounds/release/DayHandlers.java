package org.tankrounds.release;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;
import org.tankrounds.jobs.AfterChange;
import org.tankrounds.jobs.DirtyTanks;
import org.tankrounds.pages.ReleaseDayPage;
import org.tankrounds.places.Tank;
import org.tankrounds.release.DayQuestions.Question;
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
    /** Further from the plan's day than this, the day may be a slip. */
    private static final int DAYS_FROM_PLAN = 1;

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

    /** @param asked what was asked about, now or before; empty for nothing */
    private record Refusal(List<Question> why, String asked) {
        static Refusal of(String field, Saying why, String asked) {
            return new Refusal(List.of(new Question(field, why)), asked);
        }
    }

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
        DayForm form = new DayForm(
                where.plan(), where.site(), where.approval(), where.season(), where.tank(), filledIn);
        String answered = Optional.ofNullable(ctx.formParam(DayForm.ASKED)).orElse("");
        Optional<Refusal> refusal = form.parse(typed, submission)
                .flatMap(parsed -> write(ctx, where, parsed, answered));
        refusal.ifPresent(one -> one.why().forEach(why -> typed.refuse(why.field(), why.what())));
        answer(ctx, where, typed, new Hidden(submission, refusal.map(Refusal::asked).orElse(answered)));
    }

    private Optional<Refusal> write(Context ctx, Where where, DayForm.Typed typed, String answered) {
        Caller caller = Caller.of(ctx);
        if (where.plan().droppedAt().isPresent()) {
            return Optional.of(Refusal.of(DayForm.FISH, Saying.of("release.day.dropped"), answered));
        }
        return transactions.inChapter(caller.chapterId(), tx -> {
            reads.plans().lock(tx, caller.chapterId());
            CountBook book = new CountBook(reads.season(), tx, caller.chapterId(), where.season(), clock.instant());
            Optional<Refusal> refusal = reads.days().isWritten(tx, caller.chapterId(), typed.day()) ? Optional.empty()
                    : refusal(ctx, where, book, typed, answered);
            if (refusal.isPresent()) {
                return refusal;
            }
            Optional<Saying> refused = book.write(
                    where.tank(), typed.day().submission(), typed.entry(), caller.personId().orElseThrow());
            if (refused.isEmpty()) {
                reads.days().add(tx, caller.chapterId(), typed.day());
                dirtyTanks.mark(tx, caller.chapterId(), where.tank().tankId(), clock.instant());
            }
            return refused.map(why -> Refusal.of(DayForm.FISH, why, answered));
        });
    }

    /** What the count's own rules do not say of a form that comes for the first time. */
    private Optional<Refusal> refusal(
            Context ctx, Where where, CountBook book, DayForm.Typed typed, String answered) {
        Tank tank = where.tank();
        SameDay before = book.ofTheSameDay(tank, typed.day().submission(), typed.entry());
        Map<KeptBack, Integer> kept = typed.day().kept();
        Optional<Saying> tooMany = FishThen.of(book.account(tank), typed.entry().at(), tank.zone())
                .refusal(typed.entry().fish(), typed.entry().spread(), kept);
        if (tooMany.isPresent()) {
            return Optional.of(Refusal.of(DayForm.mostKept(kept), tooMany.get(), answered));
        }
        DayQuestions questions = new DayQuestions(answered);
        Formats formats = Speech.of(ctx).formats(tank.zone(), clock.instant());
        if (!before.entries().isEmpty()) {
            // Two who each write down what both let swim would count it twice.
            questions.ask(before.asked(), DayForm.FISH, Saying.of("release.day.again", before.wording(formats)));
        }
        LocalDate day = LocalDate.ofInstant(typed.entry().at(), tank.zone());
        LocalDate planned = LocalDate.ofInstant(where.plan().details().startsAt(), Caller.of(ctx).zone());
        if (Math.abs(ChronoUnit.DAYS.between(planned, day)) > DAYS_FROM_PLAN) {
            questions.ask(planned + "/" + day, DayForm.DAY, Saying.of("release.day.otherDay",
                    formats.weekdayAndDate(planned), formats.weekdayAndDate(day)));
        }
        return questions.open().isEmpty() ? Optional.empty()
                : Optional.of(new Refusal(questions.open(), questions.asked()));
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
