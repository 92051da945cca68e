package org.tankrounds.fish;

import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * The water's temperature from reading to reading, and on from the last: straight lines between, and ahead what it
 * had of late. Further than a day and a half from any reading it may have been {@value #UNKNOWN_BY_C} °C warmer or
 * colder (the project's choice), so that a gap of up to three days is drawn through and a longer one widens every
 * window that rests on it.
 */
public final class WarmthPath {
    static final double UNKNOWN_BY_C = 1.5;
    /** What is warmer counts as this where fish grow, °C: growth falls off there. */
    private static final double WARMEST_FOR_GROWTH_C = 16;
    private static final Duration KNOWN_FOR = Duration.ofHours(36);
    private static final Duration LATELY = Duration.ofDays(7);
    private static final Duration STEP = Duration.ofHours(6);
    private static final double STEP_DAYS = 0.25;

    /** Which side of what is not known of the water. */
    public enum Side {
        COLD(-1), MIDDLE(0), WARM(1);

        private final int lean;

        Side(int lean) {
            this.lean = lean;
        }
    }

    private final List<DatedTemperature> trace;
    private final double aheadC;
    private final double leanC;

    /**
     * @param trace oldest first
     * @param usualC taken where nothing was read
     */
    public WarmthPath(List<DatedTemperature> trace, double usualC, Side side) {
        this.trace = trace;
        this.aheadC = trace.isEmpty() ? usualC : lately(trace);
        this.leanC = side.lean * UNKNOWN_BY_C;
    }

    /** °C. */
    public double at(Instant moment) {
        int next = firstAfter(moment);
        boolean isKnown = next > 0 && isNear(trace.get(next - 1), moment)
                || next < trace.size() && isNear(trace.get(next), moment);
        return between(next, moment) + (isKnown ? 0 : leanC);
    }

    /** °C-days that fish grow by from one moment to another, by steps of six hours; 0 where the second is first. */
    public double growthDegreeDaysC(Instant from, Instant until) {
        double degreeDays = 0;
        for (Instant at = from; at.isBefore(until); at = at.plus(STEP)) {
            Instant end = at.plus(STEP).isAfter(until) ? until : at.plus(STEP);
            degreeDays += growthC(at.plus(STEP.dividedBy(2))) * Duration.between(at, end).toSeconds() / 86_400.0;
        }
        return degreeDays;
    }

    /** When so many °C-days to grow by have come together; {@code until} where they have not by then. */
    Instant whenGrownBy(double degreeDaysC, Instant from, Instant until) {
        double left = degreeDaysC;
        Instant at = from;
        while (left > 0 && at.isBefore(until)) {
            left -= growthC(at.plus(STEP.dividedBy(2))) * STEP_DAYS;
            at = at.plus(STEP);
        }
        return at;
    }

    private double growthC(Instant moment) {
        return Math.max(0, Math.min(WARMEST_FOR_GROWTH_C, at(moment)));
    }

    private double between(int next, Instant moment) {
        if (next == trace.size()) {
            return aheadC;
        }
        DatedTemperature after = trace.get(next);
        if (next == 0) {
            return after.temperatureC();
        }
        DatedTemperature before = trace.get(next - 1);
        double share = seconds(before.at(), moment) / seconds(before.at(), after.at());
        return before.temperatureC() + share * (after.temperatureC() - before.temperatureC());
    }

    private int firstAfter(Instant moment) {
        int low = 0;
        int high = trace.size();
        while (low < high) {
            int middle = (low + high) / 2;
            if (trace.get(middle).at().isAfter(moment)) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    private static boolean isNear(DatedTemperature read, Instant moment) {
        return Duration.between(read.at(), moment).abs().compareTo(KNOWN_FOR) <= 0;
    }

    /** The mean of the last week that was read. */
    private static double lately(List<DatedTemperature> trace) {
        Instant since = trace.get(trace.size() - 1).at().minus(LATELY);
        return trace.stream().filter(read -> !read.at().isBefore(since))
                .mapToDouble(DatedTemperature::temperatureC).average().orElseThrow();
    }

    private static double seconds(Instant from, Instant to) {
        return to.getEpochSecond() - from.getEpochSecond();
    }
}
