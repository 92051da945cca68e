package org.tankrounds.forecast;

import java.time.Duration;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankBelief;
import org.tankrounds.water.Carbonate;

/** How much alkalinity a tank has left, mg/L as CaCO3. */
public final class Alkalinity {

    /** Taken for the source water where nobody has said (common practice, no source). */
    static final double USUAL_MG_PER_L = 80;
    /** So long a reading stands for what is held at most (the project's choice). */
    public static final Duration READING_COUNTS = Duration.ofDays(14);
    /** So long it is the least too: nitrifiers use up half of a soft water's in as much again. */
    private static final Duration READING_HOLDS = Duration.ofDays(2);
    /** Carbon dioxide that breathing and aeration settle at lies between this and four times as much. */
    private static final double LEAST_CARBON_DIOXIDE_MG_PER_L = 2;
    private static final double CARBON_DIOXIDE_TIMES = 4;
    private static final double LEAST_MG_PER_L = 1;
    /** Half a drop of a test that counts drops, 1 °dKH each. */
    private static final double USUAL_HALF_STEP_MG_PER_L = 9;
    /** Water holds no more than it came with, but for baking soda. */
    private static final double MOST_OF_SOURCE = 1.3;

    private Alkalinity() {
    }

    /**
     * What goes with a pH and so much carbon dioxide ({@link Carbonate}), up to a little more than the source
     * brings and to what was read lately, which nitrifiers have lessened since; a fresh reading is also the
     * least, but for a single step of the test: that is the first that it shows, of however little.
     *
     * @param share of the span of carbon dioxide that tanks settle at, 0 to 1, in equal ratios
     */
    static double held(TankBelief belief, double ph, double share) {
        double dioxide = LEAST_CARBON_DIOXIDE_MG_PER_L * StrictMath.pow(CARBON_DIOXIDE_TIMES, share);
        double byPh = dioxide / Carbonate.carbonDioxideMgPerL(ph, 1, belief.temperature().medianC());
        double source = belief.facts().sourceAlkalinityMgPerL().orElse(USUAL_MG_PER_L);
        double held = Math.min(MOST_OF_SOURCE * source, byPh);
        return Math.max(LEAST_MG_PER_L, belief.newestAlkalinity()
                .filter(read -> isWithin(READING_COUNTS, read, belief))
                .map(read -> within(read, held, isWithin(READING_HOLDS, read, belief))).orElse(held));
    }

    private static double within(Observation read, double held, boolean isFresh) {
        double half = read.halfStep() > 0 ? read.halfStep() : USUAL_HALF_STEP_MG_PER_L;
        double most = Math.min(held, read.value() + half);
        return isFresh && read.value() > 2 * half ? Math.max(most, read.value() - half) : most;
    }

    private static boolean isWithin(Duration span, Observation read, TankBelief belief) {
        return read.at().isAfter(belief.asOf().minus(span));
    }
}
