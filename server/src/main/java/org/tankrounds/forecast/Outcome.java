package org.tankrounds.forecast;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/** What the paths come to, each as much as readings and experience make it count. */
final class Outcome {

    private static final int HOURS = Forecast.HORIZON_HOURS;

    private final Crossings crossings;
    private final int paths;
    /** Paths as experience makes them likely: all equally likely after picking. */
    private int[] picked;
    /** What experience makes of it; NaN before that, then the paths speak. */
    private double stated = Double.NaN;
    /** Of the trouble that no reading shows, and deaths tell of. */
    private double unseenChance;

    Outcome(Paths course, Limits limits) {
        crossings = new Crossings(course, limits);
        paths = crossings.paths();
        picked = new int[paths];
        Arrays.setAll(picked, i -> i);
    }

    /**
     * Lets paths that go beyond a limit, and those that do not, count so that their share is a chance learned from
     * experience. Where all paths are alike they stay, and the chance is stated against them.
     *
     * @param chance as it would be had no fish been found dead
     * @param raised by those that were, at least as much
     */
    void weighTo(double chance, double raised) {
        stated = chance;
        unseenChance = (raised - chance) / (1 - chance);
        int[] beyond = Arrays.stream(picked).filter(this::goesBeyond).toArray();
        int[] within = Arrays.stream(picked).filter(i -> !goesBeyond(i)).toArray();
        if (beyond.length == 0 || within.length == 0) {
            return;
        }
        int count = (int) Math.rint(chance * paths);
        int[] chosen = new int[paths];
        for (int i = 0; i < paths; i++) {
            chosen[i] = i < count ? beyond[(int) ((long) i * beyond.length / count)]
                    : within[(int) ((long) (i - count) * within.length / (paths - count))];
        }
        picked = chosen;
    }

    int[] picked() {
        return picked;
    }

    boolean goesBeyond(int path) {
        return crossings.goesBeyond(path);
    }

    /** Of the paths that count, every one that goes beyond: when first, and which limit it passes then. */
    List<Way> waysBeyond() {
        return Arrays.stream(picked).filter(this::goesBeyond).mapToObj(crossings::way).toList();
    }

    /** Of the courses beyond a limit, the share that still is in another outcome of the same courses; 1 of none. */
    double stayBeyond(Outcome other) {
        return shareBeyond(other, true, 1);
    }

    /** Of those within, the share that is beyond in the other; 0 of none. */
    double comeBeyond(Outcome other) {
        return shareBeyond(other, false, 0);
    }

    private double shareBeyond(Outcome other, boolean beyondHere, double ofNone) {
        int here = 0;
        int there = 0;
        for (int i = 0; i < paths; i++) {
            if (goesBeyond(i) == beyondHere) {
                here++;
                there += other.goesBeyond(i) ? 1 : 0;
            }
        }
        return here == 0 ? ofNone : (double) there / here;
    }

    double unseenChance() {
        return unseenChance;
    }

    double unseenExcess() {
        return unseenChance * UnseenTrouble.EXCESS_HOURS;
    }

    /** Share of paths beyond any limit for two hours or more, kept off 0 and 1 by half a path. */
    double chanceOnPaths() {
        int hits = 0;
        for (int i : picked) {
            hits += goesBeyond(i) ? 1 : 0;
        }
        return (hits + 0.5) / (paths + 1);
    }

    /** Share of paths beyond any limit now. */
    double beyondNowChance() {
        return (double) Arrays.stream(picked).filter(i -> crossings.excessNow()[i] > 0).count() / paths;
    }

    /** By the paths; or as stated, and what experience does not know. Then the trouble that only deaths tell of. */
    double chance() {
        double known = Double.isNaN(stated) ? chanceOnPaths() : either(stated, chlorineChance());
        return either(known, unseenChance);
    }

    private static double either(double one, double other) {
        return one + (1 - one) * other;
    }

    /** Chlorine is the same on every path; off certainty by half a path as all chances are. */
    private double chlorineChance() {
        return crossings.isChlorineBeyond() ? (paths + 0.5) / (paths + 1) : 0;
    }

    /** Mean hours beyond a limit, each by how far beyond; per fish. */
    double excess(Driver limit) {
        double sum = 0;
        for (int i : picked) {
            sum += crossings.excess(limit, i);
        }
        return sum / paths;
    }

    double excess() {
        double sum = 0;
        for (Driver limit : limits()) {
            sum += excess(limit);
        }
        return sum + unseenExcess();
    }

    /** Share of paths on which a limit is passed at all. */
    double chanceOf(Driver limit) {
        int hits = 0;
        for (int i : picked) {
            hits += crossings.passes(limit, i) ? 1 : 0;
        }
        return (double) hits / paths;
    }

    /** The level, as a share of the limit, that 1 path in 20 reaches or passes. */
    double highPeak(Driver limit) {
        double[] peak = crossings.peak(limit);
        double[] sorted = new double[paths];
        for (int i = 0; i < paths; i++) {
            sorted[i] = peak[picked[i]];
        }
        Arrays.sort(sorted);
        return sorted[(int) (0.95 * paths)];
    }

    OptionalDouble hoursToLimit() {
        return median(crossings.firstHours());
    }

    OptionalDouble hoursToLimit(Driver limit) {
        return median(crossings.firstHours(limit));
    }

    static Driver[] limits() {
        return Crossings.limits();
    }

    private OptionalDouble median(int[] first) {
        int[] sorted = new int[paths];
        for (int i = 0; i < paths; i++) {
            sorted[i] = first[picked[i]];
        }
        Arrays.sort(sorted);
        int middle = sorted[(paths - 1) / 2];
        return middle >= HOURS ? OptionalDouble.empty() : OptionalDouble.of(middle);
    }
}
