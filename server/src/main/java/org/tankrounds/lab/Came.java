package org.tankrounds.lab;

import java.util.Arrays;
import java.util.List;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Limits;

/** What came of the 72 hours after a morning: hours beyond a limit, and fish-hours beyond each. */
public final class Came {

    private static final int BEYOND_HOURS = 2;

    private final double[] exposures = new double[Driver.CHLORINE.ordinal() + 1];
    private int hoursBeyond;

    /** An hour of it. */
    void add(TankWater water) {
        double[] excesses = water.excesses(Limits.DEFAULT);
        boolean isBeyond = false;
        for (int i = 0; i < excesses.length; i++) {
            exposures[i] += excesses[i] * water.alive();
            isBeyond |= excesses[i] > 0;
        }
        hoursBeyond += isBeyond ? 1 : 0;
    }

    boolean isBeyond() {
        return hoursBeyond >= BEYOND_HOURS;
    }

    /** Fish-hours beyond, each by how far. */
    double exposure() {
        return Arrays.stream(exposures).sum();
    }

    /** The limits that this went further beyond than another did. */
    List<Driver> furtherThan(Came other) {
        return Arrays.stream(Driver.values(), 0, exposures.length)
                .filter(limit -> exposures[limit.ordinal()] > other.exposures[limit.ordinal()]).toList();
    }
}
