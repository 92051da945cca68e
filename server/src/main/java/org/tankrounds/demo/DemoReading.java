package org.tankrounds.demo;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;

/**
 * What an invented class wrote down.
 *
 * @param by how it signed
 * @param note empty for none
 */
record DemoReading(Instant measuredAt, String by, List<Value> values, String note) {

    /** A number as written, in the unit and form that it was written in; 0 on a card means nothing was seen. */
    record Value(Analyte analyte, BigDecimal value, UnitForm form) {}
}
