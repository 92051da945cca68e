package org.tankrounds.lab;

import java.util.Map;
import org.tankrounds.tankmodel.Chiller;

/** A tank's chiller and what becomes of it: it stops, trips and comes back, fades, or somebody turns its knob. */
final class Chilling {

    private static final double HOUR = 1 / 24.0;
    private static final double BAND_K = 0.5;

    private final Map<Trait, Double> traits;
    private final boolean isOnOff;
    private final Luck luck;
    private double setPointC;
    private double left = 1;
    private double fadesPerDay;
    private int trippedHours;
    private boolean runs;

    Chilling(Map<Trait, Double> traits, Mechanics.Thermostat thermostat, Luck luck) {
        this.traits = traits;
        this.luck = luck;
        isOnOff = thermostat == Mechanics.Thermostat.ON_OFF;
        setPointC = of(Trait.SET_POINT_C);
    }

    /** The same chiller, with other luck. */
    Chilling(Chilling other, Luck luck) {
        this.luck = luck;
        traits = other.traits;
        isOnOff = other.isOnOff;
        setPointC = other.setPointC;
        left = other.left;
        fadesPerDay = other.fadesPerDay;
        trippedHours = other.trippedHours;
        runs = other.runs;
    }

    private double of(Trait trait) {
        return traits.get(trait);
    }

    /** As the heat balance takes it. One that knows only all or nothing is at full power wherever it runs. */
    Chiller chiller() {
        return new Chiller(isOnOff ? setPointC - of(Trait.THERMOSTAT_GAP_K) - BAND_K : setPointC,
                of(Trait.COOLING_W), BAND_K);
    }

    /** An hour of wear. @return whether it is now set to another temperature */
    boolean wears() {
        if (luck.about("stop").happens(of(Trait.CHILLER_STOPS_PER_DAY) * HOUR)) {
            left = 0;
        }
        if (luck.about("trip").happens(of(Trait.CHILLER_TRIPS_PER_DAY) * HOUR)) {
            trippedHours = luck.between(4, 60);
        }
        if (luck.about("fading").happens(of(Trait.CHILLER_FADES_PER_DAY) * HOUR)) {
            fadesPerDay = luck.between(0.03, 0.4);
        }
        left = Math.max(0, left - fadesPerDay * HOUR);
        trippedHours = Math.max(0, trippedHours - 1);
        if (luck.about("knob").happens(of(Trait.MIS_SET_PER_DAY) * HOUR)) {
            setPointC += luck.between(-3.0, 8.0);
            return true;
        }
        return false;
    }

    /** What it has left at a temperature of the water: 1 sound, 0 stopped or switched off. */
    double condition(double temperatureC) {
        double gap = isOnOff ? of(Trait.THERMOSTAT_GAP_K) / 2 : 0;
        runs = !isOnOff || temperatureC > setPointC + gap || runs && temperatureC > setPointC - gap;
        return runs && trippedHours == 0 ? left : 0;
    }

    void repair() {
        left = 1;
        fadesPerDay = 0;
        trippedHours = 0;
        setPointC = of(Trait.SET_POINT_C) + luck.about("repair").between(-0.5, 0.5);
    }

    /** Set going by somebody who came because it is too warm: the knob is turned no warmer than it is. */
    void setGoing(double mostC) {
        double knobC = Math.min(setPointC, mostC);
        repair();
        setPointC = Math.min(setPointC, knobC);
    }

    boolean needsRepair() {
        return left < 0.6 || trippedHours > 0 || Math.abs(setPointC - of(Trait.SET_POINT_C)) > 2;
    }
}
