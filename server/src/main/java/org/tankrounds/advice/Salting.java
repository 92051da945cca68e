package org.tankrounds.advice;

import java.util.Optional;
import java.util.OptionalDouble;
import org.tankrounds.belief.TankBelief;
import org.tankrounds.forecast.Deed;
import org.tankrounds.forecast.Driver;
import org.tankrounds.water.Salt;

/** Plain salt, whose chloride keeps nitrite out of the gills (Tomasso 1986). */
final class Salting {

    /** What it is brought to. */
    static final double TARGET_MG_PER_L = 60;
    private static final double ENOUGH_MG_PER_L = 50;

    private Salting() {
    }

    /** Empty where there is chloride enough. */
    static Optional<Proposal> against(Driver driver, TankBelief belief) {
        double chloride = belief.chlorideMgPerL();
        return chloride >= ENOUGH_MG_PER_L ? Optional.empty() : Optional.of(
                Proposal.of(act(driver, chloride, belief.facts().volumeL()), Deed.salt(TARGET_MG_PER_L - chloride)));
    }

    private static Act act(Driver driver, double chlorideMgPerL, OptionalDouble volumeL) {
        return volumeL.isEmpty() ? Act.plain(Act.Kind.SALT, driver) : Act.amount(Act.Kind.SALT, driver,
                Salt.grams(chlorideMgPerL, TARGET_MG_PER_L, volumeL.getAsDouble()), "g", "Salt.grams");
    }
}
