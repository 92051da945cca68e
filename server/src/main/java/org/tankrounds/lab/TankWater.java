package org.tankrounds.lab;

import java.util.Map;
import java.util.stream.DoubleStream;
import org.tankrounds.fish.Development;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.Limits;
import org.tankrounds.tankmodel.Chiller;
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
    private static final double TAP_C = 13;
    private static final double HOUR = 1 / 24.0;
    /** Share that dies in a day of water at twice a limit. */
    private static final double EXCESS_DEATHS = 0.004;
    private static final double AIR_OF_TWO = 1.8;
    /** Yields are 3 to 1, so is the room that the guilds take. */
    private static final double NITRITE_ROOM_SHARE = 1 / 3.0;

    private final Map<Trait, Double> traits;
    private final Luck luck;
    private final SourceWater tap;
    private final double chlorideTakenMgPerL;
    private TankModel model;
    private TankState state;
    private double setPointC;
    private double chillerLeft = 1;
    private double fadesPerDay;
    private double air = 1;
    /** Chloride from salt, above what the source brings. */
    private double saltedMgPerL;
    private double wastePoolG;
    private double wasteMgPerLDay;
    private double chlorineMgPerL;
    private double drift;
    private double excessOfDay;
    private double weightRoot = StrictMath.cbrt(SWIM_UP_G);
    private double thermalUnitsC;
    private int alive;

    /** @param chlorideTakenMgPerL what the nitrite limit goes by: 5 where nobody knows */
    TankWater(Map<Trait, Double> traits, double chlorideTakenMgPerL, Luck luck) {
        this.traits = traits;
        this.luck = luck;
        this.chlorideTakenMgPerL = chlorideTakenMgPerL;
        double alkalinity = of(Trait.ALKALINITY_MG_PER_L);
        tap = SourceWater.of(TAP_C, alkalinity);
        double seed = of(Trait.SEED_COD_PER_L);
        state = TankState.fresh(of(Trait.SET_POINT_C), alkalinity, seed, seed * of(Trait.NITRITE_SEED_SHARE));
        thermalUnitsC = of(Trait.THERMAL_UNITS_C);
        alive = eggs();
        setTo(of(Trait.SET_POINT_C));
    }

    /** The same water, with other luck. */
    TankWater(TankWater other, Luck luck) {
        this.luck = luck;
        traits = other.traits;
        tap = other.tap;
        chlorideTakenMgPerL = other.chlorideTakenMgPerL;
        model = other.model;
        state = other.state;
        setPointC = other.setPointC;
        chillerLeft = other.chillerLeft;
        fadesPerDay = other.fadesPerDay;
        air = other.air;
        saltedMgPerL = other.saltedMgPerL;
        wastePoolG = other.wastePoolG;
        wasteMgPerLDay = other.wasteMgPerLDay;
        chlorineMgPerL = other.chlorineMgPerL;
        drift = other.drift;
        excessOfDay = other.excessOfDay;
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

    private void setTo(double newSetPointC) {
        setPointC = newSetPointC;
        Chiller chiller = new Chiller(newSetPointC, of(Trait.COOLING_W), 0.5);
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

    /** One hour on. */
    void pass(int hour, SchoolCalendar calendar) {
        breakThings();
        double wasteG = wastePoolG / DIGESTION_DAYS + YOLK_NITROGEN_G_PER_EGG_DAY * (feeds() ? 0 : alive);
        wastePoolG *= 1 - HOUR / DIGESTION_DAYS;
        wasteMgPerLDay = 1000 * wasteG / of(Trait.VOLUME_L);
        state = model.after(state, new Conditions(wasteG, oxygenMgPerL(), roomC(hour, calendar), chillerLeft), HOUR);
        fillRoom();
        chlorineMgPerL *= 1 - HOUR / CHLORINE_DAYS;
        thermalUnitsC += Math.max(0, state.temperatureC()) * HOUR;
        if (feeds()) {
            weightRoot += of(Trait.GROWTH) * Math.max(0, Math.min(17, state.temperatureC())) * HOUR;
        }
        excessOfDay += excess(Limits.DEFAULT) * HOUR;
    }

    private void breakThings() {
        if (luck.happens(of(Trait.CHILLER_STOPS_PER_DAY) * HOUR)) {
            chillerLeft = 0;
        }
        if (luck.happens(of(Trait.CHILLER_FADES_PER_DAY) * HOUR)) {
            fadesPerDay = luck.between(0.03, 0.4);
        }
        chillerLeft = Math.max(0, chillerLeft - fadesPerDay * HOUR);
        if (luck.happens(of(Trait.MIS_SET_PER_DAY) * HOUR)) {
            setTo(setPointC + luck.between(-3, 8));
        }
        if (luck.happens(of(Trait.AIR_FAILS_PER_DAY) * HOUR)) {
            air = luck.between(0.35, 0.85);
        }
        if (luck.happens(of(Trait.FILTER_HURT_PER_DAY) * HOUR)) {
            state = state.filterSetBack(luck.between(0.05, 0.6));
        }
    }

    private double roomC(int hour, SchoolCalendar calendar) {
        int clock = calendar.hourOfDay(hour);
        boolean unheated = clock < 6 || clock >= 18 || calendar.isWeekend(hour);
        drift += -0.02 * drift + 0.15 * luck.normal();
        return of(Trait.ROOM_C) + drift + of(Trait.SPRING_K) * calendar.spring(hour)
                + 0.8 * StrictMath.sin((clock - 9) / 24.0 * 2 * Math.PI) - (unheated ? of(Trait.SET_BACK_K) : 0);
    }

    private void fillRoom() {
        double room = of(Trait.FILTER_ROOM_COD_PER_L);
        state = new TankState(state.temperatureC(), state.ammoniaMgPerL(), state.nitriteMgPerL(),
                state.nitrateMgPerL(), state.alkalinityMgPerL(), Math.min(room, state.ammoniaOxidisersCodPerL()),
                Math.min(NITRITE_ROOM_SHARE * room, state.nitriteOxidisersCodPerL()));
    }

    /** At midnight: who has died. More die in bad water. */
    int deaths() {
        double share = of(Trait.USUAL_DEATHS) * luck.between(0.3, 1.7) + EXCESS_DEATHS * Math.min(4, excessOfDay);
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
        if (luck.happens(of(Trait.CHLORINE_FORGOTTEN))) {
            chlorineMgPerL += share * luck.between(0.3, 1.5);
        }
    }

    /** Water from the tap, treated and brought to the tank's temperature. */
    void changeTempered(double share) {
        exchange(share, SourceWater.of(state.temperatureC(), tap.alkalinityMgPerL()));
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
        cool(kg / HeatBalance.iceToCoolKg(of(Trait.VOLUME_L), 1, holdC));
        return kg;
    }

    private void cool(double byK) {
        state = new TankState(state.temperatureC() - byK, state.ammoniaMgPerL(), state.nitriteMgPerL(),
                state.nitrateMgPerL(), state.alkalinityMgPerL(), state.ammoniaOxidisersCodPerL(),
                state.nitriteOxidisersCodPerL());
    }

    /** A second stone as good as the first. */
    void moreAir() {
        air = Math.max(air, AIR_OF_TWO);
    }

    void mendChiller() {
        chillerLeft = 1;
        fadesPerDay = 0;
        setTo(of(Trait.SET_POINT_C));
    }

    void buffer(double raiseMgPerL) {
        state = state.buffered(raiseMgPerL);
    }

    /** Somebody sees to chiller, set-point and air. */
    void repair() {
        chillerLeft = 1;
        fadesPerDay = 0;
        air = 1;
        setTo(of(Trait.SET_POINT_C) + luck.between(-0.5, 0.5));
    }

    boolean needsRepair() {
        return chillerLeft < 0.6 || air < 1 || Math.abs(setPointC - of(Trait.SET_POINT_C)) > 2;
    }

    TankState state() {
        return state;
    }

    double ph() {
        double dioxide = (of(Trait.CARBON_DIOXIDE_MG_PER_L)
                + of(Trait.CARBON_DIOXIDE_PER_WASTE) * wasteMgPerLDay) / Math.max(0.4, air);
        return state.ph(dioxide);
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
        double excess = 0;
        for (double u : shares(limits)) {
            excess += Math.max(0, u - 1);
        }
        return excess;
    }

    /** How near the water is to the nearest limit, as a share of it. */
    double nearest(Limits limits) {
        return DoubleStream.of(shares(limits)).max().orElseThrow();
    }

    /** Each level as a share of its limit. */
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
