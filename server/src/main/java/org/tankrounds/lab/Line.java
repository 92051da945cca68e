package org.tankrounds.lab;

import java.util.List;

/** The straight line in log-odds that fits what came true best (logistic regression on one number). */
final class Line {

    private static final int STEPS = 25;

    private Line() {
    }

    /** Intercept and slope, by Newton's method. */
    static double[] through(double[] x, List<Lesson> lessons) {
        double intercept = 0;
        double slope = 0;
        for (int step = 0; step < STEPS; step++) {
            double g0 = 0;
            double g1 = 0;
            double h00 = 1e-6;
            double h01 = 0;
            double h11 = 1e-6;
            for (int i = 0; i < x.length; i++) {
                double chance = 1 / (1 + StrictMath.exp(-intercept - slope * x[i]));
                double miss = (lessons.get(i).beyond() ? 1 : 0) - chance;
                double weight = chance * (1 - chance);
                g0 += miss;
                g1 += miss * x[i];
                h00 += weight;
                h01 += weight * x[i];
                h11 += weight * x[i] * x[i];
            }
            double determinant = h00 * h11 - h01 * h01;
            intercept += (h11 * g0 - h01 * g1) / determinant;
            slope += (h00 * g1 - h01 * g0) / determinant;
        }
        return new double[] {Rounded.toFigures(intercept, 4), Rounded.toFigures(slope, 4)};
    }
}
