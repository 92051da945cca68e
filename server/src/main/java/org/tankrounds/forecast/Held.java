package org.tankrounds.forecast;

import java.util.Arrays;
import org.tankrounds.belief.TankBelief;
import org.tankrounds.belief.TemperatureBelief;

/**
 * What a forecast takes for true of its tank beside the readings themselves.
 *
 * @param setPointC what the chiller holds when it runs, °C
 * @param stoppedChance probability that it stands or no longer keeps up
 * @param totalAmmoniaMgPerL most likely now, mg N/L
 * @param nitriteMgPerL most likely now, mg N/L
 * @param filter how far it has come
 * @param chlorideMgPerL that the nitrite limit is taken at
 * @param changesPerWeek water changes expected, if the class goes on as in the last four weeks
 * @param changeShare share of the volume that each replaces, 0 to 1
 */
public record Held(double setPointC, double stoppedChance, double totalAmmoniaMgPerL, double nitriteMgPerL,
        Ripeness filter, double chlorideMgPerL, double changesPerWeek, double changeShare) {

    private static final int SCHOOL_DAYS_PER_WEEK = 5;

    static Held of(TankBelief belief) {
        return new Held(medianSetPointC(belief.temperature()), belief.temperature().stoppedChance(),
                belief.totalAmmonia().valueNow(), belief.nitrite().valueNow(), Ripeness.of(belief),
                belief.chlorideMgPerL(), SCHOOL_DAYS_PER_WEEK * belief.routine().perSchoolDay(),
                belief.routine().share());
    }

    private static double medianSetPointC(TemperatureBelief temperature) {
        double[] sorted = temperature.heldC().clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
