package org.tankrounds.transport;

/**
 * What temperature and oxygen of a stream say of fish that are to go into it: below {@link Tempering#FRY_BELOW_C}, and
 * {@link #LEAST_MG_PER_L} or more (common practice, no source; the permit governs). That the water does not warm fast,
 * and that one can stand beside it, somebody has to look at.
 */
public enum ReleaseWater {
    FIT, WARM, AIRLESS, WARM_AND_AIRLESS;

    /** Oxygen that a stream has at least, mg/L (common practice, no source; the permit governs). */
    public static final double LEAST_MG_PER_L = 7;

    /**
     * @param temperatureC of the stream, °C
     * @param oxygenMgPerL in it, mg/L; 0 or more
     * @throws IllegalArgumentException of what is no number, and of less oxygen than none
     */
    public static ReleaseWater of(double temperatureC, double oxygenMgPerL) {
        if (!Double.isFinite(temperatureC) || !Double.isFinite(oxygenMgPerL) || oxygenMgPerL < 0) {
            throw new IllegalArgumentException("no water has " + temperatureC + " °C and " + oxygenMgPerL + " mg/L");
        }
        boolean cool = temperatureC < Tempering.FRY_BELOW_C;
        boolean airy = oxygenMgPerL >= LEAST_MG_PER_L;
        if (cool) {
            return airy ? FIT : AIRLESS;
        }
        return airy ? WARM : WARM_AND_AIRLESS;
    }
}
