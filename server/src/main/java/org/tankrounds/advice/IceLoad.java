package org.tankrounds.advice;

import org.tankrounds.belief.ChillerFailure;
import org.tankrounds.tankmodel.TankParameters;
import org.tankrounds.water.HeatBalance;

/**
 * Ice in sealed bottles for a tank without its chiller: what is carried in at once, and what half a day takes. Masses
 * in kg of ice at 0 °C, by {@link HeatBalance}; the room is {@link ChillerFailure#ROOM_C}, the walls are bare glass.
 */
final class IceLoad {

    /** What an adult carries in, and a bucket or two hold in bottles (common practice, no source). */
    private static final double MOST_KG = 10;
    /** A tank has no room for more bottles (common practice, no source). */
    private static final double MOST_KG_PER_L = 0.1;
    /** Ice is meant to last half a day. */
    private static final double HOURS = 12;

    private static final double BELOW_LIMIT_K = 1;

    private IceLoad() {
    }

    /** What the water is held at, °C: a little below its limit. */
    static double holdC(double limitC) {
        return limitC - BELOW_LIMIT_K;
    }

    /** The most at once. */
    static double mostKg(double volumeL) {
        return Math.min(MOST_KG, MOST_KG_PER_L * volumeL);
    }

    /** Down to what is to be held, then against the room. */
    static double neededKg(double volumeL, double tooWarmK, double holdC) {
        return HeatBalance.iceToCoolKg(volumeL, tooWarmK, holdC) + HeatBalance.iceToHoldKg(
                TankParameters.bareGlassWPerK(volumeL), ChillerFailure.ROOM_C, holdC, HOURS);
    }
}
