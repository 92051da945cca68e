package org.tankrounds.fish;

import org.tankrounds.water.Range;

/**
 * What trout of a length weigh: {@code W = K · L³ / 100 000}, W in g, L in mm.
 *
 * <p>K is the condition factor: trout have 1.0 to 1.15 (Piper et al. 1982, Fish Hatchery Management; the classes of
 * Leitritz and Lewis 1976 imply 1.09 to 1.16). Fed well, a fish has more; starved, or measured in the wrong unit, it
 * falls out of {@link #LIKELY_CONDITION}.
 */
public final class LengthWeight {

    /** Of well-kept trout. */
    public static final double USUAL_CONDITION = 1.1;
    /** Outside, a length or a weight was mistaken (common practice, no source). */
    public static final Range LIKELY_CONDITION = new Range(0.7, 1.6);
    /** One inch, mm. */
    public static final double MM_PER_INCH = 25.4;
    /** From hatch to far beyond a classroom, mm. */
    public static final Range LENGTH_MM = new Range(10, 400);

    private static final double MM3_PER_G = 1e5;

    private LengthWeight() {
    }

    /**
     * g of one fish.
     *
     * @throws IllegalArgumentException outside {@link #LENGTH_MM}
     */
    public static double weightG(double lengthMm, double condition) {
        return condition * cubeOf(lengthMm) / MM3_PER_G;
    }

    /**
     * mm of one fish.
     *
     * @param weightG above 0
     */
    public static double lengthMm(double weightG, double condition) {
        if (!(weightG > 0)) {
            throw new IllegalArgumentException("weight must be above 0 g, was " + weightG);
        }
        return StrictMath.cbrt(weightG * MM3_PER_G / condition);
    }

    /**
     * The condition factor of a fish that was measured and weighed.
     *
     * @throws IllegalArgumentException outside {@link #LENGTH_MM}
     */
    public static double condition(double lengthMm, double weightG) {
        return weightG * MM3_PER_G / cubeOf(lengthMm);
    }

    private static double cubeOf(double lengthMm) {
        if (!LENGTH_MM.holds(lengthMm)) {
            throw new IllegalArgumentException("length must be " + LENGTH_MM.min() + " to " + LENGTH_MM.max()
                    + " mm, was " + lengthMm);
        }
        return lengthMm * lengthMm * lengthMm;
    }
}
