package org.tankrounds.forecast;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.tankrounds.belief.Draws;
import org.tankrounds.belief.TankBelief;
import org.tankrounds.water.Ammonia;

/**
 * Some of a tank's courses, evenly from those that count, to be gone through again with a deed.
 *
 * @param which of the belief's states each began with
 * @param totalMgPerL total ammonia by hour and course, mg N/L
 * @param alkalinityMgPerL that each course begins with, as CaCO3
 */
record Courses(TankBelief belief, Paths paths, int[] which, double[][] totalMgPerL,
        double[] alkalinityMgPerL) {

    /** So that there is always a share to speak of. */
    private static final double LEAST_MG_PER_L = 1e-6;

    private static final int ALKALINITY_STREAM = 80;

    static Courses of(TankBelief belief, Paths all, int[] picked, int count) {
        int[] which = new int[Math.min(count, picked.length)];
        Arrays.setAll(which, i -> picked[(int) ((long) i * picked.length / which.length)]);
        Paths some = new Paths(gathered(all.temperatureC(), which), gathered(all.unIonisedMgPerL(), which),
                gathered(all.nitriteMgPerL(), which), gathered(all.oxygenMgPerL(), which),
                gathered(all.ph(), which), all.chlorineMgPerL(), all.chlorideMgPerL(), all.stage());
        return new Courses(belief, some, which, total(some), alkalinity(belief, some));
    }

    private static double[] alkalinity(TankBelief belief, Paths some) {
        double[] share = Draws.spread(some.count(), ALKALINITY_STREAM);
        double[] held = new double[share.length];
        Arrays.setAll(held, k -> Alkalinity.held(belief, some.ph()[0][k], share[k]));
        return held;
    }

    int count() {
        return which.length;
    }

    /** Un-ionised ammonia as NH3 per total ammonia as N. */
    static double unIonisedPerTotal(double ph, double temperatureC) {
        return Ammonia.NH3_PER_N * ForwardModel.unIonisedShare(ph - Ammonia.pKa(temperatureC));
    }

    static OptionalDouble medianLevel(Paths paths, Driver series, int hour) {
        if (!Paths.hasCoursesOf(series)) {
            return OptionalDouble.empty();
        }
        double[] sorted = paths.of(series)[hour].clone();
        Arrays.sort(sorted);
        return OptionalDouble.of(Fans.quantile(sorted, 0.5));
    }

    private static double[][] total(Paths paths) {
        double[][] total = new double[paths.ph().length][paths.count()];
        for (int h = 0; h < total.length; h++) {
            for (int k = 0; k < total[h].length; k++) {
                double share = unIonisedPerTotal(paths.ph()[h][k], paths.temperatureC()[h][k]);
                total[h][k] = Math.max(LEAST_MG_PER_L, paths.unIonisedMgPerL()[h][k] / share);
            }
        }
        return total;
    }

    private static double[][] gathered(double[][] values, int[] which) {
        double[][] some = new double[values.length][which.length];
        for (int h = 0; h < values.length; h++) {
            for (int k = 0; k < which.length; k++) {
                some[h][k] = values[h][which[k]];
            }
        }
        return some;
    }
}
