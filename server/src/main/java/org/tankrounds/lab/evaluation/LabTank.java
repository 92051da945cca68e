package org.tankrounds.lab.evaluation;

/**
 * Which tank of which season; or, by {@link #chapter}, which chapter.
 *
 * @param number in its season, from 0
 */
public record LabTank(String world, long seed, int number) {

    /** The chapter that it belongs to where chapters have so many tanks; with one each, the tank itself. */
    LabTank chapter(int tanks) {
        return new LabTank(world, seed, number / tanks);
    }
}
