package org.tankrounds.lab;

/**
 * How often what was seen so seldom may come about at most.
 *
 * <p>Source: Clopper and Pearson 1934, Biometrika 26:404–413, the upper end of the exact interval of 95 %: the
 * chance at which so few of so many, or fewer, come about once in forty times. Trials that are alike know less.
 */
final class ClopperPearson {

    private static final double TAIL = 0.025;
    private static final int BISECTIONS = 50;

    private ClopperPearson() {
    }

    /** Of none of none, 1. */
    static double upper(long hits, long trials) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < BISECTIONS && hits < trials; i++) {
            double middle = (low + high) / 2;
            boolean isLikely = atMost(hits, trials, middle) > TAIL;
            low = isLikely ? middle : low;
            high = isLikely ? high : middle;
        }
        return high;
    }

    /** The chance of at most so many hits. */
    private static double atMost(long hits, long trials, double chance) {
        double logOfOne = trials * StrictMath.log1p(-chance);
        double sum = StrictMath.exp(logOfOne);
        for (long i = 1; i <= hits; i++) {
            logOfOne += StrictMath.log((trials - i + 1.0) / i) + StrictMath.log(chance) - StrictMath.log1p(-chance);
            sum += StrictMath.exp(logOfOne);
        }
        return sum;
    }
}
