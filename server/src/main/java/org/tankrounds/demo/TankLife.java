package org.tankrounds.demo;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.tankrounds.fish.Development;
import org.tankrounds.tankmodel.Chiller;
import org.tankrounds.tankmodel.Conditions;
import org.tankrounds.tankmodel.Nitrifiers;
import org.tankrounds.tankmodel.SourceWater;
import org.tankrounds.tankmodel.TankModel;
import org.tankrounds.tankmodel.TankParameters;
import org.tankrounds.tankmodel.TankState;
import org.tankrounds.tankmodel.Wastes;
import org.tankrounds.water.OxygenSaturation;

/** The water of an invented tank, hour by hour from the day the eggs came until now. */
final class TankLife {
    private static final double ROOM_C = 22;
    private static final double WEEKEND_COOLER_C = 1;
    private static final double OXYGEN_SHARE_OF_SATURATION = 0.95;
    private static final double PROTEIN_SHARE = 0.5;
    /** Eggs and fry live on their yolk and give off little. */
    private static final double YOLK_NITROGEN_G_PER_DAY = 0.0015;
    private static final double SWIM_UP_G = 0.15;
    private static final double GROWTH_PER_C_DAY = 0.0007;
    private static final double RATION_SHARE_PER_DAY = 0.02;
    /** Within the published ranges, at their lower end: a ripe classroom filter leaves nothing that a card shows. */
    private static final double HALF_AMMONIA_MG_PER_L = 0.16;
    private static final double HALF_NITRITE_MG_PER_L = 0.12;

    private final DemoTank tank;
    private final double elevationM;
    private final Instant start;
    private final Instant now;
    private final ZoneId zone;
    private final TankModel model;
    private final List<TankState> hourly = new ArrayList<>();
    private final List<Double> feedGPerHour = new ArrayList<>();
    private double thermalUnitsC;
    private double feedingCDays;

    /** @param changes share of the water replaced, by the hour (counted from the start) after which it happens */
    TankLife(DemoTank tank, double elevationM, Instant start, Instant now, ZoneId zone, Map<Integer, Double> changes) {
        this.tank = tank;
        this.elevationM = elevationM;
        this.start = start;
        this.now = now;
        this.zone = zone;
        this.model = new TankModel(parameters(tank));
        this.thermalUnitsC = tank.eggs().thermalUnitsC();
        live(changes);
    }

    private static TankParameters parameters(DemoTank tank) {
        TankParameters usual = TankParameters.ofVolume(
                tank.equipment().volumeL(), Chiller.setTo(tank.equipment().setPointC() - 0.15));
        return new TankParameters(usual.volumeL(), usual.lossWPerK(), usual.pumpW(), usual.chiller(),
                keen(Nitrifiers.AMMONIA_OXIDISERS, HALF_AMMONIA_MG_PER_L),
                keen(Nitrifiers.NITRITE_OXIDISERS, HALF_NITRITE_MG_PER_L),
                usual.halfAlkalinityMgPerL(), tank.water().carbonDioxideMgPerL());
    }

    private static Nitrifiers keen(Nitrifiers usual, double halfSubstrateMgPerL) {
        return new Nitrifiers(usual.growthPerDay(), halfSubstrateMgPerL, usual.halfOxygenMgPerL(),
                usual.decayPerDay(), usual.yieldCodPerN(), usual.activationJPerMol());
    }

    private void live(Map<Integer, Double> changes) {
        SourceWater tap = SourceWater.of(tank.equipment().setPointC() + 2, tank.water().alkalinityMgPerL());
        TankState state = TankState.fresh(tank.equipment().setPointC(), tank.water().alkalinityMgPerL(),
                tank.story().ammoniaOxidisers(), tank.story().nitriteOxidisers());
        int hours = (int) Duration.between(start, now).toHours() + 1;
        hourly.add(state);
        for (int hour = 0; hour < hours; hour++) {
            if (changes.containsKey(hour)) {
                state = state.changed(changes.get(hour), tap);
            }
            feedGPerHour.add(feedGPerDay(hour, state.temperatureC()) / 24);
            state = model.after(state, conditions(hour, state), 1 / 24.0);
            thermalUnitsC += state.temperatureC() / 24;
            hourly.add(state);
        }
    }

    private double feedGPerDay(int hour, double temperatureC) {
        if (thermalUnitsC < Development.FIRST_FEEDING_C_DAYS) {
            return 0;
        }
        feedingCDays += temperatureC / 24;
        double root = Math.cbrt(SWIM_UP_G) + GROWTH_PER_C_DAY * feedingCDays;
        double needG = 0.8 * tank.eggs().count() * root * root * root * RATION_SHARE_PER_DAY;
        return needG * tank.story().timesTheNeed(hoursAgo(hour) / 24);
    }

    private Conditions conditions(int hour, TankState state) {
        double feedG = 24 * feedGPerHour.get(hour);
        double nitrogenG = Math.max(YOLK_NITROGEN_G_PER_DAY, Wastes.nitrogenGPerDay(feedG, PROTEIN_SHARE));
        boolean stopped = tank.story().chillerStopped().isPresent()
                && hoursAgo(hour) <= tank.story().chillerStopped().getAsDouble();
        return new Conditions(nitrogenG, oxygenMgPerL(state), roomC(hour), stopped ? 0 : 1);
    }

    private double roomC(int hour) {
        ZonedDateTime local = start.plus(Duration.ofHours(hour)).atZone(zone);
        boolean weekend = local.getDayOfWeek() == DayOfWeek.SATURDAY || local.getDayOfWeek() == DayOfWeek.SUNDAY;
        return ROOM_C + Math.sin((local.getHour() - 9) / 24.0 * 2 * Math.PI) - (weekend ? WEEKEND_COOLER_C : 0);
    }

    private double hoursAgo(int hour) {
        return Duration.between(start.plus(Duration.ofHours(hour)), now).toMinutes() / 60.0;
    }

    /** The water at a moment between the start and now: straight between the hours. */
    TankState at(Instant moment) {
        double hours = Duration.between(start, moment).toSeconds() / 3600.0;
        int before = Math.max(0, Math.min(hourly.size() - 2, (int) hours));
        double share = Math.max(0, Math.min(1, hours - before));
        TankState a = hourly.get(before);
        TankState b = hourly.get(before + 1);
        return new TankState(
                between(a.temperatureC(), b.temperatureC(), share),
                between(a.ammoniaMgPerL(), b.ammoniaMgPerL(), share),
                between(a.nitriteMgPerL(), b.nitriteMgPerL(), share),
                between(a.nitrateMgPerL(), b.nitrateMgPerL(), share),
                between(a.alkalinityMgPerL(), b.alkalinityMgPerL(), share),
                a.ammoniaOxidisersCodPerL(), a.nitriteOxidisersCodPerL());
    }

    double phAt(Instant moment) {
        return model.ph(at(moment));
    }

    double oxygenMgPerLAt(Instant moment) {
        return oxygenMgPerL(at(moment));
    }

    /** Feed given between two moments, g. */
    double feedG(Instant from, Instant until) {
        int first = hourOf(from);
        int last = Math.min(feedGPerHour.size(), hourOf(until));
        return feedGPerHour.subList(Math.min(first, last), last).stream().mapToDouble(Double::doubleValue).sum();
    }

    int hourOf(Instant moment) {
        return (int) Math.max(0, Duration.between(start, moment).toHours());
    }

    /** Whether they ate at a moment already. */
    boolean feedsAt(Instant moment) {
        return feedGPerHour.get(Math.min(feedGPerHour.size() - 1, hourOf(moment))) > 0;
    }

    private double oxygenMgPerL(TankState state) {
        return OXYGEN_SHARE_OF_SATURATION * OxygenSaturation.mgPerL(state.temperatureC(), elevationM);
    }

    private static double between(double a, double b, double share) {
        return a + share * (b - a);
    }
}
