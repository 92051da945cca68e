package org.tankrounds.advice;

import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.LookAhead;

/** Oxygen so short that air comes before all else: fish without it die before ammonia harms them. */
final class Breath {

    /** Severe impairment of production of salmonids, early stages and others, mg/L (US EPA 1986, from memory). */
    private static final double SHORT_FOR_EARLY_STAGES_MG_PER_L = 7;
    private static final double SHORT_MG_PER_L = 4;

    private Breath() {
    }

    /** By what is held of the tank. */
    static boolean isShort(LookAhead ahead) {
        Stage stage = ahead.forecast().stage();
        return ahead.belief().oxygenMgPerLNow()
                <= (stage.isBeforeFirstFeeding() ? SHORT_FOR_EARLY_STAGES_MG_PER_L : SHORT_MG_PER_L);
    }
}
