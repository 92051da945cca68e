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
    /** Of most trout, as {@link #build} rounds it: 1.0 to 1.15 (Piper et al. 1982), 1.16 by Leitritz and Lewis 1976. */
    public static final Range USUAL_CONDITIONS = new Range(1.0, 1.16);
    /** A mean below is a reason to look at the feed, and to measure again (common practice, no source). */
    public static final double THIN_BELOW = 0.9;
    /** So is a mean above (common practice, no source). */
    public static final double ROUND_ABOVE = 1.3;
    /** One inch, mm. */
    public static final double MM_PER_INCH = 25.4;
    /** From hatch to far beyond a classroom, mm. */
    public static final Range LENGTH_MM = new Range(10, 400);

    /** What a condition factor says of the fish. */
    public enum Build { THIN, NEAR_USUAL, USUAL, ROUND }

    private static final double MM3_PER_G = 1e5;
    /** The international pound, by definition. */
    private static final double G_PER_POUND = 453.59237;
    private static final double HUNDREDTHS = 100;

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

    /**
     * What a condition factor says, in hundredths as it is told. Of fish that feed: yolk weighs too. The factor of a
     * sample is that of its mean length and mean weight; where the fish differ it comes out too high, by three times
     * the square of the lengths' relative spread: 3 % where lengths spread by a tenth.
     *
     * @param condition above 0, no unit
     * @throws IllegalArgumentException of any other
     */
    public static Build build(double condition) {
        if (!(condition > 0) || Double.isInfinite(condition)) {
            throw new IllegalArgumentException("condition must be above 0, was " + condition);
        }
        double told = Math.round(condition * HUNDREDTHS) / HUNDREDTHS;
        if (told < THIN_BELOW) {
            return Build.THIN;
        }
        if (told > ROUND_ABOVE) {
            return Build.ROUND;
        }
        return USUAL_CONDITIONS.holds(told) ? Build.USUAL : Build.NEAR_USUAL;
    }

    /**
     * How many fish weigh a pound, as hatcheries' papers count them.
     *
     * @param weightG of one fish, g; above 0
     * @throws IllegalArgumentException of any other
     */
    public static double fishPerPound(double weightG) {
        if (!(weightG > 0) || Double.isInfinite(weightG)) {
            throw new IllegalArgumentException("weight must be above 0 g, was " + weightG);
        }
        return G_PER_POUND / weightG;
    }

    private static double cubeOf(double lengthMm) {
        if (!LENGTH_MM.holds(lengthMm)) {
            throw new IllegalArgumentException("length must be " + LENGTH_MM.min() + " to " + LENGTH_MM.max()
                    + " mm, was " + lengthMm);
        }
        return lengthMm * lengthMm * lengthMm;
    }
}
