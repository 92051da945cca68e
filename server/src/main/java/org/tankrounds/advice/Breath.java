package org.tankrounds.advice;

import java.time.Duration;
import java.util.List;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankBelief;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.LookAhead;
import org.tankrounds.forecast.MassDeaths;

/** Oxygen so short that air comes before all else: fish without it die before ammonia harms them. */
final class Breath {

    /** Severe impairment of production of salmonids, early stages and others, mg/L (US EPA 1986, from memory). */
    private static final double SHORT_FOR_EARLY_STAGES_MG_PER_L = 7;
    private static final double SHORT_MG_PER_L = 4;
    /** Moderate impairment, 5 mg/L (the same), as near as it is read. */
    private static final double SHORT_FOR_THE_SICK_MG_PER_L = 5.2;
    private static final Duration LATELY = Duration.ofDays(1);

    private Breath() {
    }

    /** As it is held or as it was read and believed within a day, whichever is less. */
    private static double oxygenMgPerL(LookAhead ahead) {
        TankBelief belief = ahead.belief();
        return belief.oxygenShare().newest()
                .filter(read -> read.at().isAfter(belief.asOf().minus(LATELY))).map(Observation::value)
                .map(read -> Math.min(read, belief.oxygenMgPerLNow())).orElseGet(belief::oxygenMgPerLNow);
    }

    static boolean isShort(LookAhead ahead) {
        return isSeverelyShort(ahead) || isShortForTheSick(ahead);
    }

    private static boolean isSeverelyShort(LookAhead ahead) {
        return oxygenMgPerL(ahead) <= (ahead.forecast().stage().isBeforeFirstFeeding()
                ? SHORT_FOR_EARLY_STAGES_MG_PER_L : SHORT_MG_PER_L);
    }

    /** In warm water fish breathe more, blood that nitrite made brown carries less, and some have died already. */
    private static boolean isShortForTheSick(LookAhead ahead) {
        TankBelief belief = ahead.belief();
        Stage stage = ahead.forecast().stage();
        return !stage.isBeforeFirstFeeding() && oxygenMgPerL(ahead) <= SHORT_FOR_THE_SICK_MG_PER_L
                && (ahead.limits().ofTemperature(stage, belief.temperature().medianC()) > 1
                || ahead.limits().ofNitrite(belief.nitrite().valueNow(), belief.chlorideMgPerL()) > 1
                || MassDeaths.in(ahead.forecast()));
    }

    /** Where it is short for the sick only, air goes if with all that is done beside it the tank would come to harm. */
    static List<Tried> bearable(LookAhead ahead, List<Tried> acts) {
        boolean goes = !isSeverelyShort(ahead) && isShortForTheSick(ahead)
                && ahead.effect(Proposal.deedOf(acts.stream().map(Tried::proposal)), ahead.forecast().driver()).harms();
        return goes ? acts.stream().filter(tried -> !tried.proposal().isForBreath()).toList() : acts;
    }
}
