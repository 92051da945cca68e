package org.tankrounds.belief;

import java.util.List;
import java.util.Optional;

/**
 * What is held of the temperature at a moment: equally likely states, sorted from cold to warm. Arrays by
 * state; do not change them.
 *
 * @param nowC temperature now
 * @param heldC what the chiller holds when it runs
 * @param endC where the temperature goes when it stands
 * @param timeConstantH how fast
 * @param stopped whether the chiller stands, or no longer keeps up
 * @param stoppedChance share of the states with the chiller standing
 * @param readings those that fit, oldest first, mixed-up scales already set right
 * @param setAside the newest reading, if it fits nothing that is held
 */
public record TemperatureBelief(
        double[] nowC, double[] heldC, double[] endC, double[] timeConstantH, boolean[] stopped,
        double stoppedChance, List<Observation> readings, Optional<Observation> setAside) {

    /** So many states. */
    public static final int STATES = 400;

    /** More likely than not, the chiller stands. */
    public static final double LIKELY = 0.5;

    public boolean likelyStands() {
        return stoppedChance > LIKELY;
    }

    /** The most likely temperature now. */
    public double medianC() {
        return nowC[nowC.length / 2];
    }

    /** The newest reading that fitted. */
    public Optional<Observation> newest() {
        return readings.isEmpty() ? Optional.empty() : Optional.of(readings.get(readings.size() - 1));
    }
}
