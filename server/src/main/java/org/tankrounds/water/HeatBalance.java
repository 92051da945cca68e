package org.tankrounds.water;

/**
 * A tank without its chiller: {@code T(t) = Te − (Te − T0) e^(−t/τ)}, {@code Te = Troom + Q/UA}, {@code τ = M c / UA}.
 *
 * <p>Newton's law of cooling with c = 4186 J/kg/K and 1 kg per litre; holds while pumps keep the tank mixed and
 * the room steady. UA of a real tank shifts by tens of per cent with lid, wall, sun and evaporation.
 */
public final class HeatBalance {

    /** Heat capacity of water, J/kg/K. */
    public static final double WATER_J_PER_KG_K = 4186;
    /** Heat of melting of ice, J/kg. */
    public static final double ICE_J_PER_KG = 334_000;
    /** Heat capacity of ice below melting, J/kg/K. */
    public static final double FROZEN_J_PER_KG_K = 2100;

    private HeatBalance() {
    }

    /** The time constant τ in hours of a mass with a loss in W/K. */
    public static double timeConstantH(double massKg, double lossWPerK) {
        return massKg * WATER_J_PER_KG_K / lossWPerK / 3600;
    }

    /** Where the temperature ends: the room plus what the pumps add. */
    public static double endTemperatureC(double roomC, double pumpW, double lossWPerK) {
        return roomC + pumpW / lossWPerK;
    }

    /** Hours until a temperature between start and end is reached; infinite when it never is. */
    public static double hoursTo(double temperatureC, double startC, double endC, double timeConstantH) {
        double left = (endC - temperatureC) / (endC - startC);
        return left <= 0 ? Double.POSITIVE_INFINITY : -timeConstantH * StrictMath.log(left);
    }

    /** Kilograms of ice at 0 °C that cool a mass by so many degrees to an end temperature. */
    public static double iceToCoolKg(double massKg, double byK, double endC) {
        return massKg * WATER_J_PER_KG_K * byK / (ICE_J_PER_KG + WATER_J_PER_KG_K * endC);
    }

    /**
     * The other way round, and with ice that is so many kelvin colder than melting: where a mass ends, °C. Below 0
     * there is more ice than melts, and the number says no more than that.
     */
    public static double afterIceC(double massKg, double startC, double iceKg, double belowMeltingK) {
        return (massKg * WATER_J_PER_KG_K * startC - iceKg * (ICE_J_PER_KG + FROZEN_J_PER_KG_K * belowMeltingK))
                / ((massKg + iceKg) * WATER_J_PER_KG_K);
    }

    /** Kilograms of ice at 0 °C that hold a temperature against a room for some hours. */
    public static double iceToHoldKg(
            double lossWPerK, double roomC, double holdC, double hours) {
        return Math.max(0, lossWPerK * (roomC - holdC) * hours * 3600)
                / (ICE_J_PER_KG + WATER_J_PER_KG_K * holdC);
    }
}
