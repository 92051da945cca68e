package org.tankrounds.readings;

import org.tankrounds.water.Analyte;

/**
 * What the engine will take in of one value.
 *
 * @param value in the analyte's canonical unit
 * @param halfStep half of what the method can tell apart, canonical unit; 0 where unknown
 * @param flags bits of {@link ObservationRepository}
 */
record Measured(Analyte analyte, float value, float halfStep, short flags) {

    /** It stays marked as unlikely, or its time is in doubt. */
    boolean isDoubtful() {
        return (flags & ObservationRepository.DOUBTFUL) != 0;
    }
}
