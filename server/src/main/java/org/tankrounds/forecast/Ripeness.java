package org.tankrounds.forecast;

import org.tankrounds.belief.TankBelief;

/**
 * How far a filter's two guilds of bacteria have come, as far as ammonia and nitrite tell. Thresholds: the middle
 * between a ripening and a ripe tank (common practice, no source).
 */
public enum Ripeness {
    /** Nothing feeds yet, so there is little to live on. */
    UNFED,
    /** Ammonia is not kept down: the filter is young, or gets more than it takes. */
    BEHIND,
    /** Ammonia is kept down, the nitrite made of it is not. */
    HALF_RIPE,
    /** Both are kept down: it keeps up with the feed. */
    RIPE;

    private static final double AMMONIA_KEPT_DOWN_MG_PER_L = 0.35;
    private static final double NITRITE_KEPT_DOWN_MG_PER_L = 0.10;

    static Ripeness of(TankBelief belief) {
        return of(belief.development().daysFeedingAt(belief.asOf()), belief.totalAmmonia().valueNow(),
                belief.nitrite().valueNow());
    }

    /**
     * @param daysFeeding since first feeding; negative before
     * @param totalAmmoniaMgPerL mg N/L
     * @param nitriteMgPerL mg N/L
     */
    static Ripeness of(double daysFeeding, double totalAmmoniaMgPerL, double nitriteMgPerL) {
        if (totalAmmoniaMgPerL >= AMMONIA_KEPT_DOWN_MG_PER_L) {
            return BEHIND;
        }
        if (nitriteMgPerL >= NITRITE_KEPT_DOWN_MG_PER_L) {
            return HALF_RIPE;
        }
        return daysFeeding < 0 ? UNFED : RIPE;
    }
}
