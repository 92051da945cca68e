package org.tankrounds.water;

/** Residual chlorine and what neutralises it. */
public final class Chlorine {

    /**
     * mg of sodium thiosulfate pentahydrate per mg Cl2, by
     * 2 S2O3²⁻ + Cl2 → S4O6²⁻ + 2 Cl⁻ (the "7 to 1" of practice).
     */
    public static final double THIOSULFATE_PER_CL2 = 7.000371;

    private Chlorine() {
    }

    /** Grams of thiosulfate pentahydrate for a volume with so much total residual chlorine. */
    public static double thiosulfateG(double chlorineMgPerL, double volumeL) {
        return chlorineMgPerL * THIOSULFATE_PER_CL2 * volumeL / 1000;
    }
}
