package org.tankrounds.advice;

import org.tankrounds.belief.TankBelief;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.LookAhead;
import org.tankrounds.forecast.MassDeaths;

/** Oxygen so short that air comes before all else: fish without it die before ammonia harms them. */
final class Breath {

    /** Severe impairment of production of salmonids, early stages and others, mg/L (US EPA 1986, from memory). */
    private static final double SHORT_FOR_EARLY_STAGES_MG_PER_L = 7;
    private static final double SHORT_MG_PER_L = 4;

    private Breath() {
    }

    /** By what is held of the tank: far below the limit, or below it where the fish need more, or get less of it. */
    static boolean isShort(LookAhead ahead) {
        Stage stage = ahead.forecast().stage();
        double oxygenMgPerL = ahead.belief().oxygenMgPerLNow();
        return oxygenMgPerL <= (stage.isBeforeFirstFeeding() ? SHORT_FOR_EARLY_STAGES_MG_PER_L : SHORT_MG_PER_L)
                || ahead.limits().ofOxygen(stage, oxygenMgPerL) > 1 && isNeeded(ahead, stage);
    }

    /** In warm water fish breathe more, blood that nitrite made brown carries less, and some have died already. */
    private static boolean isNeeded(LookAhead ahead, Stage stage) {
        TankBelief belief = ahead.belief();
        return ahead.limits().ofTemperature(stage, belief.temperature().medianC()) > 1
                || ahead.limits().ofNitrite(belief.nitrite().valueNow(), belief.chlorideMgPerL()) > 1
                || MassDeaths.in(ahead.forecast());
    }
}
