package org.tankrounds.release;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.FormPage;
import org.tankrounds.places.Tank;
import org.tankrounds.season.CountBook;
import org.tankrounds.season.Season;
import org.tankrounds.web.Asked;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Clashes;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Speech;
import org.tankrounds.web.TypedNumber;

/** Planning a release, changing the plan and calling it off. */
public final class PlanHandlers {
    private static final String FORM = "form";

    private final Transactions transactions;
    private final ReleaseReads reads;
    private final Pages pages;
    private final Clock clock;

    public PlanHandlers(Transactions transactions, ReleaseReads reads, Pages pages, Clock clock) {
        this.transactions = transactions;
        this.reads = reads;
        this.pages = pages;
        this.clock = clock;
    }

    public void showNew(Context ctx) {
        PlanForm form = transactions.inChapter(Caller.of(ctx).chapterId(), tx -> form(tx, ctx, Optional.empty()));
        show(ctx, Optional.empty(), form, FormInput.showing(ctx, form.blank()), UUID.randomUUID(), List.of());
    }

    public void create(Context ctx) {
        Caller caller = Caller.of(ctx);
        UUID submission = Asked.submissionId(ctx.queryParam(FORM));
        List<FormInput> typed = new ArrayList<>();
        List<PlanForm> shown = new ArrayList<>();
        Optional<Integer> planId = transactions.inChapter(caller.chapterId(), tx -> {
            reads.plans().lock(tx, caller.chapterId());
            Optional<ReleasePlan> before = reads.plans().writtenBy(tx, caller.chapterId(), submission)
                    .map(number -> reads.plans().get(tx, caller.chapterId(), OptionalInt.of(number)));
            PlanForm form = form(tx, ctx, before);
            FormInput input = FormInput.of(ctx, form.names());
            typed.add(input);
            shown.add(form);
            Optional<ReleasePlan> plan = parse(tx, caller, form, input, before);
            if (before.isPresent() && plan.isPresent()
                    && !form.textOf(plan.get()).equals(form.textOf(before.get()))) {
                input.refuse(PlanForm.APPROVAL, "release.plan.used");
            }
            return !input.ok() ? Optional.empty() : before.map(ReleasePlan::planId).or(() -> plan.map(one ->
                    reads.plans().add(tx, caller.chapterId(), submission, one, caller.personId().orElseThrow(),
                            clock.instant())));
        });
        if (planId.isPresent()) {
            ctx.redirect("/release/plans/" + planId.get(), HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(ctx, Optional.empty(), shown.get(0), typed.get(0), submission, List.of());
    }

    public void showEdit(Context ctx) {
        transactions.inChapter(Caller.of(ctx).chapterId(), tx -> {
            ReleasePlan plan = plan(tx, ctx);
            PlanForm form = form(tx, ctx, Optional.of(plan));
            show(ctx, Optional.of(plan), form, FormInput.showing(ctx, form.textOf(plan)), UUID.randomUUID(),
                    List.of());
            return null;
        });
    }

    public void update(Context ctx) {
        Caller caller = Caller.of(ctx);
        transactions.inChapter(caller.chapterId(), tx -> {
            reads.plans().lock(tx, caller.chapterId());
            ReleasePlan current = plan(tx, ctx);
            PlanForm form = form(tx, ctx, Optional.of(current));
            FormInput input = FormInput.of(ctx, form.names());
            Optional<ReleasePlan> plan = parse(tx, caller, form, input, Optional.of(current));
            Clashes clashes = new Clashes(input, form.labels());
            if (plan.isPresent() && !clashes.with(form.textOf(current))) {
                reads.plans().update(tx, caller.chapterId(), current.planId(), plan.get());
                ctx.redirect(current.address(), HttpStatus.SEE_OTHER);
                return null;
            }
            ctx.status(clashes.status());
            show(ctx, Optional.of(current), form, input, UUID.randomUUID(), clashes.found());
            return null;
        });
    }

    public void drop(Context ctx) {
        Caller caller = Caller.of(ctx);
        transactions.inChapter(caller.chapterId(), tx -> {
            ReleasePlan plan = plan(tx, ctx);
            reads.plans().drop(tx, caller.chapterId(), plan.planId(), caller.personId().orElseThrow(),
                    clock.instant());
            return null;
        });
        ctx.redirect("/release", HttpStatus.SEE_OTHER);
    }

    /** What the form says, held against the approval and what it has left; empty where it may not be. */
    private Optional<ReleasePlan> parse(
            DSLContext tx, Caller caller, PlanForm form, FormInput input, Optional<ReleasePlan> current) {
        Optional<ReleasePlan> parsed = form.parse(input, current.map(ReleasePlan::planId).orElse(0), 0);
        if (parsed.isEmpty()) {
            return parsed;
        }
        ReleasePlan.Details details = parsed.get().details();
        LocalDate day = details.startsAt().atZone(caller.zone()).toLocalDate();
        Optional<Season> season = reads.season().seasons().list(tx, caller.chapterId()).stream()
                .filter(one -> one.details().holds(day)).findFirst();
        if (season.isEmpty()) {
            input.refuse(PlanForm.DAY, "release.plan.day.noSeason");
        }
        boolean moved = current.filter(before -> before.details().startsAt().equals(details.startsAt())).isEmpty();
        if (moved && day.isBefore(today(caller))) {
            input.refuse(PlanForm.DAY, "release.plan.day.past");
        }
        Approval approval = reads.approvals().list(tx, caller.chapterId()).stream()
                .filter(one -> one.approvalId() == parsed.get().approvalId()).findFirst().orElseThrow();
        approval.refusal(day, input::date).ifPresent(why -> input.refuse(PlanForm.DAY, why));
        ApprovalUse use = use(tx, caller);
        Set<Integer> out = use.outBy(parsed.get().planId());
        int ahead = details.loads().stream().filter(load -> !out.contains(load.tankId())).mapToInt(Load::fish).sum();
        if (ahead > 0) {
            approval.refusal(ahead, use.of(approval, parsed.get().planId()))
                    .ifPresent(why -> input.refuse(PlanForm.APPROVAL, why));
        }
        return input.ok() ? Optional.of(new ReleasePlan(parsed.get().planId(), season.orElseThrow().seasonId(),
                approval.approvalId(), details, Optional.empty())) : Optional.empty();
    }

    private PlanForm form(DSLContext tx, Context ctx, Optional<ReleasePlan> plan) {
        Caller caller = Caller.of(ctx);
        ApprovalUse use = use(tx, caller);
        int planId = plan.map(ReleasePlan::planId).orElse(0);
        List<Approval> approvals = reads.approvals().list(tx, caller.chapterId());
        List<PlanForm.Choice> choices = reads.sites().list(tx, caller.chapterId()).stream()
                .flatMap(site -> approvals.stream().filter(one -> one.siteId() == site.siteId())
                        .filter(one -> isChoice(one, plan, today(caller)))
                        .map(one -> new PlanForm.Choice(one, site, one.left(use.of(one, planId)))))
                .toList();
        Set<Integer> inPlan = plan.map(known -> known.details().loads().stream().map(Load::tankId)
                .collect(Collectors.toSet())).orElseGet(Set::of);
        Optional<LocalDate> wished = season(tx, caller).flatMap(season -> season.details().releaseOn())
                .filter(day -> !day.isBefore(today(caller)));
        return new PlanForm(choices, stocks(tx, caller, use, planId, inPlan), use.outBy(planId), caller.zone(),
                Speech.of(ctx).scale(), wished, clock.instant());
    }

    /** Not what is over or was taken back, unless the plan leans on it. */
    private static boolean isChoice(Approval approval, Optional<ReleasePlan> plan, LocalDate today) {
        return plan.filter(known -> known.approvalId() == approval.approvalId()).isPresent()
                || approval.withdrawnAt().isEmpty() && !today.isAfter(approval.details().lastGoodDay());
    }

    private List<TankStock> stocks(
            DSLContext tx, Caller caller, ApprovalUse use, int planId, Set<Integer> inPlan) {
        Instant now = clock.instant();
        Optional<Season> season = season(tx, caller);
        if (season.isEmpty()) {
            return List.of();
        }
        CountBook book = new CountBook(reads.season(), tx, caller.chapterId(), season.get(), now);
        List<TankStock> stocks = new ArrayList<>();
        for (Tank tank : reads.season().tanks().listWithRetired(tx, caller.chapterId())) {
            var account = book.account(tank);
            TankStock stock = new TankStock(tank, account.ledger().alive(), account.spread(),
                    use.plannedOf(tank.tankId(), planId),
                    reads.samples().list(tx, caller.chapterId(), tank.tankId(), season.get().from(tank.zone()))
                            .stream().findFirst());
            if (inPlan.contains(tank.tankId()) || stock.hasFish() && tank.isInUseAt(now)) {
                stocks.add(stock);
            }
        }
        return stocks;
    }

    private Optional<Season> season(DSLContext tx, Caller caller) {
        return Season.runningOn(today(caller), reads.season().seasons().list(tx, caller.chapterId()));
    }

    private ApprovalUse use(DSLContext tx, Caller caller) {
        return ApprovalUse.read(reads, tx, caller.chapterId(), today(caller).atStartOfDay(caller.zone()).toInstant());
    }

    private LocalDate today(Caller caller) {
        return LocalDate.now(clock.withZone(caller.zone()));
    }

    private ReleasePlan plan(DSLContext tx, Context ctx) {
        return reads.plans().get(tx, Caller.of(ctx).chapterId(), TypedNumber.whole(ctx.pathParam("plan")));
    }

    private void show(Context ctx, Optional<ReleasePlan> plan, PlanForm form, FormInput typed, UUID submission,
            List<FormPage.Clash> clashes) {
        String heading = typed.say(plan.isPresent() ? "release.plan.change" : "release.plan.add");
        FormPage.Link up = plan.map(known -> new FormPage.Link(typed.say("release.plan.this"), known.address()))
                .orElseGet(() -> new FormPage.Link(typed.say("release.door"), "/release"));
        List<FormPage.Act> acts = plan.filter(known -> known.droppedAt().isEmpty())
                .map(known -> new FormPage.Act(typed.say("release.plan.drop"), typed.say("release.plan.drop.what"),
                        known.address() + "/dropped", typed.say("release.plan.drop.do")))
                .map(List::of).orElseGet(List::of);
        pages.show(ctx, "form-page", new FormPage(typed.titled(heading), heading, List.of(up),
                typed.say("release.plan.lead"),
                plan.map(ReleasePlan::address).orElse("/release/plans?" + FORM + "=" + submission),
                typed.say(plan.isPresent() ? "frame.form.save" : "release.plan.keep"), typed.shown(),
                form.groups(typed), clashes, acts));
    }
}
