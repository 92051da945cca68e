package org.tankrounds.water;

/** The digits with which a number is kept: seven, those of a binary single. No test can tell more than four. */
public final class Digits {
    private static final double SEVEN_DIGITS_FROM = 1e6;

    private Digits() {
    }

    /**
     * A number as it comes back once it was kept: the decimal that somebody may have written, 80.3 and not
     * 80.30000305.
     *
     * @param number finite, in any unit
     */
    public static double kept(double number) {
        double single = (float) number;
        if (single == 0) {
            return 0;
        }
        double scale = 1;
        while (Math.abs(single) * scale < SEVEN_DIGITS_FROM) {
            scale *= 10;
        }
        return Math.rint(single * scale) / scale;
    }
}
