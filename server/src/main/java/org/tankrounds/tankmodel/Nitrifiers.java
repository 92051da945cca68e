package org.tankrounds.tankmodel;

/**
 * One of the two guilds of bacteria that make a filter: how fast they grow, on what, and how fast they go.
 *
 * <p>{@code r = (µ·φ(T)/Y) · X · S/(K+S) · O2/(KO+O2)} mg N/L/d; {@code dX/dt = Y·r − b·1.029^(T−20)·X};
 * {@code φ(T) = exp(Ea·(T−20) / (R·(T+273.15)·293.15))}.
 *
 * <p>Source: ranges of the constants, Sin et al. 2008, Water Sci. Technol. 58(6):1155–1171; Ea, Vannecke and Volcke
 * 2015, Biotechnol. Bioeng.; 1.029 is the usual activated-sludge value. {@link #AMMONIA_OXIDISERS} and {@link
 * #NITRITE_OXIDISERS} hold this project's choice within those ranges. Meant for 2 to 25 °C; beyond, carried on.
 *
 * @param growthPerDay µ, largest growth at 20 °C, 1/d
 * @param halfSubstrateMgPerL K, mg N/L at which they work at half speed
 * @param halfOxygenMgPerL KO, mg O2/L at which they work at half speed
 * @param decayPerDay b, decay at 20 °C, 1/d
 * @param yieldCodPerN Y, mg of biomass (as COD) per mg N oxidised
 * @param activationJPerMol Ea
 */
public record Nitrifiers(
        double growthPerDay,
        double halfSubstrateMgPerL,
        double halfOxygenMgPerL,
        double decayPerDay,
        double yieldCodPerN,
        double activationJPerMol) {

    /** Ammonia to nitrite. Ranges: µ 0.5–2.1, K 0.14–1, KO 0.1–1.45, b 0.07–0.3, Y 0.11–0.21. */
    public static final Nitrifiers AMMONIA_OXIDISERS = new Nitrifiers(0.90, 0.50, 0.70, 0.10, 0.15, 68_000);

    /** Nitrite to nitrate. Ranges: µ 0.4–1.05, K 0.1–3, KO 0.3–1.5, b 0.08–0.2, Y 0.03–0.09. */
    public static final Nitrifiers NITRITE_OXIDISERS = new Nitrifiers(0.70, 0.50, 1.50, 0.12, 0.05, 44_000);

    private static final double GAS_CONSTANT = 8.314;
    private static final double REFERENCE_K = 293.15;
    private static final double LN_DECAY_PER_KELVIN = StrictMath.log(1.029);

    public Nitrifiers {
        positive("growthPerDay", growthPerDay);
        positive("halfSubstrateMgPerL", halfSubstrateMgPerL);
        positive("halfOxygenMgPerL", halfOxygenMgPerL);
        positive("decayPerDay", decayPerDay);
        positive("yieldCodPerN", yieldCodPerN);
        positive("activationJPerMol", activationJPerMol);
    }

    /** φ: the speed at a temperature as a share of that at 20 °C. */
    public double warmth(double temperatureC) {
        return StrictMath.exp(activationJPerMol * (temperatureC - 20)
                / (GAS_CONSTANT * (temperatureC + 273.15) * REFERENCE_K));
    }

    /** Nitrogen that a biomass oxidises, mg N/L/d. Nothing is oxidised where the substrate is used up. */
    public double oxidisedPerDay(
            double biomassCodPerL, double substrateMgPerL, double oxygenMgPerL, double temperatureC) {
        double substrate = Math.max(0, substrateMgPerL);
        double oxygen = Math.max(0, oxygenMgPerL);
        return growthPerDay * warmth(temperatureC) / yieldCodPerN * biomassCodPerL
                * substrate / (halfSubstrateMgPerL + substrate)
                * oxygen / (halfOxygenMgPerL + oxygen);
    }

    /** What the biomass gains by that and loses by decay, mg COD/L/d. */
    public double gainedPerDay(double biomassCodPerL, double oxidisedPerDay, double temperatureC) {
        return yieldCodPerN * oxidisedPerDay - lostPerDay(temperatureC) * biomassCodPerL;
    }

    /** The share of the biomass that decays in a day at a temperature, 1/d. */
    public double lostPerDay(double temperatureC) {
        return decayPerDay * StrictMath.exp(LN_DECAY_PER_KELVIN * (temperatureC - 20));
    }

    /**
     * The substrate at which growth just makes up for decay: what a ripe filter leaves in the water whatever the
     * load, mg N/L. Infinite where they cannot live.
     */
    public double residualMgPerL(double oxygenMgPerL, double temperatureC) {
        double growth = growthPerDay * warmth(temperatureC) * oxygenMgPerL / (halfOxygenMgPerL + oxygenMgPerL);
        double decay = lostPerDay(temperatureC);
        return growth > decay ? halfSubstrateMgPerL * decay / (growth - decay) : Double.POSITIVE_INFINITY;
    }

    private static void positive(String name, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must be above 0, was " + value);
        }
    }
}
