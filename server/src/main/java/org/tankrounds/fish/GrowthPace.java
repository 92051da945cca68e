package org.tankrounds.fish;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * How fast the fish of a tank grow: thermal growth coefficients of {@link Growth}, %.
 *
 * <p>Where they were measured twice, or once well after they began to feed, they go on as they went, a fifth slower or
 * faster; where not, at anything that crowded cool classroom tanks show (below 0.10: common practice, no source).
 *
 * @param slow, usual and fast in this order, above 0
 * @param own whether their own measurements say so
 */
public record GrowthPace(double slow, double usual, double fast, boolean own) {

    public static final GrowthPace OF_CLASSROOMS =
            new GrowthPace(0.03, Growth.CLASSROOM_TGC_PERCENT, 0.10, false);
    private static final double SPREAD = 0.2;
    /** Slower or faster, and a length or a weight was mistaken: farms have 0.13 to 0.20. */
    private static final double SLOWEST = 0.01;
    private static final double FASTEST = 0.25;
    /** Sooner, how a hand laid the ruler is more than what the fish grew (the project's choice). */
    private static final Duration APART = Duration.ofDays(14);

    /** What one fish weighed, g. */
    public record Weighed(Instant at, double weightG) {}

    /**
     * @param weighed in any order, and the fry at its first feeding among them
     * @param degreeDaysC °C-days that the lot had at a moment
     */
    public static GrowthPace of(List<Weighed> weighed, ToDoubleFunction<Instant> degreeDaysC) {
        List<Weighed> inTime = weighed.stream().sorted(Comparator.comparing(Weighed::at)).toList();
        if (inTime.size() < 2) {
            return OF_CLASSROOMS;
        }
        Weighed last = inTime.get(inTime.size() - 1);
        return inTime.stream().filter(before -> !before.at().isAfter(last.at().minus(APART)))
                .reduce((one, later) -> later)
                .map(before -> between(before, last, degreeDaysC)).orElse(OF_CLASSROOMS);
    }

    private static GrowthPace between(Weighed from, Weighed to, ToDoubleFunction<Instant> degreeDaysC) {
        double warmth = degreeDaysC.applyAsDouble(to.at()) - degreeDaysC.applyAsDouble(from.at());
        double percent = warmth > 0
                ? 100 * (StrictMath.cbrt(to.weightG()) - StrictMath.cbrt(from.weightG())) / warmth : 0;
        return percent < SLOWEST || percent > FASTEST ? OF_CLASSROOMS
                : new GrowthPace(percent * (1 - SPREAD), percent, percent * (1 + SPREAD), true);
    }
}
