package org.tankrounds.fish;

/**
 * How trout grow by the warmth they had: {@code W^(1/3) = W0^(1/3) + TGC/100 · ΣT}, W in g, ΣT in °C-days.
 *
 * <p>Source: Iwama and Tautz 1981, Can. J. Fish. Aquat. Sci. 38:649–656, in its usual modern form with the exponent
 * 1/3. Holds from about 4 to 16 °C; warmer, growth falls off and this says too much.
 */
public final class Growth {

    /** A fry at swim-up, g (common practice, no source). */
    public static final double SWIM_UP_G = 0.15;
    /** Thermal growth coefficient: crowded cool classroom tanks run below a farm's 0.13–0.20 (common practice). */
    public static final double CLASSROOM_TGC_PERCENT = 0.05;

    private Growth() {
    }

    /**
     * g of one fish.
     *
     * @param startG above 0
     * @param degreeDaysC °C-days since it weighed that, 0 or more
     */
    public static double weightG(double startG, double tgcPercent, double degreeDaysC) {
        double root = StrictMath.cbrt(startG) + tgcPercent / 100 * degreeDaysC;
        return root * root * root;
    }

    /**
     * °C-days until a fish weighs so much; 0 where it does already.
     *
     * @param startG above 0
     * @param tgcPercent above 0
     */
    public static double degreeDaysC(double startG, double aimG, double tgcPercent) {
        return Math.max(0, (StrictMath.cbrt(aimG) - StrictMath.cbrt(startG)) * 100 / tgcPercent);
    }
}
