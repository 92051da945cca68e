package org.tankrounds.lab.evaluation;

import java.util.stream.DoubleStream;

/**
 * A points score as wards have it: each sign 0 to 3 by its distance from normal, added up, and one sign at 3
 * is urgent by itself (after the Royal College of Physicians 2017, National Early Warning Score; signs and
 * bands are this project's choice, common practice, no source).
 */
final class Points {

    private static final double[] SHARES_OF_LIMIT = {0.5, 0.75, 1};
    /** Water that could not hold more is at 0.55 to 0.75 of its limit. */
    private static final double[] SHARES_OF_OXYGEN_LIMIT = {0.8, 0.9, 1};
    private static final double[] DEAD_OF_THREE_DAYS = {1, 2, 4};
    private static final double[] SILENT_HOURS = {48, 96, 168};
    private static final double MOST_OF_ONE = 3;
    private static final double URGENT = 5;

    private Points() {
    }

    static double of(NewestReadings newest) {
        return added(
                points(newest.temperatureU(), SHARES_OF_LIMIT),
                points(newest.unIonisedU(), SHARES_OF_LIMIT),
                points(newest.nitriteU(), SHARES_OF_LIMIT),
                points(newest.oxygenU(), SHARES_OF_OXYGEN_LIMIT),
                points(newest.phU(), SHARES_OF_LIMIT),
                points(newest.dead(), DEAD_OF_THREE_DAYS),
                points(newest.silentHours(), SILENT_HOURS));
    }

    /** How many steps a value has reached. */
    private static double points(double value, double[] steps) {
        return DoubleStream.of(steps).filter(step -> value >= step).count();
    }

    private static double added(double... points) {
        double sum = DoubleStream.of(points).sum();
        boolean oneIsUrgent = DoubleStream.of(points).anyMatch(each -> each == MOST_OF_ONE);
        return oneIsUrgent ? Math.max(sum, URGENT) : sum;
    }
}
