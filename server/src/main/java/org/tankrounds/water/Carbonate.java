package org.tankrounds.water;

/** Alkalinity, carbon dioxide and baking soda in fresh water. */
public final class Carbonate {

    /** mg NaHCO3 per mg CaCO3 of alkalinity: 2 × 84.007 / 100.087. */
    public static final double BICARBONATE_PER_CACO3 = 1.678673;
    /** mg CaCO3 of alkalinity per milliequivalent. */
    private static final double CACO3_PER_MILLIEQUIVALENT = 50.0435;
    private static final double CO2_MG_PER_MMOL = 44.0095;

    private Carbonate() {
    }

    /**
     * Dissolved carbon dioxide, mg/L, from pH and alkalinity as CaCO3:
     * {@code CO2 = (Alk / 50043.5) · 10^(−pH) / K1 · 44009.5}.
     *
     * <p>Source of K1: Plummer and Busenberg 1982, Geochim. Cosmochim. Acta 46:1011–1040 (from memory). Fresh
     * water below pH 8.5; above it overstates nothing that matters here.
     */
    public static double carbonDioxideMgPerL(
            double ph, double alkalinityMgPerL, double temperatureC) {
        return alkalinityMgPerL / CACO3_PER_MILLIEQUIVALENT
                * StrictMath.pow(10, pK1(temperatureC) - ph) * CO2_MG_PER_MMOL;
    }

    /** The negative logarithm of carbonic acid's first constant. */
    public static double pK1(double temperatureC) {
        double k = temperatureC + 273.15;
        return 356.3094 + 0.06091964 * k - 21834.37 / k - 126.8339 * StrictMath.log10(k)
                + 1684915 / (k * k);
    }

    /** Grams of sodium bicarbonate that raise the alkalinity of a volume by so many mg/L as CaCO3. */
    public static double bicarbonateG(double raiseMgPerL, double volumeL) {
        return raiseMgPerL * BICARBONATE_PER_CACO3 * volumeL / 1000;
    }
}
