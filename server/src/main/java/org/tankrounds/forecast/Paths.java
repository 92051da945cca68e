package org.tankrounds.forecast;

import java.util.Arrays;
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

    /** The levels of an hour, by path, as shares of their limit. */
    double[] u(Driver limit, int h, Limits limits) {
        double[] u = new double[count()];
        switch (limit) {
            case TEMPERATURE -> ofTemperature(u, h, limits);
            case UN_IONISED_AMMONIA -> ofUnIonisedAmmonia(u, h, limits);
            case NITRITE -> ofNitrite(u, h, limits);
            case DISSOLVED_OXYGEN -> ofOxygen(u, h, limits);
            case PH -> ofPh(u, h, limits);
            default -> Arrays.fill(u, u(limit, h, 0, limits));
        }
        return u;
    }

    private void ofTemperature(double[] u, int h, Limits limits) {
        double[] level = temperatureC[h];
        for (int i = 0; i < u.length; i++) {
            u[i] = limits.ofTemperature(stage[h], level[i]);
        }
    }

    private void ofUnIonisedAmmonia(double[] u, int h, Limits limits) {
        double[] level = unIonisedMgPerL[h];
        for (int i = 0; i < u.length; i++) {
            u[i] = limits.ofUnIonisedAmmonia(level[i]);
        }
    }

    private void ofNitrite(double[] u, int h, Limits limits) {
        double[] level = nitriteMgPerL[h];
        double limit = limits.nitriteMgPerL(chlorideMgPerL[h]);
        for (int i = 0; i < u.length; i++) {
            u[i] = level[i] / limit;
        }
    }

    private void ofOxygen(double[] u, int h, Limits limits) {
        double[] level = oxygenMgPerL[h];
        for (int i = 0; i < u.length; i++) {
            u[i] = limits.ofOxygen(stage[h], level[i]);
        }
    }

    private void ofPh(double[] u, int h, Limits limits) {
        double[] level = ph[h];
        for (int i = 0; i < u.length; i++) {
            u[i] = limits.ofPh(level[i]);
        }
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
