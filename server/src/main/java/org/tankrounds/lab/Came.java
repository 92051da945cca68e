package org.tankrounds.lab;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Limits;

/** What came of the 72 hours after a morning: hours beyond a limit, and how far beyond each. */
public final class Came {

    private static final int BEYOND_HOURS = 2;
    private static final Driver[] LIMITS = Arrays.copyOf(Driver.values(), Driver.CHLORINE.ordinal() + 1);

    private final double[] exposures = new double[LIMITS.length];
    private final int[] hours = new int[LIMITS.length];
    private final double[] furthest = new double[LIMITS.length];
    private int hoursBeyond;

    /** An hour of it. */
    void add(TankWater water) {
        double[] excesses = water.shares(Limits.DEFAULT).excesses();
        boolean isBeyond = false;
        for (int i = 0; i < excesses.length; i++) {
            exposures[i] += excesses[i] * water.alive();
            hours[i] += excesses[i] > 0 ? 1 : 0;
            furthest[i] = Math.max(furthest[i], excesses[i]);
            isBeyond |= excesses[i] > 0;
        }
        hoursBeyond += isBeyond ? 1 : 0;
    }

    boolean isBeyond() {
        return hoursBeyond >= BEYOND_HOURS;
    }

    /** Beyond one of these limits, whatever else. */
    boolean isBeyondAnyOf(Set<Driver> limits) {
        return limits.stream().anyMatch(limit -> hours[limit.ordinal()] >= BEYOND_HOURS);
    }

    int hoursBeyond() {
        return hoursBeyond;
    }

    /** How far beyond the limit that it went furthest beyond, as a share of it; 0 where within all. */
    double furthest() {
        return Arrays.stream(furthest).max().orElseThrow();
    }

    /** Fish-hours beyond, each by how far. */
    double exposure() {
        return Arrays.stream(exposures).sum();
    }

    /** The limits that this went further beyond than another did, for how long, and up to how many times the limit. */
    List<String> furtherThan(Came other) {
        return IntStream.range(0, LIMITS.length).filter(i -> exposures[i] > other.exposures[i])
                .mapToObj(i -> String.format(Locale.ROOT, "%s %d h for %d h, %.2f for %.2f times", LIMITS[i],
                        hours[i], other.hours[i], 1 + furthest[i], 1 + other.furthest[i])).toList();
    }
}
