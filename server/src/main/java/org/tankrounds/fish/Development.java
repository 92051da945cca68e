package org.tankrounds.fish;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far a lot of eggs has come: thermal units, hatch and first feeding.
 *
 * <p>First feeding is at {@value #FIRST_FEEDING_C_DAYS} °C-days from fertilisation unless the class recorded it;
 * where the eggs' history is unknown they had {@value #UNKNOWN_HISTORY_C_DAYS} on arrival (the project's rule).
 * Hatch follows {@link HatchModel}, summed over the temperatures; the delivered units count as if at 10 °C.
 *
 * @param thermalUnitsC °C-days from fertilisation to the moment asked about
 * @param hatchAt when half have hatched, past or expected
 * @param firstFeedingAt when they begin to feed, past or expected
 * @param asOf the moment asked about
 */
public record Development(
        double thermalUnitsC, Instant hatchAt, Instant firstFeedingAt, Instant asOf) {

    /** °C-days from fertilisation to swim-up. */
    public static final double FIRST_FEEDING_C_DAYS = 480;
    /** °C-days on arrival where nobody knows. */
    public static final double UNKNOWN_HISTORY_C_DAYS = 180;
    /** °C-days on the yolk at least, from hatch to first feeding (commercial egg guidance: 10 to 14 days). */
    static final double YOLK_C_DAYS = 100;
    private static final double DELIVERED_AT_C = 10;
    private static final double STEP_H = 6;
    private static final Duration STEP = Duration.ofHours((long) STEP_H);
    private static final int LONGEST_STEPS = 4 * 500;

    /**
     * Follows a lot from its arrival.
     *
     * @param trace temperatures, oldest first; straight lines between, the ends held
     * @param usualC taken where there is no temperature at all
     * @param seen the class's own record, which wins; fry that were seen to hatch do not feed at once
     */
    public static Development of(Instant receivedAt, OptionalDouble thermalUnitsOnArrivalC,
            List<DatedTemperature> trace, double usualC, SeenStages seen, Instant asOf) {
        Count count = new Count(receivedAt, thermalUnitsOnArrivalC.orElse(UNKNOWN_HISTORY_C_DAYS),
                new TraceReader(trace, usualC), seen.hatchedAt(), asOf);
        for (int i = 0; i < LONGEST_STEPS && !count.isDone(); i++) {
            count.step();
        }
        Instant feedingAt = seen.firstFeedingAt().orElse(orElse(count.feedingAt, count.at));
        Instant hatchAt = seen.hatchedAt().orElse(orElse(count.hatchAt, count.at));
        return new Development(count.unitsAsOf(), hatchAt.isAfter(feedingAt) ? feedingAt : hatchAt, feedingAt, asOf);
    }

    private static Instant orElse(Instant reached, Instant end) {
        return reached == null ? end : reached;
    }

    /** The stage at a moment. */
    public Stage stageAt(Instant moment) {
        if (!moment.isBefore(firstFeedingAt)) {
            return Stage.FEEDING;
        }
        return moment.isBefore(hatchAt) ? Stage.EGG : Stage.SAC_FRY;
    }

    /** Days from first feeding to a moment; negative before. */
    public double daysFeedingAt(Instant moment) {
        return hoursBetween(firstFeedingAt, moment) / 24;
    }

    private static double hoursBetween(Instant from, Instant to) {
        return (to.getEpochSecond() - from.getEpochSecond()) / 3600.0;
    }

    /** Adds up thermal units and the way to hatch, step by step. */
    private static final class Count {
        private final TraceReader reader;
        private final Optional<Instant> hatchSeenAt;
        private final Instant asOf;
        /** °C-days at which they begin to feed. */
        private double feedingFrom;
        private Instant at;
        private double units;
        private double hatch;
        private double unitsAsOf;
        private Instant hatchAt;
        private Instant feedingAt;

        Count(Instant receivedAt, double units, TraceReader reader, Optional<Instant> hatchSeenAt, Instant asOf) {
            this.reader = reader;
            this.hatchSeenAt = hatchSeenAt;
            this.asOf = asOf;
            feedingFrom = FIRST_FEEDING_C_DAYS;
            this.at = receivedAt;
            this.units = units;
            hatch = units / DELIVERED_AT_C * HatchModel.hatchSharePerDay(DELIVERED_AT_C);
            unitsAsOf = asOf.isBefore(receivedAt) ? units : Double.NaN;
            hatchAt = hatch >= 1 ? receivedAt : null;
            feedingAt = units >= FIRST_FEEDING_C_DAYS ? receivedAt : null;
        }

        boolean isDone() {
            return hatchAt != null && feedingAt != null && !Double.isNaN(unitsAsOf)
                    && hatchSeenAt.filter(seen -> !seen.isBefore(at)).isEmpty();
        }

        double unitsAsOf() {
            return Double.isNaN(unitsAsOf) ? units : unitsAsOf;
        }

        void step() {
            double temperatureC = Math.max(0, reader.at(at.plus(STEP.dividedBy(2))));
            double unitsStep = temperatureC * STEP_H / 24;
            double hatchStep = hatchAt == null ? HatchModel.hatchSharePerDay(temperatureC) * STEP_H / 24 : 0;
            Instant next = at.plus(STEP);
            if (Double.isNaN(unitsAsOf) && asOf.isBefore(next)) {
                unitsAsOf = units + unitsStep * hoursBetween(at, asOf) / STEP_H;
            }
            hatchAt = reached(hatchAt, hatch, hatchStep, 1);
            if (hatchSeenAt.filter(seen -> !seen.isBefore(at) && seen.isBefore(next)).isPresent()) {
                feedingFrom = Math.max(FIRST_FEEDING_C_DAYS, units + YOLK_C_DAYS);
                feedingAt = null;
            }
            feedingAt = reached(feedingAt, units, unitsStep, feedingFrom);
            units += unitsStep;
            hatch += hatchStep;
            at = next;
        }

        private Instant reached(Instant already, double level, double step, double aim) {
            if (already != null || level + step < aim) {
                return already;
            }
            return at.plusSeconds(Math.round((aim - level) / step * STEP_H * 3600));
        }
    }

    /** Reads a trace at rising times. */
    private static final class TraceReader {
        private final List<DatedTemperature> trace;
        private final double usualC;
        private int next;

        TraceReader(List<DatedTemperature> trace, double usualC) {
            this.trace = trace;
            this.usualC = usualC;
        }

        double at(Instant moment) {
            while (next < trace.size() && !trace.get(next).at().isAfter(moment)) {
                next++;
            }
            if (trace.isEmpty()) {
                return usualC;
            }
            if (next == 0) {
                return trace.get(0).temperatureC();
            }
            DatedTemperature before = trace.get(next - 1);
            if (next == trace.size()) {
                return before.temperatureC();
            }
            DatedTemperature after = trace.get(next);
            double share = hoursBetween(before.at(), moment) / hoursBetween(before.at(), after.at());
            return before.temperatureC() + share * (after.temperatureC() - before.temperatureC());
        }
    }
}
