package org.tankrounds.water;

/**
 * Dissolved oxygen of fresh water in equilibrium with moist air, mg/L.
 *
 * <p>{@code ln C0 = −139.34411 + 1.575701e5/K − 6.642308e7/K² + 1.243800e10/K³ − 8.621949e11/K⁴} at 1 atm;
 * away from it times {@code (P − u)(1 − θP) / ((1 − u)(1 − θ))} with the water vapour pressure u and θ.
 *
 * <p>Source: Benson and Krause 1984, Limnol. Oceanogr. 29:620–632, in the form of APHA 4500-O; pressure by
 * elevation from the standard atmosphere. Valid from 0 to 40 °C and 0.5 to 1.1 atm: temperatures and
 * elevations beyond are taken at the edge, because a mistyped one must not stop a forecast.
 */
public final class OxygenSaturation {

    private OxygenSaturation() {
    }

    /** Saturation at a height above the sea, by the standard atmosphere. */
    public static double mgPerL(double temperatureC, double elevationM) {
        return mgPerLAtPressure(temperatureC, pressureAtm(elevationM));
    }

    /** Saturation at a station pressure in atmospheres (not reduced to sea level). */
    public static double mgPerLAtPressure(double temperatureC, double pressureAtm) {
        double t = Math.min(40, Math.max(0, temperatureC));
        double p = Math.min(1.1, Math.max(0.5, pressureAtm));
        double k = t + 273.15;
        double atOneAtm = StrictMath.exp(-139.34411 + 1.575701e5 / k - 6.642308e7 / (k * k)
                + 1.243800e10 / (k * k * k) - 8.621949e11 / (k * k * k * k));
        double vapourAtm = StrictMath.exp(11.8571 - 3840.70 / k - 216961 / (k * k));
        double theta = 0.000975 - 1.426e-5 * t + 6.436e-8 * t * t;
        return atOneAtm * (p - vapourAtm) * (1 - theta * p) / ((1 - vapourAtm) * (1 - theta));
    }

    /** Pressure of the standard atmosphere at a height in metres, atm. */
    public static double pressureAtm(double elevationM) {
        return StrictMath.pow(1 - 2.25577e-5 * elevationM, 5.25588);
    }
}
