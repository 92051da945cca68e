package org.tankrounds.tankmodel;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tankrounds.fish.FeedSize;
import org.tankrounds.fish.FeedingTable;
import org.tankrounds.fish.GrowthAhead;
import org.tankrounds.fish.Ration;

/**
 * A tank's fish week by week until they leave: how large, how much feed of which size, and how full it makes the tank.
 * Nobody dies on the way, because nobody can plan for it.
 *
 * @param weeks from the first on which they feed
 * @param until the day on which they leave
 */
public record WeeksAhead(GrowthAhead growth, Room room, int fish, List<Week> weeks, Instant until) {
    /** Less than this share of their weight a day, and fish starve (common practice, no source: 1 to 3 %). */
    public static final double LEAST_RATION_PERCENT = 1;
    private static final Duration WEEK = Duration.ofDays(7);
    private static final double NEAR = 1e-3;

    /**
     * @param ration empty where the fish are too long for the feeding table; colder and warmer than it goes, as at its edge
     */
    public record Week(Instant at, double temperatureC, double weightG, double lengthMm, Optional<Ration> ration,
            Room.Load load) {
        public FeedSize feedSize() {
            return FeedSize.ofLength(lengthMm);
        }
    }

    /**
     * Feeding less from the first week on.
     *
     * @param share of the usual ration
     * @param lengthMm how long they are in the last week then
     */
    public record Less(double share, double lengthMm) {}

    public static WeeksAhead of(GrowthAhead growth, Room room, int fish, Instant from, Instant until) {
        Instant fed = growth.from().expected();
        Instant first = fed.isAfter(from) ? fed : from;
        List<Week> weeks = new ArrayList<>();
        for (Instant at = first; !at.isAfter(until); at = at.plus(WEEK)) {
            weeks.add(week(growth, room, fish, at, growth.weightG(at), 1));
        }
        return new WeeksAhead(growth, room, fish, weeks, until);
    }

    /** The first week that is too much for the tank. */
    public Optional<Week> firstTooFull() {
        return weeks.stream().filter(week -> week.load().fullest() > 1).findFirst();
    }

    /** The fullest week. */
    public Optional<Week> fullest() {
        return weeks.stream().reduce((one, other) -> other.load().fullest() > one.load().fullest() ? other : one);
    }

    /** How many fish the tank can carry to the last week; all of them where there is room. */
    public int fishWithRoom() {
        double fullest = fullest().map(week -> week.load().fullest()).orElse(0.0);
        return fullest <= 1 ? fish : (int) Math.floor(fish / fullest);
    }

    /** The most feed that leaves room to the last week; empty where they would starve. */
    public Optional<Less> lessFeed() {
        if (firstTooFull().isEmpty() || fullestAt(leastShare()) > 1) {
            return Optional.empty();
        }
        double enough = leastShare();
        double tooMuch = 1;
        while (tooMuch - enough > NEAR) {
            double middle = (enough + tooMuch) / 2;
            if (fullestAt(middle) > 1) {
                tooMuch = middle;
            } else {
                enough = middle;
            }
        }
        return Optional.of(new Less(enough, at(enough).get(weeks.size() - 1).lengthMm()));
    }

    /** The share of water to change each time that keeps nitrate down to the last week; empty where no change is enough. */
    public Optional<Double> largerChange() {
        double share = weeks.stream().mapToDouble(week -> room.changeShareFor(feedGPerDay(week))).max().orElse(0);
        boolean isEnough = weeks.stream().allMatch(week -> week.load().space() <= 1 && week.load().filter() <= 1);
        return isEnough && share <= 1 ? Optional.of(Math.max(share, room.changeShare())) : Optional.empty();
    }

    private static double leastShare() {
        return LEAST_RATION_PERCENT / Ration.RELEASE_TANK_PERCENT;
    }

    private double fullestAt(double share) {
        return at(share).stream().mapToDouble(week -> week.load().fullest()).max().orElse(0);
    }

    /** Fish that get a share of the ration grow at that share of their pace from the first week on. */
    private List<Week> at(double share) {
        double startG = weeks.get(0).weightG();
        return weeks.stream()
                .map(week -> week(growth, room, fish, week.at(), slowed(startG, week.weightG(), share), share)).toList();
    }

    private static Week week(GrowthAhead growth, Room room, int fish, Instant at, double weightG, double share) {
        double temperatureC = growth.temperatureC(at);
        double lengthMm = growth.lengthMm(weightG);
        Optional<Ration> ration = Ration.of(fish, weightG, lengthMm, FeedingTable.nearest(temperatureC));
        double feed = ration.map(Ration::gramsPerDay).orElse(0.0) * share;
        return new Week(at, temperatureC, weightG, lengthMm, ration, room.load(fish * weightG, feed, temperatureC));
    }

    /** Cube roots of weight grow in a straight line with warmth. */
    private static double slowed(double startG, double fullG, double share) {
        double root = StrictMath.cbrt(startG) + share * (StrictMath.cbrt(fullG) - StrictMath.cbrt(startG));
        return root * root * root;
    }

    private static double feedGPerDay(Week week) {
        return week.ration().map(Ration::gramsPerDay).orElse(0.0);
    }
}
