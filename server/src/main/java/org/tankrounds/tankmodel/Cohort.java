package org.tankrounds.tankmodel;

import org.tankrounds.fish.GrowthAhead;

/**
 * Fish of one age in a tank: they began to feed together, and are alike in size.
 *
 * @param fish how many; above 0
 */
public record Cohort(GrowthAhead growth, int fish) {

    public Cohort {
        if (fish <= 0) {
            throw new IllegalArgumentException("no fish: " + fish);
        }
    }
}
