package org.tankrounds.forecast;

import org.tankrounds.belief.TankBelief;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.tankmodel.Wastes;

/**
 * How much ammonia nitrogen a tank's fish give off, taken where feed is not weighed: they grow as {@code
 * W^(1/3) = W0^(1/3) + TGC/100 · ΣT} (Iwama and Tautz 1981, Can. J. Fish. Aquat. Sci. 38:649–656, in its
 * usual modern form) and eat a share of their weight. Off by a factor of two either way; it only says how
 * fast a level comes back.
 */
final class NitrogenSupply {

    private static final double SWIM_UP_G = 0.15;
    /** Crowded cool classroom tanks run below a farm's 0.13–0.20 (common practice, no source). */
    private static final double TGC_PERCENT = 0.05;
    /** A release tank is fed 1 to 3 % (common practice, no source). */
    private static final double RATION = 0.012;
    private static final double PROTEIN = 0.48;
    /** What the yolk gives off, g N per egg and day (the project's choice). */
    private static final double YOLK_G_PER_EGG_DAY = 1.5e-5;

    private NitrogenSupply() {
    }

    /** mg N/L/d. */
    static double mgPerLPerDay(TankBelief belief) {
        double volumeL = belief.facts().volumeL().orElse(TankFacts.USUAL_VOLUME_L);
        double perFish = feeds(belief)
                ? Wastes.nitrogenGPerDay(RATION * fishG(belief), PROTEIN) : YOLK_G_PER_EGG_DAY;
        return 1000 * perFish * belief.fishAlive() / volumeL;
    }

    static boolean feeds(TankBelief belief) {
        return !belief.development().stageAt(belief.asOf()).isBeforeFirstFeeding();
    }

    private static double fishG(TankBelief belief) {
        double degreeDays = belief.temperature().medianC()
                * Math.max(0, belief.development().daysFeedingAt(belief.asOf()));
        double root = StrictMath.cbrt(SWIM_UP_G) + TGC_PERCENT / 100 * degreeDays;
        return root * root * root;
    }
}
