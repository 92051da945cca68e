package org.tankrounds.belief;

import org.tankrounds.water.Analyte;

/**
 * What classroom tanks in general show, by days since first feeding (negative before): the level to which a
 * tank drifts in our eyes when nobody reads it. Ammonia rises with the first feed, nitrite weeks later and
 * longer, until the filter is ripe. The figures are the project's choice after the usual course of a filter's
 * start (common practice, no source), tried on simulated seasons.
 */
final class Population {

    /** Temperature that a class without a known set-point holds, °C. */
    static final double HELD_C = 11.5;
    /** Share of saturation of an aerated tank. */
    static final double OXYGEN_SHARE = 0.90;

    private static final double[][] TOTAL_AMMONIA =
            {{-60, 0.05}, {-15, 0.08}, {0, 0.12}, {18, 0.5}, {45, 0.5}, {80, 0.22}, {200, 0.2}};
    private static final double[][] NITRITE =
            {{-60, 0.01}, {0, 0.02}, {12, 0.04}, {35, 0.15}, {55, 0.15}, {90, 0.06}, {200, 0.05}};

    private Population() {
    }

    /** The median of total ammonia or nitrite in mg N/L. */
    static double medianMgPerL(Analyte analyte, double daysFeeding) {
        double[][] course = analyte == Analyte.NITRITE ? NITRITE : TOTAL_AMMONIA;
        if (daysFeeding <= course[0][0]) {
            return course[0][1];
        }
        for (int i = 1; i < course.length; i++) {
            if (daysFeeding < course[i][0]) {
                double share = (daysFeeding - course[i - 1][0]) / (course[i][0] - course[i - 1][0]);
                return course[i - 1][1] + share * (course[i][1] - course[i - 1][1]);
            }
        }
        return course[course.length - 1][1];
    }

    /** The usual pH by the source water's alkalinity in mg/L as CaCO3, NaN for unknown. */
    static double ph(double sourceAlkalinityMgPerL) {
        if (sourceAlkalinityMgPerL < 40) {
            return 7.1;
        }
        return sourceAlkalinityMgPerL > 150 ? 7.7 : 7.4;
    }
}
