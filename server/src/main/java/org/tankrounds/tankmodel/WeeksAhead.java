package org.tankrounds.tankmodel;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.tankrounds.fish.FeedSize;
import org.tankrounds.fish.FeedingTable;
import org.tankrounds.fish.GrowthAhead;
import org.tankrounds.fish.Ration;

/**
 * A tank's fish week by week until they leave: how large, how much feed of which size, and how full it makes the tank.
 * Nobody dies on the way, because nobody can plan for it. What fish of several ages weigh, eat and leave in the water
 * adds up; those that do not feed yet count for nothing, as they weigh next to nothing.
 *
 * @param cohorts the oldest first, each with fish in it
 * @param weeks from the first on which any of them feed
 * @param until the day on which they leave
 */
public record WeeksAhead(List<Cohort> cohorts, Room room, List<Week> weeks, Instant until) {
    /** Less than this share of their weight a day, and fish starve (common practice, no source: 1 to 3 %). */
    public static final double LEAST_RATION_PERCENT = 1;
    private static final Duration WEEK = Duration.ofDays(7);
    private static final double NEAR = 1e-3;

    /**
     * Those of one cohort that feed.
     *
     * @param cohort which one, as {@link #cohorts} counts from 0
     * @param weightG of one fish
     * @param ration empty where they are too long for the feeding table; colder and warmer than it goes, as at its edge
     */
    public record Feeding(int cohort, int fish, double weightG, double lengthMm, Optional<Ration> ration) {
        public FeedSize feedSize() {
            return FeedSize.ofLength(lengthMm);
        }

        double biomassG() {
            return fish * weightG;
        }

        double feedGPerDay() {
            return ration.map(Ration::gramsPerDay).orElse(0.0);
        }
    }

    /** @param feeding of each cohort that does, the oldest first */
    public record Week(Instant at, double temperatureC, List<Feeding> feeding, Room.Load load) {

        public Feeding largest() {
            return feeding.stream().max(Comparator.comparingDouble(Feeding::lengthMm)).orElseThrow();
        }

        /** g of all that feed. */
        public double biomassG() {
            return feeding.stream().mapToDouble(Feeding::biomassG).sum();
        }

        /** g of dry feed a day for all of them. */
        public double feedGPerDay() {
            return feeding.stream().mapToDouble(Feeding::feedGPerDay).sum();
        }
    }

    /**
     * Feeding less from the first week on.
     *
     * @param share of the usual ration
     * @param lengthMm how long the largest are in the last week then
     */
    public record Less(double share, double lengthMm) {}

    /** @param cohorts the oldest first */
    public static WeeksAhead of(List<Cohort> cohorts, Room room, Instant from, Instant until) {
        Instant fed = cohorts.stream().map(WeeksAhead::fedAt).min(Comparator.naturalOrder()).orElse(until);
        List<Week> weeks = new ArrayList<>();
        for (Instant at = fed.isAfter(from) ? fed : from; !at.isAfter(until); at = at.plus(WEEK)) {
            weeks.add(week(cohorts, room, at));
        }
        return new WeeksAhead(cohorts, room, weeks, until);
    }

    /** The first week that is too much for the tank. */
    public Optional<Week> firstTooFull() {
        return weeks.stream().filter(week -> week.load().fullest() > 1).findFirst();
    }

    /** The fullest week. */
    public Optional<Week> fullest() {
        return weeks.stream().reduce((one, other) -> other.load().fullest() > one.load().fullest() ? other : one);
    }

    public int fish() {
        return cohorts.stream().mapToInt(Cohort::fish).sum();
    }

    /** How many fish the tank can carry to the last week, the oldest taken out first; all where there is room. */
    public int fishWithRoom() {
        int[] kept = cohorts.stream().mapToInt(Cohort::fish).toArray();
        for (int i = 0; i < kept.length && !hasRoomFor(kept); i++) {
            int most = kept[i];
            kept[i] = 0;
            if (hasRoomFor(kept)) {
                kept[i] = mostWithRoom(kept, i, most);
            }
        }
        int left = 0;
        for (int fish : kept) {
            left += fish;
        }
        return left;
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
        return Optional.of(new Less(enough, at(enough).get(weeks.size() - 1).largest().lengthMm()));
    }

    /**
     * The share of water to change each time that keeps nitrate down to the last week; empty where no change is enough.
     */
    public Optional<Double> largerChange() {
        double share = weeks.stream().mapToDouble(week -> room.changeShareFor(week.feedGPerDay())).max().orElse(0);
        boolean isEnough = weeks.stream().allMatch(week -> week.load().space() <= 1 && week.load().filter() <= 1);
        return isEnough && share <= 1 ? Optional.of(Math.max(share, room.changeShare())) : Optional.empty();
    }

    private static double leastShare() {
        return LEAST_RATION_PERCENT / Ration.RELEASE_TANK_PERCENT;
    }

    private static Instant fedAt(Cohort cohort) {
        return cohort.growth().from().expected();
    }

    /** Fewer fish weigh and eat less in proportion, so that the most lies between none and all. */
    private int mostWithRoom(int[] kept, int cohort, int tooMany) {
        int[] tried = kept.clone();
        int enough = 0;
        int over = tooMany;
        while (over - enough > 1) {
            tried[cohort] = (enough + over) / 2;
            if (hasRoomFor(tried)) {
                enough = tried[cohort];
            } else {
                over = tried[cohort];
            }
        }
        return enough;
    }

    private boolean hasRoomFor(int[] fish) {
        return weeks.stream().allMatch(week -> {
            double biomassG = 0;
            double feedG = 0;
            for (Feeding one : week.feeding()) {
                double share = (double) fish[one.cohort()] / one.fish();
                biomassG += share * one.biomassG();
                feedG += share * one.feedGPerDay();
            }
            return room.load(biomassG, feedG, week.temperatureC()).fullest() <= 1;
        });
    }

    private double fullestAt(double share) {
        return at(share).stream().mapToDouble(week -> week.load().fullest()).max().orElse(0);
    }

    /** Fish that get a share of the ration grow at that share of their pace from their first week on. */
    private List<Week> at(double share) {
        Double[] startG = new Double[cohorts.size()];
        List<Week> slowed = new ArrayList<>();
        for (Week week : weeks) {
            List<Feeding> feeding = new ArrayList<>();
            for (Feeding one : week.feeding()) {
                startG[one.cohort()] = startG[one.cohort()] == null ? one.weightG() : startG[one.cohort()];
                feeding.add(feeding(one.cohort(), cohorts.get(one.cohort()), week.temperatureC(),
                        slowed(startG[one.cohort()], one.weightG(), share)));
            }
            slowed.add(week(feeding, room, week.at(), week.temperatureC(), share));
        }
        return slowed;
    }

    private static Week week(List<Cohort> cohorts, Room room, Instant at) {
        double temperatureC = cohorts.get(0).growth().temperatureC(at);
        List<Feeding> feeding = new ArrayList<>();
        for (int i = 0; i < cohorts.size(); i++) {
            if (!fedAt(cohorts.get(i)).isAfter(at)) {
                feeding.add(feeding(i, cohorts.get(i), temperatureC, cohorts.get(i).growth().weightG(at)));
            }
        }
        return week(feeding, room, at, temperatureC, 1);
    }

    private static Week week(List<Feeding> feeding, Room room, Instant at, double temperatureC, double share) {
        double biomassG = sum(feeding, Feeding::biomassG);
        double feedG = share * sum(feeding, Feeding::feedGPerDay);
        return new Week(at, temperatureC, feeding, room.load(biomassG, feedG, temperatureC));
    }

    private static Feeding feeding(int index, Cohort cohort, double temperatureC, double weightG) {
        GrowthAhead growth = cohort.growth();
        double lengthMm = growth.lengthMm(weightG);
        return new Feeding(index, cohort.fish(), weightG, lengthMm,
                Ration.of(cohort.fish(), weightG, lengthMm, FeedingTable.nearest(temperatureC)));
    }

    private static double sum(List<Feeding> feeding, ToDoubleFunction<Feeding> of) {
        return feeding.stream().mapToDouble(of).sum();
    }

    /** Cube roots of weight grow in a straight line with warmth. */
    private static double slowed(double startG, double fullG, double share) {
        double root = StrictMath.cbrt(startG) + share * (StrictMath.cbrt(fullG) - StrictMath.cbrt(startG));
        return root * root * root;
    }
}
