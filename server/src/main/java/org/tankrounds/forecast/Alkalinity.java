package org.tankrounds.forecast;

import java.time.Duration;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankBelief;
import org.tankrounds.water.Carbonate;

/** How much alkalinity a tank has left, mg/L as CaCO3. */
public final class Alkalinity {

    /** Taken for the source water where nobody has said (common practice, no source). */
    static final double USUAL_MG_PER_L = 80;
    /** Carbon dioxide that breathing and aeration settle at (the project's choice). */
    private static final double CARBON_DIOXIDE_MG_PER_L = 4;
    /** So long a reading stands for what is held (the project's choice). */
    public static final Duration READING_COUNTS = Duration.ofDays(14);
    private static final double LEAST_MG_PER_L = 3;
    /** Water holds no more than it came with, but for baking soda. */
    private static final double MOST_OF_SOURCE = 1.3;

    private Alkalinity() {
    }

    /**
     * As read lately; else what a pH and {@value #CARBON_DIOXIDE_MG_PER_L} mg/L of carbon dioxide go with
     * ({@link Carbonate}), up to a little more than the source brings.
     */
    static double held(TankBelief belief, double ph) {
        double perMgPerL = Carbonate.carbonDioxideMgPerL(ph, 1, belief.temperature().medianC());
        double most = MOST_OF_SOURCE * belief.facts().sourceAlkalinityMgPerL().orElse(USUAL_MG_PER_L);
        return Math.max(LEAST_MG_PER_L, belief.newestAlkalinity()
                .filter(read -> read.at().isAfter(belief.asOf().minus(READING_COUNTS)))
                .map(Observation::value).orElse(Math.min(most, CARBON_DIOXIDE_MG_PER_L / perMgPerL)));
    }
}
