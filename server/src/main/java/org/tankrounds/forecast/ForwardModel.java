package org.tankrounds.forecast;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.Arrays;
import org.tankrounds.belief.BeliefFilter;
import org.tankrounds.belief.Draws;
import org.tankrounds.belief.TankBelief;
import org.tankrounds.fish.Stage;
import org.tankrounds.water.Ammonia;
import org.tankrounds.water.OxygenSaturation;

/**
 * From a belief to courses of the water over the next 72 hours, if the class goes on as it has: water changes
 * at its habit on school days, nobody steps in.
 */
final class ForwardModel {

    private static final int HOURS = Forecast.HORIZON_HOURS;
    private static final int CHANGE_AT_HOUR = 14;
    private static final double HIGHEST_OXYGEN_SHARE = 1.2;
    private static final double LEAST_OXYGEN_SHARE = 0.02;
    private static final int SATURATION_PER_DEGREE = 10;
    private static final int WARMEST_C = 40;
    private static final double LOWEST_PH_ABOVE_PKA = -12;
    private static final int SHARES_PER_PH = 100;
    private static final double[] SHARES = shares();

    private ForwardModel() {
    }

    static Paths run(TankBelief belief) {
        double[][] temperature = TemperaturePaths.of(belief.temperature());
        double[][] total = SeriesPaths.of(belief.totalAmmonia(), SeriesDraws.TOTAL_AMMONIA);
        double[][] nitrite = SeriesPaths.of(belief.nitrite(), SeriesDraws.NITRITE);
        double[][] ph = SeriesPaths.of(belief.ph(), SeriesDraws.PH);
        double[][] oxygen = SeriesPaths.of(belief.oxygenShare(), SeriesDraws.OXYGEN_SHARE);
        changeWater(belief, total, nitrite);
        double[] saturation = saturation(belief.facts().elevationM().orElse(0));
        for (int h = 0; h <= HOURS; h++) {
            keepPossible(ph[h]);
            takeUnIonised(total[h], ph[h], temperature[h]);
            takeMgPerL(oxygen[h], saturation, temperature[h]);
        }
        double[] chloride = new double[HOURS + 1];
        Arrays.fill(chloride, belief.chlorideMgPerL());
        return new Paths(temperature, total, nitrite, oxygen, ph, chlorine(belief), chloride, stages(belief));
    }

    private static void keepPossible(double[] ph) {
        for (int i = 0; i < ph.length; i++) {
            ph[i] = between(0, 14, ph[i]);
        }
    }

    /** From total ammonia as N to its un-ionised part as NH3. */
    private static void takeUnIonised(double[] ammonia, double[] ph, double[] temperatureC) {
        for (int i = 0; i < ammonia.length; i++) {
            ammonia[i] *= Ammonia.NH3_PER_N * unIonisedShare(ph[i] - Ammonia.pKa(temperatureC[i]));
        }
    }

    /** From a share of saturation to mg/L. */
    private static void takeMgPerL(double[] oxygen, double[] saturation, double[] temperatureC) {
        for (int i = 0; i < oxygen.length; i++) {
            double share = between(LEAST_OXYGEN_SHARE, HIGHEST_OXYGEN_SHARE, oxygen[i]);
            oxygen[i] = share * saturationAt(saturation, temperatureC[i]);
        }
    }

    private static void changeWater(TankBelief belief, double[][] total, double[][] nitrite) {
        double chance = belief.routine().perSchoolDay();
        if (chance == 0) {
            return;
        }
        double keep = 1 - belief.routine().share();
        int paths = total[0].length;
        double[] left = new double[paths];
        Arrays.fill(left, 1);
        ZonedDateTime start = belief.asOf().atZone(belief.facts().zone());
        int changes = 0;
        for (int h = 1; h <= HOURS; h++) {
            ZonedDateTime at = start.plusHours(h);
            if (at.getHour() == CHANGE_AT_HOUR && isSchoolDay(at.getDayOfWeek())) {
                double[] draw = Draws.spread(paths, 60 + changes++);
                for (int i = 0; i < paths; i++) {
                    left[i] *= draw[i] < chance ? keep : 1;
                }
            }
            for (int i = 0; i < paths; i++) {
                total[h][i] *= left[i];
                nitrite[h][i] *= left[i];
            }
        }
    }

    private static boolean isSchoolDay(DayOfWeek day) {
        return day != DayOfWeek.SATURDAY && day != DayOfWeek.SUNDAY;
    }

    private static double[] chlorine(TankBelief belief) {
        double[] chlorine = new double[HOURS + 1];
        for (int h = 0; h <= HOURS && belief.chlorineMgPerL() > 0; h++) {
            chlorine[h] = belief.chlorineMgPerL()
                    * StrictMath.exp(-h / BeliefFilter.CHLORINE_HOURS);
        }
        return chlorine;
    }

    private static Stage[] stages(TankBelief belief) {
        Stage[] stages = new Stage[HOURS + 1];
        for (int h = 0; h <= HOURS; h++) {
            Instant at = belief.asOf().plus(Duration.ofHours(h));
            stages[h] = belief.development().stageAt(at);
        }
        return stages;
    }

    static double[] saturation(double elevationM) {
        double[] table = new double[WARMEST_C * SATURATION_PER_DEGREE + 2];
        for (int i = 0; i < table.length; i++) {
            table[i] = OxygenSaturation.mgPerL((double) i / SATURATION_PER_DEGREE, elevationM);
        }
        return table;
    }

    /** From a table, because it is asked for some ten thousand times; off by less than 0.01 %. */
    static double unIonisedShare(double phAbovePKa) {
        double place = between(0, SHARES.length - 2, (phAbovePKa - LOWEST_PH_ABOVE_PKA) * SHARES_PER_PH);
        int below = (int) place;
        return SHARES[below] + (place - below) * (SHARES[below + 1] - SHARES[below]);
    }

    private static double[] shares() {
        double[] shares = new double[20 * SHARES_PER_PH];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = 1 / (1 + StrictMath.pow(10, -(LOWEST_PH_ABOVE_PKA + (double) i / SHARES_PER_PH)));
        }
        return shares;
    }

    static double saturationAt(double[] table, double temperatureC) {
        double place = between(0, WARMEST_C, temperatureC) * SATURATION_PER_DEGREE;
        int below = (int) place;
        return table[below] + (place - below) * (table[below + 1] - table[below]);
    }

    /** Compared rather than asked of Math, which takes longer to tell zeros of either sign apart. */
    private static double between(double least, double most, double value) {
        if (value < least) {
            return least;
        }
        return value > most ? most : value;
    }
}
