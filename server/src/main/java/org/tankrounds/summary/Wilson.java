package org.tankrounds.summary;

/**
 * How far chance alone could move a share: the score interval, 95 %, without continuity correction.
 *
 * <p>{@code (p + z²/2n ± z·√(p(1−p)/n + z²/4n²)) / (1 + z²/n)}. Source: Wilson 1927, J. Am. Stat. Assoc. 22:209–212.
 *
 * @param low and high, from 0 to 1
 */
public record Wilson(double low, double high) {
    private static final double Z = 1.959963984540054;

    /** @throws IllegalArgumentException unless 0 ≤ successes ≤ trials and trials > 0 */
    public static Wilson of(int successes, int trials) {
        if (trials <= 0 || successes < 0 || successes > trials) {
            throw new IllegalArgumentException("no share of " + trials + " are " + successes);
        }
        double n = trials;
        double p = successes / n;
        double centre = p + Z * Z / (2 * n);
        double spread = Z * Math.sqrt(p * (1 - p) / n + Z * Z / (4 * n * n));
        double scale = 1 + Z * Z / n;
        return new Wilson(Math.max(0, (centre - spread) / scale), Math.min(1, (centre + spread) / scale));
    }
}
