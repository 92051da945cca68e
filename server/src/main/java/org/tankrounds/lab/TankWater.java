package org.tankrounds.lab;

import java.util.Map;
import java.util.stream.DoubleStream;
import org.tankrounds.fish.Development;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Limits;
import org.tankrounds.tankmodel.Conditions;
import org.tankrounds.tankmodel.Nitrifiers;
import org.tankrounds.tankmodel.SourceWater;
import org.tankrounds.tankmodel.TankModel;
import org.tankrounds.tankmodel.TankParameters;
import org.tankrounds.tankmodel.TankState;
import org.tankrounds.tankmodel.Wastes;
import org.tankrounds.water.Ammonia;
import org.tankrounds.water.Carbonate;
import org.tankrounds.water.Chlorine;
import org.tankrounds.water.HeatBalance;
import org.tankrounds.water.OxygenSaturation;
import org.tankrounds.water.Salt;

/** The water of one tank and what lives in it, hour by hour; things break on their own, people do the rest. */
final class TankWater {

    private static final double YOLK_NITROGEN_G_PER_EGG_DAY = 1.5e-5;
    private static final double SWIM_UP_G = 0.15;
    /** Feed becomes waste with this time constant, d. */
    private static final double DIGESTION_DAYS = 0.75;
    private static final double CHLORINE_DAYS = 20 / 24.0;
    private static final double HOUR = 1 / 24.0;
    private static final double ILLNESS_SHARE_PER_DAY = 0.03;
    private static final double AIR_OF_ANOTHER = 0.8;
    /** Yields are 3 to 1, so is the room that the guilds take. */
    private static final double NITRITE_ROOM_SHARE = 1 / 3.0;

    private final Map<Trait, Double> traits;
    private final Mechanics mechanics;
    private final Luck luck;
    private final Chilling chilling;
    private final PhCourse phCourse;
    private final Lump lump;
    private final SourceWater tap;
    private final double chlorideTakenMgPerL;
    private TankModel model;
    private TankState state;
    private double air = 1;
    /** Chloride from salt, above what the source brings. */
    private double saltedMgPerL;
    private double wastePoolG;
    private double wasteMgPerLDay;
    private double chlorineMgPerL;
    private double drift;
    private double excessOfDay;
    private int illDays;
    private double weightRoot = StrictMath.cbrt(SWIM_UP_G);
    private double thermalUnitsC;
    private int alive;

    /** @param chlorideTakenMgPerL what the nitrite limit goes by: 5 where nobody knows */
    TankWater(Map<Trait, Double> traits, Mechanics mechanics, double chlorideTakenMgPerL, Luck luck) {
        this.traits = traits;
        this.mechanics = mechanics;
        this.luck = luck;
        this.chlorideTakenMgPerL = chlorideTakenMgPerL;
        chilling = new Chilling(traits, mechanics.thermostat(), luck);
        phCourse = new PhCourse(mechanics.acidity(),
                of(Trait.CARBON_DIOXIDE_MG_PER_L), of(Trait.CARBON_DIOXIDE_PER_WASTE));
        lump = new Lump(of(Trait.SET_POINT_C));
        double alkalinity = of(Trait.ALKALINITY_MG_PER_L);
        tap = new SourceWater(of(Trait.TAP_C), of(Trait.TAP_AMMONIA_MG_PER_L), 0, 0, alkalinity);
        double seed = of(Trait.SEED_COD_PER_L);
        state = TankState.fresh(of(Trait.SET_POINT_C), alkalinity, seed, seed * of(Trait.NITRITE_SEED_SHARE));
        thermalUnitsC = of(Trait.THERMAL_UNITS_C);
        alive = eggs();
        model = model();
    }

    /** The same water, with other luck. */
    TankWater(TankWater other, Luck luck) {
        this.luck = luck;
        traits = other.traits;
        mechanics = other.mechanics;
        chilling = new Chilling(other.chilling, luck);
        phCourse = new PhCourse(other.phCourse);
        lump = new Lump(other.lump.temperatureC());
        tap = other.tap;
        chlorideTakenMgPerL = other.chlorideTakenMgPerL;
        model = other.model;
        state = other.state;
        air = other.air;
        saltedMgPerL = other.saltedMgPerL;
        wastePoolG = other.wastePoolG;
        wasteMgPerLDay = other.wasteMgPerLDay;
        chlorineMgPerL = other.chlorineMgPerL;
        drift = other.drift;
        excessOfDay = other.excessOfDay;
        illDays = other.illDays;
        weightRoot = other.weightRoot;
        thermalUnitsC = other.thermalUnitsC;
        alive = other.alive;
    }

    double of(Trait trait) {
        return traits.get(trait);
    }

    int eggs() {
        return (int) of(Trait.EGGS);
    }

    private TankModel model() {
        double speed = of(Trait.FILTER_SPEED);
        return new TankModel(new TankParameters(of(Trait.VOLUME_L), of(Trait.LOSS_W_PER_K), of(Trait.PUMP_W),
                chilling.chiller(), paced(Nitrifiers.AMMONIA_OXIDISERS, speed),
                paced(Nitrifiers.NITRITE_OXIDISERS, speed * of(Trait.NITRITE_SPEED)),
                of(Trait.HALF_ALKALINITY_MG_PER_L), of(Trait.CARBON_DIOXIDE_MG_PER_L)));
    }

    private Nitrifiers paced(Nitrifiers usual, double speed) {
        return new Nitrifiers(usual.growthPerDay() * speed, of(Trait.HALF_SUBSTRATE_MG_PER_L),
                usual.halfOxygenMgPerL(), usual.decayPerDay(), usual.yieldCodPerN(), usual.activationJPerMol());
    }

    /** One hour on. */
    void pass(int hour, SchoolCalendar calendar) {
        breakThings();
        double wasteG = wastePoolG / DIGESTION_DAYS + YOLK_NITROGEN_G_PER_EGG_DAY * (feeds() ? 0 : alive);
        wastePoolG *= 1 - HOUR / DIGESTION_DAYS;
        wasteMgPerLDay = 1000 * wasteG / of(Trait.VOLUME_L);
        carry(new Conditions(wasteG, oxygenMgPerL(), roomC(hour, calendar),
                chilling.condition(state.temperatureC())));
        phCourse.pass(calendar.hourOfDay(hour), luck);
        chlorineMgPerL *= 1 - HOUR / CHLORINE_DAYS;
        thermalUnitsC += Math.max(0, state.temperatureC()) * HOUR;
        if (feeds()) {
            weightRoot += of(Trait.GROWTH) * Math.max(0, Math.min(17, state.temperatureC())) * HOUR;
        }
        excessOfDay += excess(Limits.DEFAULT) * HOUR;
    }

    private void carry(Conditions held) {
        state = mechanics.kinetics() == Mechanics.Kinetics.GROWING ? model.after(state, held, HOUR)
                : new RipeningFilter(model, mechanics.kinetics() == Mechanics.Kinetics.CAPPED,
                        of(Trait.FILTER_ROOM_COD_PER_L), NITRITE_ROOM_SHARE * of(Trait.FILTER_ROOM_COD_PER_L))
                        .after(state, held, HOUR);
        fillRoom();
        state = mechanics.heat() == Mechanics.Heat.TWO_LUMPS ? lump.besides(state) : state;
    }

    private void breakThings() {
        if (chilling.wears()) {
            model = model();
        }
        if (luck.about("air").happens(of(Trait.AIR_FAILS_PER_DAY) * HOUR)) {
            air = luck.between(0.35, 0.85);
        }
        if (luck.about("filter").happens(of(Trait.FILTER_HURT_PER_DAY) * HOUR)) {
            state = state.filterSetBack(luck.between(0.05, 0.6));
        }
    }

    private double roomC(int hour, SchoolCalendar calendar) {
        int clock = calendar.hourOfDay(hour);
        boolean unheated = clock < 6 || clock >= 18 || calendar.isWeekend(hour);
        drift += of(Trait.ROOM_WANDERS_K) * luck.about("room").normal() - 0.02 * drift;
        return of(Trait.ROOM_C) + drift + of(Trait.SPRING_K) * calendar.spring(hour)
                + of(Trait.ROOM_BY_DAY_K) * StrictMath.sin((clock - 9) / 24.0 * 2 * Math.PI)
                - (unheated ? of(Trait.SET_BACK_K) : 0);
    }

    private void fillRoom() {
        double room = of(Trait.FILTER_ROOM_COD_PER_L);
        state = new TankState(state.temperatureC(), state.ammoniaMgPerL(), state.nitriteMgPerL(),
                state.nitrateMgPerL(), state.alkalinityMgPerL(), Math.min(room, state.ammoniaOxidisersCodPerL()),
                Math.min(NITRITE_ROOM_SHARE * room, state.nitriteOxidisersCodPerL()));
    }

    /** At midnight: who has died. More die in bad water, and now and then many at once of something else. */
    int deaths() {
        illDays = luck.about("illness").happens(of(Trait.ILLNESS_PER_DAY))
                ? luck.between(2, 8) : Math.max(0, illDays - 1);
        double share = of(Trait.USUAL_DEATHS) * luck.about("deaths").between(0.3, 1.7)
                + of(Trait.EXCESS_DEATHS) * Math.min(4, excessOfDay)
                + (illDays > 0 ? ILLNESS_SHARE_PER_DAY * luck.uniform() : 0);
        excessOfDay = 0;
        int dead = luck.count(alive, Math.min(0.5, share));
        alive -= dead;
        return dead;
    }

    /** Feed given now, as a share of what was meant. @return grams */
    double feed(double times) {
        if (!feeds()) {
            return 0;
        }
        double grams = times * of(Trait.RATION) * alive * fishG();
        wastePoolG += Wastes.nitrogenGPerDay(grams, of(Trait.PROTEIN));
        return grams;
    }

    void change(double share) {
        exchange(share, tap);
        if (luck.about("chlorine").happens(of(Trait.CHLORINE_FORGOTTEN))) {
            chlorineMgPerL += share * chlorineOfTapMgPerL(luck);
        }
    }

    /** The usual change, of water that nobody treated. */
    void changeUntreated(Luck by) {
        exchange(of(Trait.CHANGE_SHARE), tap);
        chlorineMgPerL += of(Trait.CHANGE_SHARE) * chlorineOfTapMgPerL(by);
    }

    private static double chlorineOfTapMgPerL(Luck by) {
        return by.between(0.3, 1.5);
    }

    double chlorineMgPerL() {
        return chlorineMgPerL;
    }

    /** Water from the tap, treated and brought to the tank's temperature. */
    void changeTempered(double share) {
        exchange(share, new SourceWater(
                state.temperatureC(), tap.ammoniaMgPerL(), 0, 0, tap.alkalinityMgPerL()));
    }

    private void exchange(double share, SourceWater fresh) {
        state = state.changed(share, fresh);
        chlorineMgPerL *= 1 - share;
        saltedMgPerL *= 1 - share;
    }

    void salt(double grams) {
        saltedMgPerL += 1000 * grams / Salt.NACL_PER_CL / of(Trait.VOLUME_L);
    }

    void thiosulfate(double grams) {
        chlorineMgPerL = Math.max(0,
                chlorineMgPerL - 1000 * grams / Chlorine.THIOSULFATE_PER_CL2 / of(Trait.VOLUME_L));
    }

    void bakingSoda(double grams) {
        buffer(1000 * grams / Carbonate.BICARBONATE_PER_CACO3 / of(Trait.VOLUME_L));
    }

    /** Ice goes in while the water is warmer than it is to be held. @return kg melted */
    double ice(double holdC, double mostKg) {
        double kg = Math.min(mostKg, HeatBalance.iceToCoolKg(
                of(Trait.VOLUME_L), Math.max(0, state.temperatureC() - holdC), holdC));
        state = state.withTemperatureC(
                state.temperatureC() - kg / HeatBalance.iceToCoolKg(of(Trait.VOLUME_L), 1, holdC));
        return kg;
    }

    /** A second stone, which does a little less beside the first. */
    void moreAir() {
        air += AIR_OF_ANOTHER;
    }

    /** The stone clogs. @param left of the air, 0 to 1 */
    void clogAir(double left) {
        air = left;
    }

    /** Other water over the same filter. */
    void dissolve(double ammoniaMgPerL, double nitriteMgPerL, double alkalinityMgPerL) {
        state = new TankState(state.temperatureC(), ammoniaMgPerL, nitriteMgPerL, state.nitrateMgPerL(),
                alkalinityMgPerL, state.ammoniaOxidisersCodPerL(), state.nitriteOxidisersCodPerL());
    }

    void setChillerGoing(double mostC) {
        chilling.setGoing(mostC);
        model = model();
    }

    void buffer(double raiseMgPerL) {
        state = state.buffered(raiseMgPerL);
    }

    /** Somebody sees to chiller, set-point and air. */
    void repair() {
        chilling.repair();
        air = Math.max(1, air);
        model = model();
    }

    boolean needsRepair() {
        return chilling.needsRepair() || air < 1;
    }

    boolean isChillerSound() {
        return !chilling.needsRepair();
    }

    TankState state() {
        return state;
    }

    double ph() {
        return phCourse.of(state, wasteMgPerLDay, air);
    }

    double oxygenMgPerL() {
        double density = feeds() ? alive * fishG() / of(Trait.VOLUME_L) : 0;
        double held = Math.min(1, of(Trait.AERATION) * air);
        double share = Math.max(0.1, held - of(Trait.OXYGEN_PER_DENSITY) * density / air);
        return share * OxygenSaturation.mgPerL(state.temperatureC(), 100);
    }

    boolean feeds() {
        return thermalUnitsC >= Development.FIRST_FEEDING_C_DAYS;
    }

    int alive() {
        return alive;
    }

    private double fishG() {
        return weightRoot * weightRoot * weightRoot;
    }

    /** The sum over the limits of how far the water is beyond each. */
    double excess(Limits limits) {
        return DoubleStream.of(excesses(limits)).sum();
    }

    /** How far the water is beyond each limit, by {@link Driver#ordinal}. */
    double[] excesses(Limits limits) {
        return DoubleStream.of(shares(limits)).map(u -> Math.max(0, u - 1)).toArray();
    }

    /** How near the water is to the nearest limit, as a share of it. */
    double nearest(Limits limits) {
        return DoubleStream.of(shares(limits)).max().orElseThrow();
    }

    /** Each level as a share of its limit, by {@link Driver#ordinal}. */
    private double[] shares(Limits limits) {
        Stage stage = feeds() ? Stage.FEEDING : Stage.SAC_FRY;
        double unIonised = Ammonia.unIonisedMgPerL(state.ammoniaMgPerL(), ph(), state.temperatureC());
        return DoubleStream.of(
                limits.ofTemperature(stage, state.temperatureC()),
                limits.ofUnIonisedAmmonia(unIonised),
                limits.ofNitrite(state.nitriteMgPerL(), chlorideTakenMgPerL + saltedMgPerL),
                limits.ofOxygen(stage, oxygenMgPerL()),
                limits.ofPh(ph()),
                limits.ofChlorine(chlorineMgPerL)).toArray();
    }
}
