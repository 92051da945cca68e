package org.tankrounds.forecast;

import org.tankrounds.belief.TankBelief;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.fish.Growth;
import org.tankrounds.tankmodel.Wastes;

/**
 * How much ammonia nitrogen a tank's fish give off, taken where feed is not weighed: they grow by warmth
 * ({@link Growth}) and eat a share of their weight. Off by a factor of two either way; it only says how fast a level
 * comes back.
 */
final class NitrogenSupply {

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
        return Growth.weightG(Growth.SWIM_UP_G, Growth.CLASSROOM_TGC_PERCENT, degreeDays);
    }
}
