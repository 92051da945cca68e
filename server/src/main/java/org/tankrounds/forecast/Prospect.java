package org.tankrounds.forecast;

/**
 * What a deed is expected to do, and what it risks.
 *
 * @param newlyBeyond probability that it brings a tank beyond a limit that would have stayed within all
 */
public record Prospect(Effect effect, double newlyBeyond) {
}
