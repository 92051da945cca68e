package org.tankrounds.demo;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;

/**
 * What an invented class wrote down.
 *
 * @param by how it signed
 * @param note empty for none
 */
record DemoReading(Instant measuredAt, String by, List<Value> values, String note) {

    /**
     * A number as written, in the unit and form that it was written in; 0 on a card means nothing was seen.
     *
     * @param step what the method tells apart; empty on a card, whose kit says it
     */
    record Value(Analyte analyte, BigDecimal value, UnitForm form, Optional<BigDecimal> step) {
        Value(Analyte analyte, BigDecimal value, UnitForm form) {
            this(analyte, value, form, Optional.empty());
        }

        Value withStep(String newStep) {
            return new Value(analyte, value, form, Optional.of(new BigDecimal(newStep)));
        }
    }
}
