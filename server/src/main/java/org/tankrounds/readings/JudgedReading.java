package org.tankrounds.readings;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tankrounds.water.Analyte;

/**
 * A reading that can be stored if no faults were found.
 *
 * @param unlikely analytes whose value a classroom tank hardly shows and that nobody confirmed yet
 */
record JudgedReading(
        Instant measuredAt, Optional<String> by, Optional<String> note, List<EnteredValue> values,
        List<Measured> measured, List<String> flags, Set<Analyte> unlikely) {

    /** The clock that told it is wrong, or the day is. */
    boolean timeDoubtful() {
        return flags.contains(Judge.TIME_DOUBTFUL);
    }
}
