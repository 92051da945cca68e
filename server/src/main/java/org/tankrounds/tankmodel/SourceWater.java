package org.tankrounds.tankmodel;

/**
 * What comes in at a water change, conditioned (no chlorine left).
 *
 * @param temperatureC °C
 * @param ammoniaMgPerL total ammonia, mg N/L (chloramine leaves some)
 * @param nitriteMgPerL mg N/L
 * @param nitrateMgPerL mg N/L
 * @param alkalinityMgPerL mg/L as CaCO3
 */
public record SourceWater(
        double temperatureC,
        double ammoniaMgPerL,
        double nitriteMgPerL,
        double nitrateMgPerL,
        double alkalinityMgPerL) {

    /** Without nitrogen. */
    public static SourceWater of(double temperatureC, double alkalinityMgPerL) {
        return new SourceWater(temperatureC, 0, 0, 0, alkalinityMgPerL);
    }
}
