package org.tankrounds.forecast;

import org.tankrounds.fish.Stage;

/**
 * Equally likely courses of a tank's water over the next hours: arrays by hour (0 to 72) and path.
 *
 * @param temperatureC °C
 * @param unIonisedMgPerL un-ionised ammonia, mg/L as NH3
 * @param nitriteMgPerL mg N/L
 * @param oxygenMgPerL mg/L
 * @param ph pH
 * @param chlorineMgPerL by hour, the same on every path
 * @param chlorideMgPerL by hour, the same on every path
 * @param stage by hour
 */
record Paths(double[][] temperatureC, double[][] unIonisedMgPerL, double[][] nitriteMgPerL,
        double[][] oxygenMgPerL, double[][] ph, double[] chlorineMgPerL, double[] chlorideMgPerL, Stage[] stage) {

    int count() {
        return ph[0].length;
    }

    static boolean hasCoursesOf(Driver series) {
        return series.ordinal() < Driver.CHLORINE.ordinal();
    }

    double[][] of(Driver series) {
        return switch (series) {
            case TEMPERATURE -> temperatureC;
            case UN_IONISED_AMMONIA -> unIonisedMgPerL;
            case NITRITE -> nitriteMgPerL;
            case DISSOLVED_OXYGEN -> oxygenMgPerL;
            case PH -> ph;
            default -> throw new IllegalArgumentException("no paths of " + series);
        };
    }

    /** A level as a share of its limit. */
    double u(Driver limit, int h, int path, Limits limits) {
        return switch (limit) {
            case TEMPERATURE -> limits.ofTemperature(stage[h], temperatureC[h][path]);
            case UN_IONISED_AMMONIA -> limits.ofUnIonisedAmmonia(unIonisedMgPerL[h][path]);
            case NITRITE -> limits.ofNitrite(nitriteMgPerL[h][path], chlorideMgPerL[h]);
            case DISSOLVED_OXYGEN -> limits.ofOxygen(stage[h], oxygenMgPerL[h][path]);
            case PH -> limits.ofPh(ph[h][path]);
            case CHLORINE -> limits.ofChlorine(chlorineMgPerL[h]);
            default -> throw new IllegalArgumentException("no limit: " + limit);
        };
    }
}
