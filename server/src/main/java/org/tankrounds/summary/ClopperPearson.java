package org.tankrounds.summary;

import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * How far chance alone could move a share: the exact interval, at least 95 %, which is wider than {@link Wilson}'s.
 *
 * <p>Low is the beta quantile of 0.025 at (k, n − k + 1), high that of 0.975 at (k + 1, n − k). Source: Clopper &
 * Pearson 1934, Biometrika 26:404–413.
 *
 * @param low and high, from 0 to 1
 */
record ClopperPearson(double low, double high) {
    private static final double TAIL = 0.025;

    /** @throws IllegalArgumentException unless 0 ≤ successes ≤ trials and trials > 0 */
    static ClopperPearson of(int successes, int trials) {
        if (trials <= 0 || successes < 0 || successes > trials) {
            throw new IllegalArgumentException("no share of " + trials + " are " + successes);
        }
        int others = trials - successes;
        double low = successes == 0 ? 0 : BetaDistribution.of(successes, others + 1.0)
                .inverseCumulativeProbability(TAIL);
        double high = others == 0 ? 1 : BetaDistribution.of(successes + 1.0, others)
                .inverseSurvivalProbability(TAIL);
        return new ClopperPearson(low, high);
    }
}
