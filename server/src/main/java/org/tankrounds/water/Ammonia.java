package org.tankrounds.water;

/**
 * Un-ionised ammonia from total ammonia, pH and temperature.
 *
 * <p>{@code pKa = 0.09018 + 2729.92 / K}; {@code f = 1 / (1 + 10^(pKa − pH))}; NH3 as NH3 is NH3-N times 1.215884.
 *
 * <p>Source: Emerson, Russo, Lund and Thurston 1975, J. Fish. Res. Board Can. 32:2379–2383. Valid from 0 to
 * 50 °C and pH 6 to 10 in fresh water; beyond, the formula is carried on.
 */
public final class Ammonia {

    /** mg NH3 per mg N. */
    public static final double NH3_PER_N = 1 / Units.N_PER_NH3;

    private static final double LN_10 = 2.302585092994046;

    private Ammonia() {
    }

    /** The negative logarithm of the ammonium ion's acid constant. */
    public static double pKa(double temperatureC) {
        return 0.09018 + 2729.92 / (temperatureC + 273.15);
    }

    /** The share of total ammonia that is un-ionised, 0 to 1. */
    public static double unIonisedFraction(double ph, double temperatureC) {
        return 1 / (1 + StrictMath.exp(LN_10 * (pKa(temperatureC) - ph)));
    }

    /** Un-ionised ammonia in mg/L as NH3, from total ammonia in mg/L as N. */
    public static double unIonisedMgPerL(double totalMgNPerL, double ph, double temperatureC) {
        return totalMgNPerL * unIonisedFraction(ph, temperatureC) * NH3_PER_N;
    }

    /** Total ammonia in mg/L as N at which un-ionised ammonia reaches a limit in mg/L as NH3. */
    public static double totalMgNPerLAt(double unIonisedMgPerL, double ph, double temperatureC) {
        return unIonisedMgPerL / NH3_PER_N / unIonisedFraction(ph, temperatureC);
    }
}
