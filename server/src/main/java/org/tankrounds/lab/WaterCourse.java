package org.tankrounds.lab;

import java.util.Map;
import org.tankrounds.tankmodel.Chiller;
import org.tankrounds.tankmodel.Conditions;
import org.tankrounds.tankmodel.Nitrifiers;
import org.tankrounds.tankmodel.TankModel;
import org.tankrounds.tankmodel.TankParameters;
import org.tankrounds.tankmodel.TankState;

/** Where filter, fish and heat take the water of a tank, by the mechanics of its world. */
final class WaterCourse {

    /** Yields are 3 to 1, so is the room that the guilds take. */
    private static final double NITRITE_ROOM_SHARE = 1 / 3.0;

    private final Map<Trait, Double> traits;
    private final Mechanics mechanics;
    private final Lump lump;
    private TankModel model;

    WaterCourse(Map<Trait, Double> traits, Mechanics mechanics, Chiller chiller) {
        this.traits = traits;
        this.mechanics = mechanics;
        lump = new Lump(of(Trait.SET_POINT_C));
        setChiller(chiller);
    }

    WaterCourse(WaterCourse other) {
        traits = other.traits;
        mechanics = other.mechanics;
        lump = new Lump(other.lump.temperatureC());
        model = other.model;
    }

    private double of(Trait trait) {
        return traits.get(trait);
    }

    void setChiller(Chiller chiller) {
        double speed = of(Trait.FILTER_SPEED);
        model = new TankModel(new TankParameters(of(Trait.VOLUME_L), of(Trait.LOSS_W_PER_K), of(Trait.PUMP_W), chiller,
                paced(Nitrifiers.AMMONIA_OXIDISERS, speed),
                paced(Nitrifiers.NITRITE_OXIDISERS, speed * of(Trait.NITRITE_SPEED)),
                of(Trait.HALF_ALKALINITY_MG_PER_L), of(Trait.CARBON_DIOXIDE_MG_PER_L)));
    }

    private Nitrifiers paced(Nitrifiers usual, double speed) {
        return new Nitrifiers(usual.growthPerDay() * speed, of(Trait.HALF_SUBSTRATE_MG_PER_L),
                usual.halfOxygenMgPerL(), usual.decayPerDay(), usual.yieldCodPerN(), usual.activationJPerMol());
    }

    /** Some time later; not longer than conditions hold. */
    TankState after(TankState before, Conditions held, double days) {
        TankState after = roomed(mechanics.kinetics() == Mechanics.Kinetics.GROWING ? model.after(before, held, days)
                : ripening().after(before, held, days));
        return mechanics.heat() == Mechanics.Heat.TWO_LUMPS ? lump.besides(after) : after;
    }

    private RipeningFilter ripening() {
        return new RipeningFilter(model, mechanics.kinetics() == Mechanics.Kinetics.CAPPED,
                of(Trait.FILTER_ROOM_COD_PER_L), NITRITE_ROOM_SHARE * of(Trait.FILTER_ROOM_COD_PER_L));
    }

    /** No more bacteria than the filter has room for. */
    private TankState roomed(TankState state) {
        double room = of(Trait.FILTER_ROOM_COD_PER_L);
        return new TankState(state.temperatureC(), state.ammoniaMgPerL(), state.nitriteMgPerL(),
                state.nitrateMgPerL(), state.alkalinityMgPerL(), Math.min(room, state.ammoniaOxidisersCodPerL()),
                Math.min(NITRITE_ROOM_SHARE * room, state.nitriteOxidisersCodPerL()));
    }
}
