package org.tankrounds.readings;

import java.math.BigDecimal;
import java.util.Optional;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;

/**
 * One value as somebody wrote it down; everything computed is derived from it.
 *
 * @param form unit and what the number counts; on the class's form, as the kit counts
 * @param step what the method can tell apart at this value, same unit; empty where not given
 * @param below the writer says that it was not detected
 */
public record EnteredValue(
        Analyte analyte, BigDecimal value, UnitForm form, Optional<BigDecimal> step, boolean below) {}
