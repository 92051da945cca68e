package org.tankrounds.demo;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import org.jooq.DSLContext;
import org.tankrounds.demo.DemoPlaces.WrittenChapter;
import org.tankrounds.people.PersonRepository;
import org.tankrounds.release.Approval;
import org.tankrounds.release.ApprovalRepository;
import org.tankrounds.release.Duty;
import org.tankrounds.release.Load;
import org.tankrounds.release.PlanRepository;
import org.tankrounds.release.ReleasePlan;
import org.tankrounds.release.Rules;
import org.tankrounds.release.RulesRepository;
import org.tankrounds.release.Site;
import org.tankrounds.release.SiteRepository;
import org.tankrounds.release.Species;
import org.tankrounds.release.StreamCheck;
import org.tankrounds.release.StreamCheckRepository;
import org.tankrounds.season.SeasonRepository;
import org.tankrounds.stream.StreamGroup;
import org.tankrounds.web.Role;

/** Where the invented chapters may release their fish, by papers that are as invented. */
final class DemoRelease {
    private static final Map<String, Site.Details> SITES = Map.of(
            "hollinthrup", new Site.Details("Tannery footbridge", "Spoonquill Brook",
                    Optional.of("Fern County; park by the old mill, five minutes on foot"),
                    Optional.of(new Site.Point(41.2503, -75.5017)), OptionalDouble.of(285)),
            "copperlinn", new Site.Details("Sedge meadow", "Copperlinn Water",
                    Optional.of("Heron County; the gate is opened by the ranger"), Optional.empty(),
                    OptionalDouble.of(240)));
    private static final Rules RULES =
            new Rules(4, 20, Optional.of("Children wear life jackets below the bridge."));
    private static final Map<StreamGroup, Integer> FOUND = Map.of(StreamGroup.FLAT_MAYFLY, 20,
            StreamGroup.CRAWLING_MAYFLY, 15, StreamGroup.GOLDEN_STONEFLY, 8, StreamGroup.NET_CADDIS, 30,
            StreamGroup.RIFFLE_BEETLE, 10, StreamGroup.MIDGE, 12, StreamGroup.BLACK_FLY, 5, StreamGroup.WORM, 3,
            StreamGroup.MAYFLY_UNSURE, 4);
    private static final int PAPER_DAYS_BEFORE = 30;
    private static final int PAPER_DAYS_AFTER = 200;
    private static final int PLAN_DAYS_AHEAD = 7;

    private final SiteRepository sites = new SiteRepository();
    private final ApprovalRepository approvals = new ApprovalRepository();
    private final RulesRepository rules = new RulesRepository();
    private final StreamCheckRepository checks = new StreamCheckRepository();
    private final PlanRepository plans = new PlanRepository();
    private final SeasonRepository seasons = new SeasonRepository();
    private final PersonRepository people = new PersonRepository();

    /** Where a chapter releases its fish, as the count names it. */
    static String siteOf(String chapterCode) {
        return SITES.get(chapterCode).name();
    }

    void write(DSLContext tx, WrittenChapter chapter, Instant now) {
        int chapterId = chapter.chapter().chapterId();
        LocalDate today = now.atZone(chapter.chapter().zone()).toLocalDate();
        int siteId = sites.add(tx, chapterId, SITES.get(chapter.chapter().code()));
        int approvalId = approvals.add(tx, chapterId, siteId, new Approval.Details("R-" + today.getYear() + "-14",
                "State fish agency, regional office", Species.RAINBOW_TROUT, today.minusDays(PAPER_DAYS_BEFORE),
                today.plusDays(PAPER_DAYS_AFTER), 700, Optional.empty(),
                Optional.of("Fry that feed; nobody wades; report within ten days.")));
        rules.put(tx, chapterId, RULES);
        checks.add(tx, chapterId, UUID.randomUUID(), new StreamCheck(0, siteId, now.minus(Duration.ofDays(3)),
                OptionalDouble.of(8.4), OptionalDouble.of(7.2), OptionalDouble.of(11.1), FOUND,
                Optional.of("Clear, stones with a thin green film."), Optional.empty()), coordinator(tx, chapterId));
        plans.add(tx, chapterId, UUID.randomUUID(), plan(tx, chapter, approvalId, today),
                coordinator(tx, chapterId), now);
    }

    /** Of the two tanks that were measured, or the first; in a week. */
    private ReleasePlan plan(DSLContext tx, WrittenChapter chapter, int approvalId, LocalDate today) {
        int chapterId = chapter.chapter().chapterId();
        int seasonId = seasons.list(tx, chapterId).get(0).seasonId();
        List<Load> loads = chapter.tanks().stream().limit(2).map(tank -> new Load(tank.tankId(), 40,
                OptionalDouble.of(34), OptionalDouble.empty(), 2, 20)).toList();
        return new ReleasePlan(0, seasonId, approvalId, new ReleasePlan.Details(
                today.plusDays(PLAN_DAYS_AHEAD).atTime(10, 0).atZone(chapter.chapter().zone()).toInstant(), 0.75,
                OptionalDouble.of(11.5), OptionalDouble.of(8), OptionalDouble.of(14), OptionalDouble.empty(), true, 22,
                6, Map.of(Duty.LEAD, "mentor", Duty.COUNT, "class teacher", Duty.DRIVE, "class teacher", Duty.MEASURE,
                        "science teacher"), Optional.of("Bus at 9:10 by the gym."), loads), Optional.empty());
    }

    private int coordinator(DSLContext tx, int chapterId) {
        return people.list(tx, chapterId).stream().filter(person -> person.role() == Role.COORDINATOR).findFirst()
                .orElseThrow().personId();
    }
}
