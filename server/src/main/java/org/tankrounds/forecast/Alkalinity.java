package org.tankrounds.forecast;

import java.time.Duration;
import org.tankrounds.belief.TankBelief;

/** How much alkalinity a tank has left, mg/L as CaCO3. */
final class Alkalinity {

    /** Taken for the source water where nobody has said (common practice, no source). */
    static final double USUAL_MG_PER_L = 80;
    private static final Duration READING_COUNTS = Duration.ofDays(14);
    private static final double LEAST_MG_PER_L = 3;
    /** Water holds no more than it came with, but for baking soda. */
    private static final double MOST_OF_SOURCE = 1.3;

    private Alkalinity() {
    }

    /**
     * As read lately; else at a pH below that of tanks with the same source in general, less in the same measure:
     * {@code pH = pK1 + log10(HCO3/CO2)} with carbon dioxide alike.
     */
    static double held(TankBelief belief, double ph) {
        double source = belief.facts().sourceAlkalinityMgPerL().orElse(USUAL_MG_PER_L);
        double usualPh = belief.ph().population().applyAsDouble(belief.asOf());
        double byPh = source * Math.min(MOST_OF_SOURCE, StrictMath.pow(10, ph - usualPh));
        return Math.max(LEAST_MG_PER_L, belief.newestAlkalinity()
                .filter(read -> read.at().isAfter(belief.asOf().minus(READING_COUNTS)))
                .map(read -> read.value()).orElse(byPh));
    }
}
