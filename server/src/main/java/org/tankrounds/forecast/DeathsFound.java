package org.tankrounds.forecast;

import org.tankrounds.belief.RecentDeaths;

/**
 * What the deaths of the last days say of the water. A geometric count about an expected number, because deaths come
 * in clusters. All figures are the project's choice.
 *
 * @param deaths as counted
 * @param usualPerFishDay losses of healthy fish
 * @param perExcess added per unit of u beyond a limit, summed over the limits
 */
record DeathsFound(RecentDeaths deaths, double usualPerFishDay, double perExcess) {

    private static final int MOST_COUNTED = 30;
    private static final double MOST_EXCESS = 3;
    /** Trouble that no reading shows, such as a night without air: how often, and what it means. */
    private static final double UNSEEN_CHANCE = 0.01;
    private static final double UNSEEN_EXCESS = 1;
    /** Illness or handling: how often, and the share of the fish it takes. */
    private static final double OTHER_CAUSE = 0.05;
    private static final double OTHER_CAUSE_SHARE = 0.03;

    /** How likely so many deaths are in water so far beyond its limits. */
    double likelihood(double excess) {
        double fishDays = Math.max(1, deaths.alive()) * deaths.overHours() / 24;
        return ofExpected(fishDays * (usualPerFishDay + perExcess * Math.min(MOST_EXCESS, excess)));
    }

    /** How much likelier they make trouble that no reading shows. @param asRead their mean likelihood otherwise */
    double unseenChance(double asRead) {
        double seen = (1 - OTHER_CAUSE) * asRead
                + OTHER_CAUSE * ofExpected(OTHER_CAUSE_SHARE * Math.max(1, deaths.alive()));
        double unseen = UNSEEN_CHANCE * likelihood(UNSEEN_EXCESS);
        return Math.max(0, unseen / (unseen + (1 - UNSEEN_CHANCE) * seen) - UNSEEN_CHANCE);
    }

    private double ofExpected(double expected) {
        double stay = expected / (1 + expected);
        return (1 - stay) * StrictMath.pow(stay, Math.min(deaths.count(), MOST_COUNTED));
    }
}
