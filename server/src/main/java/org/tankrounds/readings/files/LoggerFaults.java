package org.tankrounds.readings.files;

import java.math.BigDecimal;
import java.util.Optional;
import org.tankrounds.readings.files.SetAside.Why;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;
import org.tankrounds.water.Units;

/** Numbers by which a sensor says that it has none. */
public final class LoggerFaults {
    /** Of the most common digital thermometer, after it is switched on and before it measures (from memory). */
    private static final double POWER_ON_C = 85;
    /** What its usual driver says where the sensor does not answer (from memory). */
    private static final double DISCONNECTED_C = -127;
    /** A file in °F may have been rounded to a tenth. */
    private static final double NEARLY_C = 0.03;

    private LoggerFaults() {}

    /** Empty for a value that can be one. */
    public static Optional<Why> of(Analyte analyte, UnitForm form, BigDecimal value) {
        double canonical = Units.toCanonical(analyte, form, value.doubleValue(), Double.NaN);
        if (analyte == Analyte.TEMPERATURE && Math.abs(canonical - POWER_ON_C) < NEARLY_C) {
            return Optional.of(Why.POWER_ON);
        }
        if (analyte == Analyte.TEMPERATURE && Math.abs(canonical - DISCONNECTED_C) < NEARLY_C) {
            return Optional.of(Why.DISCONNECTED);
        }
        return analyte.possible().holds(canonical) ? Optional.empty() : Optional.of(Why.IMPOSSIBLE);
    }
}
