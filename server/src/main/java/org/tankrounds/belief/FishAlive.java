package org.tankrounds.belief;

import java.time.Duration;
import java.util.List;

/**
 * How many of a lot live, by the dead that were counted. Nothing else judges a count, and one slip of the pen (90 for
 * 9) would make bad water look harmless for the rest of the season. So one count takes half of those then alive at
 * most, unless another large one about that time bears it out; and more than there ever were nobody can have counted.
 * All figures are the project's choice.
 */
final class FishAlive {

    /** While a class keeps a tank some of its fish live, whatever the counts add up to. */
    private static final double LEAST_SHARE = 0.05;
    private static final double MOST_OF_ONE_COUNT = 0.5;
    private static final double LARGE_SHARE = 0.25;
    private static final Duration ABOUT_THAT_TIME = Duration.ofDays(7);

    private final List<Observation> counts;
    private final SecondLooks secondLooks;
    private double alive;

    private FishAlive(int eggs, List<Observation> deaths, SecondLooks secondLooks) {
        counts = deaths;
        this.secondLooks = secondLooks;
        alive = eggs;
    }

    /** @param deaths oldest first */
    static int of(int eggs, List<Observation> deaths, SecondLooks secondLooks) {
        return new FishAlive(eggs, deaths.stream().filter(count -> count.value() <= eggs).toList(), secondLooks)
                .left(eggs);
    }

    /** The same where a count of more than there ever were is of all: for what the dead say of the water. */
    static int shouldAllBeRight(int eggs, List<Observation> deaths, SecondLooks secondLooks) {
        return new FishAlive(eggs, deaths.stream().map(count -> count.value() <= eggs ? count
                : new Observation(count.at(), count.analyte(), eggs, 0, false, true)).toList(), secondLooks).left(eggs);
    }

    private int left(int eggs) {
        counts.forEach(this::take);
        return (int) Math.max(Math.ceil(eggs * LEAST_SHARE), alive);
    }

    private void take(Observation count) {
        double half = alive * MOST_OF_ONE_COUNT;
        alive -= count.value() <= half || isBorneOut(count) ? Math.min(alive, count.value()) : half;
    }

    private boolean isBorneOut(Observation count) {
        return counts.stream().anyMatch(other -> other.value() >= LARGE_SHARE * alive
                && secondLooks.areTwo(other, count)
                && Duration.between(count.at(), other.at()).abs().compareTo(ABOUT_THAT_TIME) <= 0);
    }
}
