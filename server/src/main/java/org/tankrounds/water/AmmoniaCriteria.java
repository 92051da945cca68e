package org.tankrounds.water;

/**
 * US EPA 2013 ambient criteria for ammonia in fresh water, mg/L of total ammonia as N. They protect
 * whole waters, mussels included; they are no aim for a tank and no part of the ranking.
 *
 * <p>Source: EPA 822-R-13-001; notice 78 FR 52192, 22 August 2013. Acute: one-hour mean. Chronic: 30-day
 * rolling mean, no 4-day mean above 2.5 times it. Stated for pH 6.5 to 9 and 0 to 30 °C; beyond, carried on.
 */
public final class AmmoniaCriteria {

    private AmmoniaCriteria() {
    }

    /** Acute criterion where trout or salmon of the genus Oncorhynchus live. */
    public static double acuteWithTrout(double ph, double temperatureC) {
        double trout = 0.275 * below(ph, 7.204) + 39.0 * above(ph, 7.204);
        double mussels = 0.7249 * acuteShape(ph) * 23.12 * warmth(0.036, 20 - temperatureC);
        return Math.min(trout, mussels);
    }

    /** Acute criterion where they do not. */
    public static double acuteWithoutTrout(double ph, double temperatureC) {
        return 0.7249 * acuteShape(ph)
                * Math.min(51.93, 23.12 * warmth(0.036, 20 - temperatureC));
    }

    /** Chronic criterion. */
    public static double chronic(double ph, double temperatureC) {
        double shape = 0.0278 * below(ph, 7.688) + 1.1994 * above(ph, 7.688);
        return 0.8876 * shape * 2.126 * warmth(0.028, 20 - Math.max(temperatureC, 7));
    }

    private static double acuteShape(double ph) {
        return 0.0114 * below(ph, 7.204) + 1.6181 * above(ph, 7.204);
    }

    private static double below(double ph, double pivot) {
        return 1 / (1 + StrictMath.pow(10, pivot - ph));
    }

    private static double above(double ph, double pivot) {
        return 1 / (1 + StrictMath.pow(10, ph - pivot));
    }

    private static double warmth(double perDegree, double degrees) {
        return StrictMath.pow(10, perDegree * degrees);
    }
}
