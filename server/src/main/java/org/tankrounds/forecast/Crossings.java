package org.tankrounds.forecast;

import java.util.Arrays;

/** Where each path passes a limit: for how long, by how far, and when first. How paths count is not known here. */
final class Crossings {

    /** Hours beyond any limit from which the tank counts as having been beyond. */
    private static final int BEYOND_HOURS = 2;
    private static final int HOURS = Forecast.HORIZON_HOURS;
    private static final Driver[] LIMITS = {Driver.TEMPERATURE, Driver.UN_IONISED_AMMONIA,
        Driver.NITRITE, Driver.DISSOLVED_OXYGEN, Driver.PH, Driver.CHLORINE};
    private static final int NEVER = HOURS + 1;

    private final Paths course;
    private final Limits limits;
    private final int paths;
    private final double[][] excess;
    private final int[][] firstHour;
    private final int[] firstAny;
    private final int[] hoursBeyond;
    private final double[] excessNow;
    private int chlorineHours;

    Crossings(Paths course, Limits limits) {
        this.course = course;
        this.limits = limits;
        paths = course.count();
        excess = new double[LIMITS.length][paths];
        firstHour = new int[LIMITS.length][paths];
        for (int[] first : firstHour) {
            Arrays.fill(first, NEVER);
        }
        firstAny = new int[paths];
        Arrays.fill(firstAny, NEVER);
        hoursBeyond = new int[paths];
        hour(0);
        excessNow = sumOfExcess();
        for (int h = 1; h < HOURS; h++) {
            hour(h);
        }
    }

    private double[] sumOfExcess() {
        double[] sum = new double[paths];
        for (double[] ofLimit : excess) {
            for (int i = 0; i < paths; i++) {
                sum[i] += ofLimit[i];
            }
        }
        return sum;
    }

    private void hour(int h) {
        chlorineHours += limits.ofChlorine(course.chlorineMgPerL()[h]) > 1 ? 1 : 0;
        boolean[] beyond = new boolean[paths];
        for (int k = 0; k < LIMITS.length; k++) {
            double[] u = course.u(LIMITS[k], h, limits);
            for (int i = 0; i < paths; i++) {
                if (u[i] > 1) {
                    beyond[i] = true;
                    excess[k][i] += u[i] - 1;
                    firstHour[k][i] = Math.min(firstHour[k][i], h);
                }
            }
        }
        for (int i = 0; i < paths; i++) {
            if (beyond[i]) {
                hoursBeyond[i]++;
                firstAny[i] = Math.min(firstAny[i], h);
            }
        }
    }

    int paths() {
        return paths;
    }

    static Driver[] limits() {
        return LIMITS.clone();
    }

    /** Whether a path is beyond any limit for two hours or more. */
    boolean goesBeyond(int path) {
        return hoursBeyond[path] >= BEYOND_HOURS;
    }

    /** Whether a path passes a limit at all. */
    boolean passes(Driver limit, int path) {
        return firstHour[index(limit)][path] < HOURS;
    }

    /** Hours beyond a limit, each by how far. */
    double excess(Driver limit, int path) {
        return excess[index(limit)][path];
    }

    /** Of each path, how far it is beyond limits now. */
    double[] excessNow() {
        return excessNow;
    }

    /** Of each path, when it first passes any limit; at or after the horizon: never. */
    int[] firstHours() {
        return firstAny;
    }

    int[] firstHours(Driver limit) {
        return firstHour[index(limit)];
    }

    /** When a path that goes beyond a limit first does, and which one: of some passed in the same hour, the worst. */
    Way way(int path) {
        return Way.of(firstAny[path], firstLimit(path));
    }

    private Driver firstLimit(int path) {
        int first = 0;
        for (int k = 1; k < LIMITS.length; k++) {
            int sooner = firstHour[first][path] - firstHour[k][path];
            if (sooner > 0 || sooner == 0 && excess[k][path] > excess[first][path]) {
                first = k;
            }
        }
        return LIMITS[first];
    }

    /** Chlorine is the same on every path. */
    boolean isChlorineBeyond() {
        return chlorineHours >= BEYOND_HOURS;
    }

    /** Of each path, the highest level as a share of the limit. */
    double[] peak(Driver limit) {
        double[] peak = new double[paths];
        for (int h = 0; h < HOURS; h++) {
            double[] u = course.u(limit, h, limits);
            for (int i = 0; i < paths; i++) {
                peak[i] = Math.max(peak[i], u[i]);
            }
        }
        return peak;
    }

    private static int index(Driver limit) {
        for (int k = 0; k < LIMITS.length; k++) {
            if (LIMITS[k] == limit) {
                return k;
            }
        }
        throw new IllegalArgumentException("not a limit: " + limit);
    }
}
