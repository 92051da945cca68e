package org.tankrounds.water;

/**
 * Conversion between the units and forms that people write and the canonical ones of the core.
 *
 * <p>Speciation factors from the atomic masses N 14.0067, H 1.00794, O 15.9994. One German degree is
 * 17.848 mg/L CaCO3 (definition). Oxygen in % of saturation needs the water's temperature.
 */
public final class Units {

    /** mg N per mg NH3. */
    public static final double N_PER_NH3 = 14.0067 / (14.0067 + 3 * 1.00794);
    /** mg N per mg NH4+. */
    public static final double N_PER_NH4 = 14.0067 / (14.0067 + 4 * 1.00794);
    /** mg N per mg NO2-. */
    public static final double N_PER_NO2 = 14.0067 / (14.0067 + 2 * 15.9994);
    /** mg N per mg NO3-. */
    public static final double N_PER_NO3 = 14.0067 / (14.0067 + 3 * 15.9994);
    /** mg/L CaCO3 per German degree. */
    public static final double CACO3_PER_GERMAN_DEGREE = 17.848;
    /** Temperatures at which oxygen in % can be taken, °C. */
    public static final Range WATER_WITH_FISH_C = new Range(0, 40);
    /** Taken for oxygen in % where no temperature is known, or none that water with fish can have. */
    public static final double TEMPERATURE_C_WHERE_UNKNOWN = 10;

    /** Litres per US gallon (definition: 231 cubic inches). */
    private static final double L_PER_US_GALLON = 3.785411784;

    private Units() {
    }

    /** US gallons of so many litres. */
    public static double usGallons(double litres) {
        return litres / L_PER_US_GALLON;
    }

    /** As {@link #toCanonical(Analyte, UnitForm, double, double, double)} at sea level. */
    public static double toCanonical(
            Analyte analyte, UnitForm form, double value, double waterTemperatureC) {
        return toCanonical(analyte, form, value, waterTemperatureC, 0);
    }

    /**
     * The value in the analyte's canonical unit.
     *
     * @param waterTemperatureC used for oxygen in % only; NaN for unknown
     * @param elevationM height above the sea, used for oxygen in % only
     * @throws IllegalArgumentException when the analyte does not accept the unit and form
     */
    public static double toCanonical(Analyte analyte, UnitForm form, double value,
            double waterTemperatureC, double elevationM) {
        if (form.unit().equals("[degF]")) {
            requireAccepted(analyte, form);
            return (value - 32) / 1.8;
        }
        return value * factor(analyte, form, waterTemperatureC, elevationM);
    }

    /** The inverse of {@link #toCanonical(Analyte, UnitForm, double, double, double)}. */
    public static double fromCanonical(Analyte analyte, UnitForm form, double canonical,
            double waterTemperatureC, double elevationM) {
        if (form.unit().equals("[degF]")) {
            requireAccepted(analyte, form);
            return canonical * 1.8 + 32;
        }
        return canonical / factor(analyte, form, waterTemperatureC, elevationM);
    }

    /** A method's step (a difference, so without the thermometer's offset) in the canonical unit. */
    public static double stepToCanonical(Analyte analyte, UnitForm form, double step,
            double waterTemperatureC, double elevationM) {
        if (form.unit().equals("[degF]")) {
            requireAccepted(analyte, form);
            return step / 1.8;
        }
        return step * factor(analyte, form, waterTemperatureC, elevationM);
    }

    private static double factor(
            Analyte analyte, UnitForm form, double waterTemperatureC, double elevationM) {
        requireAccepted(analyte, form);
        if (analyte == Analyte.DISSOLVED_OXYGEN && form.unit().equals("%")) {
            double temperatureC = WATER_WITH_FISH_C.holds(waterTemperatureC)
                    ? waterTemperatureC : TEMPERATURE_C_WHERE_UNKNOWN;
            return OxygenSaturation.mgPerL(temperatureC, elevationM) / 100;
        }
        if (form.unit().equals("[dH]")) {
            return CACO3_PER_GERMAN_DEGREE;
        }
        return switch (form.as()) {
            case "NH3" -> N_PER_NH3;
            case "NH4" -> N_PER_NH4;
            case "NO2" -> N_PER_NO2;
            case "NO3" -> N_PER_NO3;
            default -> 1;
        };
    }

    private static void requireAccepted(Analyte analyte, UnitForm form) {
        if (!analyte.accepts(form)) {
            throw new IllegalArgumentException(analyte.code() + " in '" + form.spelling()
                    + "' is not accepted; accepted: " + analyte.acceptedSpelling());
        }
    }
}
