package org.tankrounds.lab.evaluation;

/** A score, NaN where there is none, and the span of 95 of 100 resamplings. */
record Estimate(double value, double low, double high) {
}
