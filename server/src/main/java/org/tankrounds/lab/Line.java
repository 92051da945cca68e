package org.tankrounds.lab;

import java.util.List;

/** Straight lines on one number, fitted by Newton's method: intercept and slope. */
final class Line {

    private static final int STEPS = 40;

    private Line() {
    }

    /** The log-odds of what came true (logistic regression). */
    static double[] ofChance(double[] x, List<Lesson> lessons) {
        return fitted(x, 0, (i, at) -> {
            double chance = 1 / (1 + StrictMath.exp(-at));
            return new double[] {(lessons.get(i).beyond() ? 1 : 0) - chance, chance * (1 - chance)};
        });
    }

    /** The logarithm of the mean harm (gamma regression, in which each lesson counts alike, however great its harm). */
    static double[] ofMeanHarm(double[] x, List<Lesson> lessons) {
        double mean = lessons.stream().mapToDouble(Lesson::harm).average().orElse(1);
        return fitted(x, StrictMath.log(mean), (i, at) -> {
            double times = lessons.get(i).harm() / StrictMath.exp(at);
            return new double[] {times - 1, 1};
        });
    }

    /** Least squares. */
    static double[] ofNumbers(double[] x, double[] y) {
        return fitted(x, 0, (i, at) -> new double[] {y[i] - at, 1});
    }

    /** How far a lesson is missed at a height of the line, and how much it weighs. */
    private interface Miss {
        double[] at(int lesson, double height);
    }

    private static double[] fitted(double[] x, double start, Miss miss) {
        double intercept = start;
        double slope = 0;
        for (int step = 0; step < STEPS; step++) {
            double g0 = 0;
            double g1 = 0;
            double h00 = 1e-6;
            double h01 = 0;
            double h11 = 1e-6;
            for (int i = 0; i < x.length; i++) {
                double[] at = miss.at(i, intercept + slope * x[i]);
                g0 += at[0];
                g1 += at[0] * x[i];
                h00 += at[1];
                h01 += at[1] * x[i];
                h11 += at[1] * x[i] * x[i];
            }
            double determinant = h00 * h11 - h01 * h01;
            intercept += (h11 * g0 - h01 * g1) / determinant;
            slope += (h00 * g1 - h01 * g0) / determinant;
        }
        return new double[] {Rounded.toFigures(intercept, 4), Rounded.toFigures(slope, 4)};
    }
}
