package org.tankrounds.readings;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tankrounds.water.Analyte;

/**
 * What was sent, as far as it could be read; not judged yet.
 *
 * @param measuredAt empty where it was missing or unreadable, which is already among the faults
 * @param by empty where none was given
 * @param note empty where none was given
 */
record GivenReading(
        Optional<Instant> measuredAt, Optional<String> by, Optional<String> note, List<GivenValue> values) {

    /**
     * @param at JSON pointer, or the form's field
     * @param as empty where the writer left it out
     */
    record GivenValue(
            String at, Analyte analyte, BigDecimal value, String unit, Optional<String> as,
            Optional<BigDecimal> step, boolean below) {}
}
