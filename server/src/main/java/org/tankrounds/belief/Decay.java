package org.tankrounds.belief;

/** What is left after so many time constants, from a table: off by less than 0.004 % of itself. */
final class Decay {

    private static final int PER_UNIT = 64;
    private static final int LONGEST = 40;
    private static final double[] LEFT = new double[LONGEST * PER_UNIT + 2];

    static {
        for (int i = 0; i < LEFT.length; i++) {
            LEFT[i] = StrictMath.exp(-(double) i / PER_UNIT);
        }
    }

    private Decay() {
    }

    /** e^(−constants); nothing is left after 40. @param constants 0 or more */
    static double after(double constants) {
        if (!(constants < LONGEST)) {
            return 0;
        }
        double place = constants * PER_UNIT;
        int below = (int) place;
        return LEFT[below] + (place - below) * (LEFT[below + 1] - LEFT[below]);
    }
}
