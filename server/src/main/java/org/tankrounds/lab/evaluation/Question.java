package org.tankrounds.lab.evaluation;

/**
 * A tank on a morning, and what came of it in the 72 hours after.
 *
 * @param morning hour of the year
 * @param beyond whether its water was beyond a limit for two hours or more
 * @param harm true exposure, fish-hours
 */
public record Question(LabTank tank, int morning, boolean beyond, double harm) {
}
