package org.tankrounds.eggday;

import java.time.Duration;
import java.time.LocalTime;
import java.util.Comparator;
import org.tankrounds.transport.Ice;

/** How long a run is on the road, and the ice that it takes: all of it common practice, no source. */
final class Drive {
    /** Beside the eggs, °C. */
    static final double HELD_C = 8;
    /** Around the cooler, in a heated car or a hallway, °C. */
    static final double OUTSIDE_C = 20;
    private static final double UNKNOWN_H = 5;
    /** What comes after the last eggs were expected. */
    private static final double AFTER_LAST_H = 1;
    private static final double LONGEST_H = 24;
    /** A box that one person carries. */
    private static final double SURFACE_M2 = 0.9;
    private static final double FOAM_MM = 25;
    /** For a lid that is opened at every stop. */
    private static final double OPENED = 2;

    private Drive() {}

    /** From the supplier to an hour after the last stop. */
    static double hours(KnownRun known) {
        LocalTime start = known.run().details().startsAt();
        return known.stops().stream().flatMap(stop -> stop.plannedFor().stream()).max(Comparator.naturalOrder())
                .filter(last -> last.isAfter(start))
                .map(last -> Math.min(LONGEST_H, Duration.between(start, last).toMinutes() / 60.0 + AFTER_LAST_H))
                .orElse(UNKNOWN_H);
    }

    static double iceKg(double hours) {
        return OPENED * Ice.toHoldKg(Ice.foamBoxLossWPerK(SURFACE_M2, FOAM_MM), OUTSIDE_C, HELD_C, hours);
    }
}
