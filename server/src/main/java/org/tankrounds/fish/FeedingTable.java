package org.tankrounds.fish;

import java.util.OptionalDouble;

/**
 * Dry feed a day that trout grow fastest on, in % of their weight, by the water's temperature and their length.
 *
 * <p>Source: Leitritz and Lewis 1976, Trout and Salmon Culture, California Fish Bulletin 164, as copied by a
 * university's extension service. Straight lines between its temperatures; its length classes are taken as they stand.
 */
public final class FeedingTable {

    private static final double[] FAHRENHEIT = {36, 40, 45, 48, 50, 52, 54, 55, 58, 60};
    /** By length: below 1 inch, 1 to 2, 2 to 3, 3 to 4. */
    private static final double[][] PERCENT = {
        {2.7, 3.2, 4.0, 4.5, 5.2, 5.4, 5.8, 6.1, 7.0, 7.5},
        {2.2, 2.6, 3.3, 3.8, 4.3, 4.5, 4.9, 5.1, 5.8, 6.3},
        {1.7, 2.2, 2.7, 3.0, 3.4, 3.6, 3.9, 4.2, 4.8, 5.1},
        {1.3, 1.7, 2.1, 2.4, 2.7, 2.8, 3.0, 3.2, 3.6, 3.9}};
    /** What converting from °C may be off by, °F. */
    private static final double NEAR = 1e-6;

    private FeedingTable() {
    }

    /** The temperature of the table that is nearest to one, °C. */
    public static double nearest(double temperatureC) {
        double coldest = (FAHRENHEIT[0] - 32) / 1.8;
        double warmest = (FAHRENHEIT[FAHRENHEIT.length - 1] - 32) / 1.8;
        return Math.max(coldest, Math.min(warmest, temperatureC));
    }

    /**
     * % of the fish's weight a day; empty outside the table: colder than 36 °F (2.2 °C), warmer than 60 °F (15.6 °C),
     * 4 inches (102 mm) or longer.
     */
    public static OptionalDouble percentPerDay(double temperatureC, double lengthMm) {
        int lengthClass = (int) Math.floor(lengthMm / LengthWeight.MM_PER_INCH);
        double fahrenheit = temperatureC * 1.8 + 32;
        if (!(lengthMm > 0) || lengthClass >= PERCENT.length) {
            return OptionalDouble.empty();
        }
        for (int i = 1; i < FAHRENHEIT.length; i++) {
            if (fahrenheit >= FAHRENHEIT[i - 1] - NEAR && fahrenheit <= FAHRENHEIT[i] + NEAR) {
                double share = (fahrenheit - FAHRENHEIT[i - 1]) / (FAHRENHEIT[i] - FAHRENHEIT[i - 1]);
                double[] column = PERCENT[lengthClass];
                return OptionalDouble.of(column[i - 1] + share * (column[i] - column[i - 1]));
            }
        }
        return OptionalDouble.empty();
    }
}
