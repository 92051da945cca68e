package org.tankrounds.forecast;

import org.tankrounds.belief.BeliefFilter;
import org.tankrounds.belief.ChillerFailure;
import org.tankrounds.belief.TankBelief;
import org.tankrounds.tankmodel.Nitrifiers;
import org.tankrounds.water.Ammonia;
import org.tankrounds.water.Carbonate;

/**
 * The same futures with something else done: what a deed changes is carried along each course as a distance from it.
 *
 * <p>Ammonia and nitrite taken out by a change or not given off by unfed fish come back as the filter, which works at
 * half speed at K, has less to do: {@code da/dt = −cut − kA·a}, {@code dn/dt = kA·a − kN·n}, where {@code k =
 * P·K/(C·(K + C))} is the slope of the filter's rate where it just keeps up with the supply P at a level C. Alkalinity
 * that comes in moves the pH by {@code log10(Alk′/Alk)}, because breathing and aeration settle the carbon dioxide;
 * where nobody read it, the pH tells how much of the source water's is left.
 */
final class WhatIf {

    private static final int HOURS = Forecast.HORIZON_HOURS;
    private static final double HOUR = 1 / 24.0;
    private static final double HALF_SUBSTRATE_MG_PER_L = Nitrifiers.AMMONIA_OXIDISERS.halfSubstrateMgPerL();
    private static final double LEAST_MG_PER_L = 0.02;
    private static final double LEAST_LEFT = 0.05;
    /** A fish that fasts gives off this share of what a fed one does, reached in so many hours (from memory). */
    private static final double FASTING_SHARE = 0.2;
    private static final double FASTING_HOURS = 12;
    /** What a chiller takes out beyond what comes in, and ice in bottles, K/h (common practice, no source). */
    private static final double CHILLED_K_PER_HOUR = 0.5;
    private static final double ICED_K_PER_HOUR = 1;
    /** Twice the air carries twice as much for the same gap: fish that breathe as before leave half the gap. */
    private static final double GAP_LEFT = 0.5;
    /** Carbon dioxide of water in balance with the air at 10 °C, mg/L. */
    private static final double DIOXIDE_IN_BALANCE_MG_PER_L = 1;

    private final Paths course;
    private final int[] which;
    private final Deed deed;
    private final TankBelief belief;
    private final double supplyMgPerLPerDay;
    private final double[] saturation;

    private WhatIf(Paths course, int[] which, Deed deed, TankBelief belief) {
        this.course = course;
        this.which = which;
        this.deed = deed;
        this.belief = belief;
        supplyMgPerLPerDay = NitrogenSupply.mgPerLPerDay(belief);
        saturation = deed.airs() || deed.movesHeat()
                ? ForwardModel.saturation(belief.facts().elevationM().orElse(0)) : new double[0];
    }

    /** Some of a tank's courses with a deed. @param which of them, in this order; any may come twice */
    static Paths of(Paths course, int[] which, Deed deed, TankBelief belief) {
        return new WhatIf(course, which, deed, belief).paths();
    }

    private Paths paths() {
        double[][] temperature = gathered(course.temperatureC());
        double[][] unIonised = gathered(course.unIonisedMgPerL());
        double[][] nitrite = gathered(course.nitriteMgPerL());
        double[][] oxygen = gathered(course.oxygenMgPerL());
        double[][] ph = gathered(course.ph());
        for (int k = 0; k < which.length; k++) {
            if (deed.movesHeat()) {
                moveHeat(k, temperature);
            }
            if (deed.movesPh()) {
                movePh(k, ph);
            }
            if (deed.movesHeat() || deed.movesPh() || deed.movesNitrogen()) {
                moveNitrogen(k, temperature, ph, unIonised, nitrite);
            }
            if (deed.airs() || deed.movesHeat()) {
                moveOxygen(k, temperature, oxygen);
            }
        }
        return new Paths(temperature, unIonised, nitrite, oxygen, ph, chlorine(), chloride(), course.stage());
    }

    private double[][] gathered(double[][] values) {
        double[][] some = new double[values.length][which.length];
        for (int h = 0; h < values.length; h++) {
            for (int k = 0; k < which.length; k++) {
                some[h][k] = values[h][which[k]];
            }
        }
        return some;
    }

    private void moveHeat(int k, double[][] temperature) {
        int path = which[k];
        boolean stands = belief.temperature().stopped()[path];
        double held = belief.temperature().heldC()[path];
        double keeps = StrictMath.exp(-1 / (stands ? belief.temperature().timeConstantH()[path]
                : ChillerFailure.RUN_HOURS));
        double off = 0;
        double iceLeftK = deed.coolingK();
        for (int h = 1; h <= HOURS; h++) {
            off *= keeps;
            double own = temperature[h][k] + off;
            if (h <= Deed.ICE_HOURS && own > deed.holdC() && iceLeftK > 0) {
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
        double sourceMgPerL = belief.facts().sourceAlkalinityMgPerL().orElse(Alkalinity.USUAL_MG_PER_L);
        double before = Alkalinity.held(belief, ph[0][k]);
        double after = before * (1 - deed.changedShare()) + sourceMgPerL * deed.changedShare()
                + deed.alkalinityMgPerL();
        double by = StrictMath.log10(after / before) + (deed.airs() ? aired(ph[0][k], before, k) : 0);
        for (int h = 1; h <= HOURS; h++) {
            ph[h][k] = Math.min(14, Math.max(0, ph[h][k] + by));
        }
    }

    /** How far the pH rises when air takes carbon dioxide out. */
    private double aired(double ph, double alkalinityMgPerL, int k) {
        double held = Carbonate.carbonDioxideMgPerL(ph, alkalinityMgPerL, course.temperatureC()[0][which[k]]);
        double gap = Math.max(0, held - DIOXIDE_IN_BALANCE_MG_PER_L);
        return StrictMath.log10(held / (held - (1 - GAP_LEFT) * gap));
    }

    private void moveNitrogen(
            int k, double[][] temperature, double[][] ph, double[][] unIonised, double[][] nitrite) {
        int path = which[k];
        double ammoniaOff = 0;
        double nitriteOff = 0;
        for (int h = 1; h <= HOURS; h++) {
            double shareBefore = share(course.ph()[h][path], course.temperatureC()[h][path]);
            double total = unIonised[h][k] / shareBefore;
            if (h == 1) {
                ammoniaOff = -deed.changedShare() * total;
                nitriteOff = -deed.changedShare() * nitrite[h][k];
            } else if (deed.movesNitrogen()) {
                double ammoniaBack = backPerDay(total + ammoniaOff) * HOUR;
                double nitriteBack = backPerDay(nitrite[h][k] + nitriteOff) * HOUR;
                ammoniaOff = (ammoniaOff - cutPerDay(h) * HOUR) / (1 + ammoniaBack);
                nitriteOff = (nitriteOff + ammoniaBack * ammoniaOff) / (1 + nitriteBack);
            }
            ammoniaOff = Math.max(ammoniaOff, -(1 - LEAST_LEFT) * total);
            nitriteOff = Math.max(nitriteOff, -(1 - LEAST_LEFT) * nitrite[h][k]);
            unIonised[h][k] = (total + ammoniaOff) * share(ph[h][k], temperature[h][k]);
            nitrite[h][k] += nitriteOff;
        }
    }

    /** Un-ionised ammonia as NH3 per total ammonia as N. */
    private static double share(double ph, double temperatureC) {
        return Ammonia.NH3_PER_N * ForwardModel.unIonisedShare(ph - Ammonia.pKa(temperatureC));
    }

    private double backPerDay(double mgPerL) {
        double level = Math.max(LEAST_MG_PER_L, mgPerL);
        return supplyMgPerLPerDay * HALF_SUBSTRATE_MG_PER_L / (level * (HALF_SUBSTRATE_MG_PER_L + level));
    }

    /** What unfed fish do not give off, mg N/L/d. */
    private double cutPerDay(int hour) {
        if (deed.fastHours() == 0 || !NitrogenSupply.feeds(belief)) {
            return 0;
        }
        double most = (1 - FASTING_SHARE) * supplyMgPerLPerDay;
        double fasted = Math.min(hour, deed.fastHours());
        double fedAgain = Math.max(0, hour - deed.fastHours());
        return most * (1 - StrictMath.exp(-fasted / FASTING_HOURS)) * StrictMath.exp(-fedAgain / FASTING_HOURS);
    }

    private void moveOxygen(int k, double[][] temperature, double[][] oxygen) {
        for (int h = 1; h <= HOURS; h++) {
            double share = oxygen[h][k]
                    / ForwardModel.saturationAt(saturation, course.temperatureC()[h][which[k]]);
            double aired = deed.airs() ? share + (1 - GAP_LEFT) * Math.max(0, 1 - share) : share;
            oxygen[h][k] = aired * ForwardModel.saturationAt(saturation, temperature[h][k]);
        }
    }

    private double[] chlorine() {
        double[] chlorine = course.chlorineMgPerL().clone();
        double before = chlorine[1];
        double left = before > 0 ? Math.max(0, before * (1 - deed.changedShare()) - deed.neutralisedMgPerL()) / before
                : 0;
        for (int h = 1; h <= HOURS; h++) {
            chlorine[h] *= deed.airs() ? left * StrictMath.exp(-h / BeliefFilter.CHLORINE_HOURS) : left;
        }
        return chlorine;
    }

    private double[] chloride() {
        double[] chloride = course.chlorideMgPerL().clone();
        double source = belief.facts().chlorideMgPerL().orElse(chloride[0]);
        for (int h = 1; h <= HOURS; h++) {
            double given = deed.chlorideMgPerL() * Math.min(1, (double) h / Deed.SALT_HOURS);
            chloride[h] += deed.changedShare() * (source - chloride[h]) + given;
        }
        return chloride;
    }
}
