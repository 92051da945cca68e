package org.tankrounds.demo;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jooq.DSLContext;
import org.tankrounds.demo.DemoPlaces.WrittenChapter;
import org.tankrounds.release.Approval;
import org.tankrounds.release.ApprovalRepository;
import org.tankrounds.release.Rules;
import org.tankrounds.release.RulesRepository;
import org.tankrounds.release.Site;
import org.tankrounds.release.SiteRepository;
import org.tankrounds.release.Species;

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
    private static final int PAPER_DAYS_BEFORE = 30;
    private static final int PAPER_DAYS_AFTER = 200;

    private final SiteRepository sites = new SiteRepository();
    private final ApprovalRepository approvals = new ApprovalRepository();
    private final RulesRepository rules = new RulesRepository();

    void write(DSLContext tx, WrittenChapter chapter, Instant now) {
        int chapterId = chapter.chapter().chapterId();
        LocalDate today = now.atZone(chapter.chapter().zone()).toLocalDate();
        int siteId = sites.add(tx, chapterId, SITES.get(chapter.chapter().code()));
        approvals.add(tx, chapterId, siteId, new Approval.Details("R-" + today.getYear() + "-14",
                "State fish agency, regional office", Species.RAINBOW_TROUT, today.minusDays(PAPER_DAYS_BEFORE),
                today.plusDays(PAPER_DAYS_AFTER), 700, Optional.empty(),
                Optional.of("Fry that feed; nobody wades; report within ten days.")));
        rules.put(tx, chapterId, RULES);
    }
}
