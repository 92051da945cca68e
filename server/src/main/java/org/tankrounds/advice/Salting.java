package org.tankrounds.advice;

import java.util.Optional;
import org.tankrounds.belief.TankBelief;
import org.tankrounds.forecast.Deed;
import org.tankrounds.forecast.Driver;
import org.tankrounds.water.Salt;

/** Plain salt, whose chloride keeps nitrite out of the gills (Tomasso 1986). */
final class Salting {

    private static final double TARGET_MG_PER_L = 60;
    /** At least ten times as much as there is nitrite nitrogen, else this (general culture; second-hand). */
    private static final double TARGET_OF_MUCH_NITRITE_MG_PER_L = 100;
    private static final double LEAST_TIMES_NITRITE = 10;
    /** So near the target nobody weighs salt. */
    private static final double NEAR_MG_PER_L = 10;

    private Salting() {
    }

    /** What chloride is brought to. */
    static double targetMgPerL(TankBelief belief) {
        return LEAST_TIMES_NITRITE * belief.nitrite().valueNow() > TARGET_MG_PER_L
                ? TARGET_OF_MUCH_NITRITE_MG_PER_L : TARGET_MG_PER_L;
    }

    /** Empty where there is chloride enough. */
    static Optional<Proposal> against(Driver driver, TankBelief belief) {
        double chloride = belief.chlorideMgPerL();
        double target = targetMgPerL(belief);
        return chloride >= target - NEAR_MG_PER_L ? Optional.empty() : Optional.of(Proposal.of(
                Act.dose(Act.Kind.SALT, driver, litres -> Salt.grams(chloride, target, litres),
                        belief.facts().volumeL(), "Salt.grams"), Deed.salt(target - chloride)));
    }
}
