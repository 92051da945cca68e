package org.tankrounds.forecast;

import java.util.Arrays;
import org.tankrounds.belief.BeliefFilter;
import org.tankrounds.belief.ChillerFailure;
import org.tankrounds.belief.TankBelief;
import org.tankrounds.tankmodel.Nitrifiers;
import org.tankrounds.water.Carbonate;

/**
 * The same futures with something else done: what a deed changes is carried along each course as a distance
 * from it.
 *
 * <p>Ammonia and nitrite taken out by a change or not given off by unfed fish come back as the filter, which
 * works at half speed at K, has less to do: {@code da/dt = −cut − kA·a}, {@code dn/dt = kA·a − kN·n}, where
 * {@code k = P·K/(C·(K + C))} is the slope of the filter's rate where it just keeps up with the supply P at a
 * level C. Alkalinity that comes in lifts the pH and wakes a first guild that lacked it ({@link AlkalinityChange});
 * ammonia then turns into nitrite faster than the second guild can take it. How much was there before differs from
 * course to course within what pH and readings leave open ({@link Alkalinity}). More air and less breath lower the
 * carbon dioxide towards what is in balance with the air, and the pH rises by {@code log10(CO2/CO2′)}.
 */
final class WhatIf {

    private static final int HOURS = Forecast.HORIZON_HOURS;
    private static final double HOUR = 1 / 24.0;
    private static final double HALF_SUBSTRATE_MG_PER_L = Nitrifiers.AMMONIA_OXIDISERS.halfSubstrateMgPerL();
    private static final double LEAST_MG_PER_L = 0.02;
    private static final double LEAST_LEFT = 0.05;
    /**
     * A fish that fasts gives off this share of what a fed one does, reached in so many hours (from memory).
     */
    private static final double FASTING_SHARE = 0.2;
    private static final double FASTING_HOURS = 12;
    /** Of its carbon dioxide a fed fish breathes out so much for its feed (from memory: up to a half). */
    private static final double FEED_BREATH_SHARE = 0.3;
    /**
     * What a chiller takes out beyond what comes in, and ice in bottles, K/h (common practice, no source).
     */
    private static final double CHILLED_K_PER_HOUR = 0.5;
    private static final double ICED_K_PER_HOUR = 1;
    /**
     * Twice the air carries twice as much for the same gap: fish that breathe as before leave half the gap.
     */
    private static final double GAP_LEFT = 0.5;

    private final Courses courses;
    private final Paths before;
    private final Deed deed;
    private final TankBelief belief;
    private final int hours;
    private final boolean fasts;
    private final boolean movesPh;
    private final AlkalinityChange alkalinityChange;
    private final double supplyMgPerLPerDay;
    private final double[] saturation;
    private final double[] cut = new double[HOURS + 1];

    private WhatIf(Courses courses, Deed deed, int hours) {
        this.courses = courses;
        this.before = courses.paths();
        this.deed = deed;
        this.belief = courses.belief();
        this.hours = hours;
        fasts = deed.fastHours() > 0 && NitrogenSupply.feeds(belief);
        movesPh = deed.movesPh() || fasts;
        alkalinityChange = alkalinityChange(belief, deed);
        supplyMgPerLPerDay = NitrogenSupply.mgPerLPerDay(belief);
        saturation = deed.airs()
                ? ForwardModel.saturation(belief.facts().elevationM().orElse(0)) : new double[0];
        Arrays.setAll(cut, this::cutInHour);
    }

    /** The same courses with a deed, up to an hour; what it does not touch is shared with them. */
    static Paths of(Courses courses, Deed deed, int hours) {
        return new WhatIf(courses, deed, hours).paths();
    }

    /** What its alkalinity does. */
    static AlkalinityChange alkalinityChange(TankBelief belief, Deed deed) {
        return new AlkalinityChange(deed,
                belief.facts().sourceAlkalinityMgPerL().orElse(Alkalinity.USUAL_MG_PER_L));
    }

    private Paths paths() {
        double[][] temperature = copyIf(deed.movesHeat(), before.temperatureC());
        double[][] ph = copyIf(movesPh, before.ph());
        boolean movesAmmonia = deed.movesHeat() || movesPh || deed.movesNitrogen();
        double[][] unIonised = copyIf(movesAmmonia, before.unIonisedMgPerL());
        double[][] nitrite = copyIf(movesAmmonia, before.nitriteMgPerL());
        double[][] oxygen = copyIf(deed.airs(), before.oxygenMgPerL());
        for (int k = 0; k < courses.count(); k++) {
            if (deed.movesHeat()) {
                moveHeat(k, temperature);
            }
            if (movesPh) {
                movePh(k, ph);
            }
            if (movesPh || deed.movesNitrogen()) {
                moveNitrogen(k, unIonised, nitrite);
            }
            if (movesPh || deed.movesHeat()) {
                moveShare(k, temperature, ph, unIonised);
            }
            if (deed.airs()) {
                moveOxygen(k, oxygen);
            }
        }
        return new Paths(temperature, unIonised, nitrite, oxygen, ph, chlorine(), chloride(), before.stage());
    }

    private static double[][] copyIf(boolean moved, double[][] values) {
        if (!moved) {
            return values;
        }
        double[][] copy = new double[values.length][];
        for (int h = 0; h < values.length; h++) {
            copy[h] = values[h].clone();
        }
        return copy;
    }

    private void moveHeat(int k, double[][] temperature) {
        int path = courses.which()[k];
        boolean stands = belief.temperature().stopped()[path];
        double held = belief.temperature().heldC()[path];
        double keeps = StrictMath.exp(-1 / (stands ? belief.temperature().timeConstantH()[path]
                : ChillerFailure.RUN_HOURS));
        double off = 0;
        double iceLeftK = deed.coolingK();
        for (int h = 1; h <= hours; h++) {
            off *= keeps;
            double own = temperature[h][k] + off;
            if (own > deed.holdC() && iceLeftK > 0) {
                double takenK = Math.min(Math.min(own - deed.holdC(), iceLeftK), ICED_K_PER_HOUR);
                iceLeftK -= takenK;
                own -= takenK;
            }
            if (deed.mends() && stands && h > Deed.MENDED_AFTER_HOURS) {
                own = Math.min(own, Math.max(held, temperature[h - 1][k] - CHILLED_K_PER_HOUR));
            }
            off = own - temperature[h][k];
            temperature[h][k] = own;
        }
    }

    private void movePh(int k, double[][] ph) {
        double alkalinity = courses.alkalinityMgPerL()[k];
        double held = Carbonate.carbonDioxideMgPerL(ph[0][k], alkalinity, before.temperatureC()[0][k]);
        double by = alkalinityChange.liftsPh(alkalinity, held);
        double gap = Math.max(0, held - AlkalinityChange.DIOXIDE_IN_BALANCE_MG_PER_L);
        for (int h = 1; h <= hours; h++) {
            double left = (deed.airs() ? GAP_LEFT : 1) * (1 - FEED_BREATH_SHARE * fastingShare(h));
            double vented = StrictMath.log10(held / (held - (1 - left) * gap));
            ph[h][k] = Math.min(14, Math.max(0, ph[h][k] + by + vented));
        }
    }

    /**
     * Ammonia that a first guild turns into nitrite beyond what it did, once it has alkalinity again, mg
     * N/L/d.
     */
    private double wokenPerDay(double alkalinityMgPerL) {
        return Math.max(0, alkalinityChange.timesAsFast(alkalinityMgPerL) - 1) * supplyMgPerLPerDay;
    }

    private void moveNitrogen(int k, double[][] unIonised, double[][] nitrite) {
        double[][] totals = courses.totalMgPerL();
        double woken = wokenPerDay(courses.alkalinityMgPerL()[k]) * HOUR;
        double ammoniaOff = -deed.changedShare() * totals[1][k];
        double nitriteOff = -deed.changedShare() * nitrite[1][k];
        for (int h = 1; h <= hours; h++) {
            double total = totals[h][k];
            if (h > 1) {
                double ammoniaBack = backPerDay(total + ammoniaOff) * HOUR;
                double nitriteBack = backPerDay(nitrite[h][k] + nitriteOff) * HOUR;
                double turned = Math.min(woken, Math.max(0, (1 - LEAST_LEFT) * total + ammoniaOff - cut[h]));
                ammoniaOff = (ammoniaOff - cut[h] - turned) / (1 + ammoniaBack);
                nitriteOff = (nitriteOff + ammoniaBack * ammoniaOff + turned) / (1 + nitriteBack);
            }
            ammoniaOff = Math.max(ammoniaOff, -(1 - LEAST_LEFT) * total);
            nitriteOff = Math.max(nitriteOff, -(1 - LEAST_LEFT) * nitrite[h][k]);
            unIonised[h][k] *= 1 + ammoniaOff / total;
            nitrite[h][k] += nitriteOff;
        }
    }

    /** The un-ionised share of the ammonia at another pH or temperature. */
    private void moveShare(int k, double[][] temperature, double[][] ph, double[][] unIonised) {
        for (int h = 1; h <= hours; h++) {
            double shareBefore = before.unIonisedMgPerL()[h][k] / courses.totalMgPerL()[h][k];
            if (shareBefore > 0) {
                unIonised[h][k] *= Courses.unIonisedPerTotal(ph[h][k], temperature[h][k]) / shareBefore;
            }
        }
    }

    private double backPerDay(double mgPerL) {
        double level = Math.max(LEAST_MG_PER_L, mgPerL);
        return supplyMgPerLPerDay * HALF_SUBSTRATE_MG_PER_L / (level * (HALF_SUBSTRATE_MG_PER_L + level));
    }

    /** What unfed fish do not give off in an hour, mg N/L. */
    private double cutInHour(int hour) {
        return (1 - FASTING_SHARE) * supplyMgPerLPerDay * HOUR * fastingShare(hour);
    }

    /** How far fish have gone from fed to fasting, 0 to 1. */
    private double fastingShare(int hour) {
        if (!fasts) {
            return 0;
        }
        double fasted = Math.min(hour, deed.fastHours());
        double fedAgain = Math.max(0, hour - deed.fastHours());
        return (1 - StrictMath.exp(-fasted / FASTING_HOURS)) * StrictMath.exp(-fedAgain / FASTING_HOURS);
    }

    /** Colder water takes up a little more than this. */
    private void moveOxygen(int k, double[][] oxygen) {
        for (int h = 1; h <= hours; h++) {
            double gap = ForwardModel.saturationAt(saturation, before.temperatureC()[h][k]) - oxygen[h][k];
            oxygen[h][k] += (1 - GAP_LEFT) * Math.max(0, gap);
        }
    }

    private double[] chlorine() {
        double[] chlorine = before.chlorineMgPerL().clone();
        double before = chlorine[1];
        double left = before > 0 ? Math.max(0, before * (1 - deed.changedShare()) - deed.neutralisedMgPerL()) / before
                : 0;
        for (int h = 1; h <= HOURS; h++) {
            chlorine[h] *= deed.airs() ? left * StrictMath.exp(-h / BeliefFilter.CHLORINE_HOURS) : left;
        }
        return chlorine;
    }

    private double[] chloride() {
        double[] chloride = before.chlorideMgPerL().clone();
        double source = belief.facts().chlorideMgPerL().orElse(chloride[0]);
        for (int h = 1; h <= HOURS; h++) {
            double given = deed.chlorideMgPerL() * Math.min(1, (double) h / Deed.SALT_HOURS);
            chloride[h] += deed.changedShare() * (source - chloride[h]) + given;
        }
        return chloride;
    }
}
