package org.tankrounds.forecast;

/** Quantiles of a series at one time ahead; {@code q05} is the level that 1 path in 20 stays below. */
public record FanPoint(
        double hours, double q05, double q25, double q50, double q75, double q95) {
}
