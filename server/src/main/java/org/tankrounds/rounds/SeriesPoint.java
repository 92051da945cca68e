package org.tankrounds.rounds;

import java.time.Instant;

/**
 * One dot of a series.
 *
 * @param notDetected drawn hollow: the truth lies somewhere below
 */
record SeriesPoint(Instant at, double value, boolean notDetected) {}
