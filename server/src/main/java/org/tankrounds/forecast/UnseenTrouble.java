package org.tankrounds.forecast;

import java.time.Duration;
import java.time.Instant;
import org.tankrounds.belief.RecentDeaths;

/**
 * Trouble that no reading shows, such as a night without air, told by more dead within a day than illness or handling
 * take. Simulated seasons hold too few such days to learn from; all figures are the project's choice.
 */
final class UnseenTrouble {

    /** What it comes to, hours at twice a limit. */
    static final double EXCESS_HOURS = 6;
    /** Illness takes so much of the fish in a day. */
    private static final double OTHER_CAUSE_SHARE = 0.03;
    /** From so much more on it is as likely as not that the water has been bad, and still is. */
    private static final double TELLING_SHARE = 0.1;
    private static final double MOST = 0.5;
    /** Nobody has been there since: in this time it comes to an end, one way or another, to 1/e. */
    private static final double LASTS_HOURS = 24;

    private UnseenTrouble() {
    }

    /** Never less for more dead. */
    static double chance(RecentDeaths found, Instant asOf) {
        double share = found.mostInADay() / (double) Math.max(1, found.alive() + found.mostInADay());
        double telling = Math.min(1, Math.max(0, share - OTHER_CAUSE_SHARE) / TELLING_SHARE);
        double hours = found.newest().map(at -> Duration.between(at, asOf).toMinutes() / 60.0).orElse(0.0);
        return MOST * telling * StrictMath.exp(-hours / LASTS_HOURS);
    }
}
