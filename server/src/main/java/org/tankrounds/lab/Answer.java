package org.tankrounds.lab;

/**
 * What was said of a tank one morning, and what came of it.
 *
 * @param morning hour of the year
 * @param tank its number in the season
 * @param chance said
 * @param exposure said, fish-hours
 * @param beyond whether it came true
 * @param harm true exposure, fish-hours
 */
public record Answer(int morning, int tank, double chance, double exposure, boolean beyond, double harm) {
}
