package org.tankrounds.rounds;

import java.time.Instant;

/**
 * One point of a series.
 *
 * @param notDetected drawn hollow: the truth lies somewhere below
 * @param readings how many it is the mean of; a reading by itself is drawn as a dot
 */
record SeriesPoint(Instant at, double value, boolean notDetected, int readings) {

    SeriesPoint(Instant at, double value, boolean notDetected) {
        this(at, value, notDetected, 1);
    }

    boolean isMean() {
        return readings > 1;
    }
}
