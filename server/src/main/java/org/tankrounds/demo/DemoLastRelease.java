package org.tankrounds.demo;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.UUID;
import org.jooq.DSLContext;
import org.tankrounds.release.Approval;
import org.tankrounds.release.ApprovalRepository;
import org.tankrounds.release.DayRepository;
import org.tankrounds.release.Duty;
import org.tankrounds.release.Load;
import org.tankrounds.release.PlanRepository;
import org.tankrounds.release.ReleaseDay;
import org.tankrounds.release.ReleasePlan;
import org.tankrounds.release.Site;
import org.tankrounds.release.SiteRepository;
import org.tankrounds.release.Species;
import org.tankrounds.release.StreamCheck;
import org.tankrounds.release.StreamCheckRepository;
import org.tankrounds.stream.StreamGroup;

/** The day at the stream with which the last season ended: its paper, its plan, and what the classes saw there. */
final class DemoLastRelease {
    static final String PAPER = "R-7";
    private static final int PAPER_DAYS = 30;
    private static final int MOST_FISH = 3000;
    private static final double TANK_C = 11;
    private static final double STREAM_C = 9.6;
    private static final int TEMPERED_MINUTES = 35;
    private static final double SHORTEST_MEAN_MM = 49;
    private static final double[] AROUND_MEAN_MM = {-5, -3, -2, 0, 0, 1, 1, 2, 3, 4};
    private static final Map<StreamGroup, Integer> FOUND = Map.of(StreamGroup.SWIMMING_MAYFLY, 31,
            StreamGroup.FLAT_MAYFLY, 14, StreamGroup.STONEFLY_UNSURE, 6, StreamGroup.NET_CADDIS, 22,
            StreamGroup.SQUARE_CADDIS, 9, StreamGroup.MIDGE, 18, StreamGroup.SCUD, 11, StreamGroup.CRANE_FLY, 2);

    private final SiteRepository sites = new SiteRepository();
    private final ApprovalRepository approvals = new ApprovalRepository();
    private final PlanRepository plans = new PlanRepository();
    private final DayRepository days = new DayRepository();
    private final StreamCheckRepository checks = new StreamCheckRepository();

    /**
     * Fish of a tank that swam out, as the count has them.
     *
     * @param boxC water of their box on arrival, °C
     */
    record Gone(int tankId, UUID form, int fish, double boxC) {}

    void write(DSLContext tx, int chapterId, int seasonId, Instant released, ZoneId zone, List<Gone> gone,
            int personId) {
        Site site = sites.list(tx, chapterId).get(0);
        LocalDate day = released.atZone(zone).toLocalDate();
        int approvalId = approvals.add(tx, chapterId, site.siteId(), new Approval.Details(PAPER,
                "State fish agency, regional office", Species.RAINBOW_TROUT, day.minusDays(PAPER_DAYS),
                day.plusDays(PAPER_DAYS), MOST_FISH, Optional.empty(), Optional.empty()));
        int planId = plans.add(tx, chapterId, UUID.randomUUID(), new ReleasePlan(0, seasonId, approvalId,
                new ReleasePlan.Details(released, 0.75, OptionalDouble.of(TANK_C), OptionalDouble.of(STREAM_C),
                        OptionalDouble.of(15), OptionalDouble.empty(), true, 48, 12, Map.of(Duty.LEAD, "mentor"),
                        Optional.empty(), gone.stream().map(DemoLastRelease::load).toList()), Optional.empty()),
                personId, released);
        for (int i = 0; i < gone.size(); i++) {
            days.add(tx, chapterId, new ReleaseDay(planId, gone.get(i).tankId(), gone.get(i).form(), released,
                    OptionalDouble.of(gone.get(i).boxC()), OptionalDouble.of(STREAM_C),
                    OptionalInt.of(TEMPERED_MINUTES), lengthsMm(SHORTEST_MEAN_MM + i % 4), Map.of(), Optional.empty()));
        }
        checks.add(tx, chapterId, UUID.randomUUID(), new StreamCheck(0, site.siteId(), released.minusSeconds(1800),
                OptionalDouble.of(STREAM_C), OptionalDouble.of(7.4), OptionalDouble.of(10.6), FOUND, Optional.empty(),
                Optional.empty()), personId);
    }

    private static Load load(Gone gone) {
        return new Load(gone.tankId(), gone.fish(), OptionalDouble.of(SHORTEST_MEAN_MM), OptionalDouble.empty(), 2, 20);
    }

    private static List<Double> lengthsMm(double meanMm) {
        return Arrays.stream(AROUND_MEAN_MM).map(more -> meanMm + more).boxed().toList();
    }
}
