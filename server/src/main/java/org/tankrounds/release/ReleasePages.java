package org.tankrounds.release;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.tankrounds.pages.ReleasePage;
import org.tankrounds.pages.SitePage;
import org.tankrounds.places.Tank;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Role;
import org.tankrounds.web.Speech;
import org.tankrounds.web.TypedNumber;
import org.tankrounds.words.Saying;

/** From sites, approvals and plans to the pages that list them. */
final class ReleasePages {
    private static final String AND = " · ";

    private final ReleaseReads reads;
    private final DSLContext tx;
    private final Caller caller;
    private final Formats formats;
    private final Speech speech;
    private final LocalDate today;

    ReleasePages(ReleaseReads reads, DSLContext tx, Caller caller, Formats formats) {
        this.reads = reads;
        this.tx = tx;
        this.caller = caller;
        this.formats = formats;
        this.speech = formats.speech();
        this.today = formats.now().atZone(caller.zone()).toLocalDate();
    }

    ReleasePage overview() {
        List<Site> sites = reads.sites().list(tx, caller.chapterId());
        Map<Integer, List<Approval>> approvals = reads.approvals().list(tx, caller.chapterId()).stream()
                .collect(Collectors.groupingBy(Approval::siteId));
        ApprovalUse use = use();
        List<ReleasePage.SiteRow> rows = sites.stream().map(site ->
                row(site, approvals.getOrDefault(site.siteId(), List.of()), use)).toList();
        List<Approval> all = approvals.values().stream().flatMap(List::stream).toList();
        Map<Boolean, List<ReleasePlan>> plans = plans().stream()
                .collect(Collectors.partitioningBy(plan -> isAhead(plan, use)));
        return new ReleasePage(title(sites, all, plans.get(true)), maySet(), rows, rows(plans.get(true), all, sites),
                rows(plans.get(false), all, sites), maySet() && mayPlan(all) ? "/release/plans/new" : "", rules());
    }

    SitePage site(Site site) {
        ApprovalUse use = use();
        List<Approval> known = reads.approvals().listOfSite(tx, caller.chapterId(), site.siteId());
        List<SitePage.ApprovalRow> approvals = known.stream().map(approval -> row(site, approval, use)).toList();
        String water = Stream.of(Optional.of(site.details().water()), site.details().wayThere(),
                        site.details().point().map(point -> say("release.site.at",
                                TypedNumber.text(point.north(), 5), TypedNumber.text(point.east(), 5))))
                .flatMap(Optional::stream).collect(Collectors.joining(AND));
        return new SitePage(site.name(), water, maySet() ? site.address() + "/edit" : "", approvals,
                maySet() ? site.address() + "/approvals/new" : "",
                maySet() && mayPlan(known) ? "/release/plans/new" : "", checks(site), site.address() + "/checks/new");
    }

    private List<SitePage.CheckRow> checks(Site site) {
        StreamPages words = new StreamPages(site, formats);
        return reads.checks().list(tx, caller.chapterId(), site.siteId()).stream().map(check -> new SitePage.CheckRow(
                formats.dateYearAndClock(check.at()), words.line(check), check.address())).toList();
    }

    private String title(List<Site> sites, List<Approval> approvals, List<ReleasePlan> ahead) {
        Optional<ReleasePlan> next = ahead.stream().reduce((later, sooner) -> sooner);
        if (next.isPresent()) {
            return say("release.title.next", formats.full(next.get().details().startsAt()),
                    site(next.get(), approvals, sites).name());
        }
        long open = approvals.stream().filter(one -> one.holdsOn(today)).count();
        if (sites.isEmpty()) {
            return say("release.title.none");
        }
        return open == 0 ? say("release.title.closed") : say("release.title", open);
    }

    /** The latest first; a teacher's are those that take fish of their tanks. */
    private List<ReleasePlan> plans() {
        Set<Integer> own = reads.season().tanks().list(tx, caller).stream().map(Tank::tankId)
                .collect(Collectors.toSet());
        return reads.plans().list(tx, caller.chapterId()).stream()
                .filter(plan -> PlanFacts.mayKnow(caller, plan, own)).toList();
    }

    private List<ReleasePage.PlanRow> rows(List<ReleasePlan> plans, List<Approval> approvals, List<Site> sites) {
        return plans.stream().map(plan -> new ReleasePage.PlanRow(
                formats.dateYearAndClock(plan.details().startsAt()), site(plan, approvals, sites).name(),
                plan.droppedAt().isPresent() ? say("release.plan.dropped")
                        : say("release.plan.row", Saying.of("release.fish", plan.details().fish()),
                                Saying.of("release.tanks", plan.details().loads().size())),
                plan.address())).toList();
    }

    private boolean isAhead(ReleasePlan plan, ApprovalUse use) {
        return plan.droppedAt().isEmpty() && !use.isOut(plan)
                && !plan.details().startsAt().atZone(caller.zone()).toLocalDate().isBefore(today);
    }

    private static Site site(ReleasePlan plan, List<Approval> approvals, List<Site> sites) {
        int siteId = approvals.stream().filter(one -> one.approvalId() == plan.approvalId()).findFirst().orElseThrow()
                .siteId();
        return sites.stream().filter(one -> one.siteId() == siteId).findFirst().orElseThrow();
    }

    private boolean mayPlan(List<Approval> approvals) {
        return approvals.stream().anyMatch(one -> one.withdrawnAt().isEmpty()
                && one.details().species() == Species.RAINBOW_TROUT && !today.isAfter(one.details().lastGoodDay()));
    }

    private ApprovalUse use() {
        return ApprovalUse.read(reads, tx, caller.chapterId(), today.atStartOfDay(caller.zone()).toInstant());
    }

    private ReleasePage.SiteRow row(Site site, List<Approval> approvals, ApprovalUse use) {
        Optional<Approval> best = approvals.stream().filter(one -> one.holdsOn(today)).findFirst()
                .or(() -> approvals.stream().filter(one -> one.withdrawnAt().isEmpty()).findFirst());
        return new ReleasePage.SiteRow(site.name(), site.details().water(), site.address(),
                best.map(approval -> say("release.approval.line", approval.number(), standing(approval)))
                        .orElseGet(() -> say("release.approval.missing")),
                best.map(approval -> fish(approval, use)).orElse(""));
    }

    private SitePage.ApprovalRow row(Site site, Approval approval, ApprovalUse use) {
        Approval.Details details = approval.details();
        String days = say("release.approval.days", date(details.firstDay()), date(details.lastDay()));
        return new SitePage.ApprovalRow(approval.number(), details.agency(),
                say("release.species." + details.species().code()),
                details.expiresOn().map(last -> say("release.approval.daysAndExpiry", days, date(last))).orElse(days),
                fish(approval, use), standing(approval), details.note().orElse(""),
                approval.withdrawnAt().isPresent(),
                maySet() ? site.address() + "/approvals/" + approval.approvalId() : "");
    }

    private String fish(Approval approval, ApprovalUse use) {
        Approval.Used used = use.of(approval, 0);
        int most = approval.details().mostFish();
        int free = approval.left(used);
        if (free < 0) {
            return used.planned() == 0 ? say("release.approval.over", used.released(), most, -free)
                    : say("release.approval.overPlanned", used.released(), most, used.planned(), -free);
        }
        return say("release.approval.free", free, most)
                + (used.planned() == 0 ? "" : "; " + say("release.approval.planned", used.planned()));
    }

    private String standing(Approval approval) {
        if (approval.withdrawnAt().isPresent()) {
            return say("release.standing.withdrawn");
        }
        if (approval.details().species() != Species.RAINBOW_TROUT) {
            return say("release.standing.species");
        }
        if (today.isBefore(approval.details().firstDay())) {
            return say("release.standing.ahead", date(approval.details().firstDay()));
        }
        return today.isAfter(approval.details().lastGoodDay())
                ? say("release.standing.over", date(approval.details().lastGoodDay()))
                : say("release.standing.holds", date(approval.details().lastGoodDay()));
    }

    private String rules() {
        return reads.rules().find(tx, caller.chapterId()).map(rules -> Stream.of(
                                Optional.of(say("release.rules.adults", rules.childrenPerAdult())),
                                Optional.of(rules.deepestCm() == 0 ? say("release.rules.noWading")
                                        : say("release.rules.depth", rules.deepestCm())),
                                rules.others())
                        .flatMap(Optional::stream).collect(Collectors.joining(" ")))
                .orElseGet(() -> say("release.rules.unset"));
    }

    private boolean maySet() {
        return caller.role() == Role.COORDINATOR;
    }

    private String date(LocalDate day) {
        return speech.written("time.pattern.dateAndYear", day);
    }

    private String say(String key, Object... with) {
        return speech.say(key, with);
    }
}
