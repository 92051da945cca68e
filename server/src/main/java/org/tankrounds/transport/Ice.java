package org.tankrounds.transport;

import org.tankrounds.water.HeatBalance;

/**
 * Ice in sealed bottles for water on the way, in kg, by {@link HeatBalance}; one litre counts as one kilogram.
 *
 * <p>The walls are those of a foam box; films and conductivity are textbook values (from memory), and lid, sun and an
 * opened box shift the loss by tens of per cent.
 */
public final class Ice {

    /** Of a household freezer, °C. */
    public static final double FREEZER_C = -18;
    /** Of ice that melts, °C. */
    public static final double MELTING_C = 0;

    /** W/m²/K from water to the wall (from memory). */
    private static final double INNER_FILM_W_PER_M2_K = 200;
    /** W/m²/K from the wall to the room, radiation included (from memory). */
    private static final double OUTER_FILM_W_PER_M2_K = 8;
    /** Expanded foam, W/m/K (from memory). */
    private static final double FOAM_W_PER_M_K = 0.030;

    private Ice() {
    }

    /**
     * Where water ends once ice in it has melted and warmed to the same temperature, °C, as if nothing came in from
     * outside meanwhile; {@link #MELTING_C} where not all of it melts.
     *
     * @param waterL above 0
     * @param fromC of the water, °C; {@link #MELTING_C} or above
     * @param iceKg 0 or more
     * @param iceC of the ice when it goes in, °C; {@link #MELTING_C} or below
     * @throws IllegalArgumentException outside these
     */
    public static double afterC(double waterL, double fromC, double iceKg, double iceC) {
        if (!(waterL > 0) || !(fromC >= MELTING_C) || !(iceKg >= 0) || !(iceC <= MELTING_C)) {
            throw new IllegalArgumentException("no " + iceKg + " kg of ice of " + iceC + " °C in " + waterL + " L of "
                    + fromC + " °C");
        }
        return Math.max(MELTING_C, HeatBalance.afterIceC(waterL, fromC, iceKg, -iceC));
    }

    /** Holds a temperature against what is outside for some hours; 0 where that is colder. */
    public static double toHoldKg(double lossWPerK, double outsideC, double holdC, double hours) {
        return HeatBalance.iceToHoldKg(lossWPerK, outsideC, holdC, hours);
    }

    /** Heat that comes into a foam box per kelvin that it is warmer outside, W/K. */
    public static double foamBoxLossWPerK(double surfaceM2, double foamMm) {
        return surfaceM2
                / (1 / INNER_FILM_W_PER_M2_K + foamMm / 1000 / FOAM_W_PER_M_K + 1 / OUTER_FILM_W_PER_M2_K);
    }
}
