package org.tankrounds.lab;

import java.util.Map;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.Limits;
import org.tankrounds.tankmodel.Conditions;
import org.tankrounds.tankmodel.SourceWater;
import org.tankrounds.tankmodel.TankState;
import org.tankrounds.tankmodel.Wastes;
import org.tankrounds.water.Ammonia;
import org.tankrounds.water.Carbonate;
import org.tankrounds.water.HeatBalance;
import org.tankrounds.water.OxygenSaturation;

/** The water of one tank and what lives in it, hour by hour; things break on their own, people do the rest. */
final class TankWater {

    private static final double YOLK_NITROGEN_G_PER_EGG_DAY = 1.5e-5;
    /** Feed becomes waste with this time constant, d. */
    private static final double DIGESTION_DAYS = 0.75;
    private static final double HOUR = 1 / 24.0;
    private static final double AIR_OF_ANOTHER = 0.8;

    private final Map<Trait, Double> traits;
    private final Luck luck;
    private final Chilling chilling;
    private final PhCourse phCourse;
    private final WaterCourse course;
    private final Room room;
    private final Shoal shoal;
    private final Additives additives;
    private final SourceWater tap;
    private final double chlorideTakenMgPerL;
    private TankState state;
    private double air = 1;
    private double wastePoolG;
    private double wasteMgPerLDay;
    private double excessOfDay;

    /** @param chlorideTakenMgPerL what the nitrite limit goes by: 5 where nobody knows */
    TankWater(Map<Trait, Double> traits, Mechanics mechanics, double chlorideTakenMgPerL, Luck luck) {
        this.traits = traits;
        this.luck = luck;
        this.chlorideTakenMgPerL = chlorideTakenMgPerL;
        chilling = new Chilling(traits, mechanics.thermostat(), luck);
        phCourse = new PhCourse(mechanics.acidity(),
                of(Trait.CARBON_DIOXIDE_MG_PER_L), of(Trait.CARBON_DIOXIDE_PER_WASTE));
        course = new WaterCourse(traits, mechanics, chilling.chiller());
        room = new Room(traits, luck);
        shoal = new Shoal(traits, luck);
        additives = new Additives(of(Trait.VOLUME_L));
        double alkalinity = of(Trait.ALKALINITY_MG_PER_L);
        tap = new SourceWater(of(Trait.TAP_C), of(Trait.TAP_AMMONIA_MG_PER_L), 0, 0, alkalinity);
        double seed = of(Trait.SEED_COD_PER_L);
        state = TankState.fresh(of(Trait.SET_POINT_C), alkalinity, seed, seed * of(Trait.NITRITE_SEED_SHARE));
    }

    /** The same water, with other luck. */
    TankWater(TankWater other, Luck luck) {
        this.luck = luck;
        traits = other.traits;
        chilling = new Chilling(other.chilling, luck);
        phCourse = new PhCourse(other.phCourse);
        course = new WaterCourse(other.course);
        room = new Room(other.room, luck);
        shoal = new Shoal(other.shoal, luck);
        additives = new Additives(other.additives);
        tap = other.tap;
        chlorideTakenMgPerL = other.chlorideTakenMgPerL;
        state = other.state;
        air = other.air;
        wastePoolG = other.wastePoolG;
        wasteMgPerLDay = other.wasteMgPerLDay;
        excessOfDay = other.excessOfDay;
    }

    double of(Trait trait) {
        return traits.get(trait);
    }

    int eggs() {
        return shoal.eggs();
    }

    /** One hour on. */
    void pass(int hour, SchoolCalendar calendar) {
        breakThings();
        double wasteG = wastePoolG / DIGESTION_DAYS + YOLK_NITROGEN_G_PER_EGG_DAY * (feeds() ? 0 : alive());
        wastePoolG *= 1 - HOUR / DIGESTION_DAYS;
        wasteMgPerLDay = 1000 * wasteG / of(Trait.VOLUME_L);
        state = course.after(state, new Conditions(wasteG, oxygenMgPerL(), room.temperatureC(hour, calendar),
                chilling.condition(state.temperatureC())), HOUR);
        phCourse.pass(calendar.hourOfDay(hour), luck);
        additives.pass(HOUR);
        shoal.grow(state.temperatureC(), HOUR);
        excessOfDay += shares(Limits.DEFAULT).excess() * HOUR;
    }

    private void breakThings() {
        if (chilling.wears()) {
            course.setChiller(chilling.chiller());
        }
        if (luck.about("air").happens(of(Trait.AIR_FAILS_PER_DAY) * HOUR)) {
            air = luck.between(0.35, 0.85);
        }
        if (luck.about("filter").happens(of(Trait.FILTER_HURT_PER_DAY) * HOUR)) {
            state = state.filterSetBack(luck.between(0.05, 0.6));
        }
    }

    /** At midnight: who has died since the last. */
    int deaths() {
        int dead = shoal.deaths(excessOfDay);
        excessOfDay = 0;
        return dead;
    }

    /** Feed given now, as a share of what was meant. @return grams */
    double feed(double times) {
        if (!feeds()) {
            return 0;
        }
        double grams = shoal.rationG(times);
        wastePoolG += Wastes.nitrogenGPerDay(grams, of(Trait.PROTEIN));
        return grams;
    }

    void change(double share) {
        exchange(share, tap);
        if (luck.about("chlorine").happens(of(Trait.CHLORINE_FORGOTTEN))) {
            additives.chlorine(share * chlorineOfTapMgPerL(luck));
        }
    }

    /** The usual change, of water that nobody treated. */
    void changeUntreated(Luck by) {
        exchange(of(Trait.CHANGE_SHARE), tap);
        additives.chlorine(of(Trait.CHANGE_SHARE) * chlorineOfTapMgPerL(by));
    }

    private static double chlorineOfTapMgPerL(Luck by) {
        return by.between(0.3, 1.5);
    }

    double chlorineMgPerL() {
        return additives.chlorineMgPerL();
    }

    /** Water from the tap, treated and brought to the tank's temperature. */
    void changeTempered(double share) {
        exchange(share, new SourceWater(
                state.temperatureC(), tap.ammoniaMgPerL(), 0, 0, tap.alkalinityMgPerL()));
    }

    private void exchange(double share, SourceWater fresh) {
        state = state.changed(share, fresh);
        additives.dilute(share);
    }

    void salt(double grams) {
        additives.salt(grams);
    }

    void thiosulfate(double grams) {
        additives.thiosulfate(grams);
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
        course.setChiller(chilling.chiller());
    }

    void buffer(double raiseMgPerL) {
        state = state.buffered(raiseMgPerL);
    }

    /** Somebody sees to chiller, set-point and air. */
    void repair() {
        chilling.repair();
        air = Math.max(1, air);
        course.setChiller(chilling.chiller());
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
        double density = feeds() ? alive() * shoal.fishG() / of(Trait.VOLUME_L) : 0;
        double held = Math.min(1, of(Trait.AERATION) * air);
        double share = Math.max(0.1, held - of(Trait.OXYGEN_PER_DENSITY) * density / air);
        return share * OxygenSaturation.mgPerL(state.temperatureC(), 100);
    }

    boolean feeds() {
        return shoal.feeds();
    }

    int alive() {
        return shoal.alive();
    }

    LimitShares shares(Limits limits) {
        Stage stage = shoal.stage();
        double unIonised = Ammonia.unIonisedMgPerL(state.ammoniaMgPerL(), ph(), state.temperatureC());
        return new LimitShares(new double[] {
                limits.ofTemperature(stage, state.temperatureC()),
                limits.ofUnIonisedAmmonia(unIonised),
                limits.ofNitrite(state.nitriteMgPerL(), chlorideTakenMgPerL + additives.chlorideMgPerL()),
                limits.ofOxygen(stage, oxygenMgPerL()),
                limits.ofPh(ph()),
                limits.ofChlorine(additives.chlorineMgPerL())});
    }
}
