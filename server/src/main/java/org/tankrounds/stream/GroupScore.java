package org.tankrounds.stream;

import java.util.Map;

/**
 * The sum of a weight for every kind found, by its sensitivity and by how many there are of it: rare up to 9, common up
 * to 99, dominant from 100.
 *
 * <p>Source: US EPA 1997, Volunteer Stream Monitoring, EPA 841-B-97-003; weights and classes are from memory.
 *
 * @param tenths ten times the score, which so has no error of rounding
 */
public record GroupScore(int tenths) {

    public enum Water {
        GOOD, FAIR, POOR
    }

    /** How many there are of a kind. */
    public enum Abundance {
        RARE, COMMON, DOMINANT;

        private static final int FROM_COMMON = 10;
        private static final int FROM_DOMINANT = 100;

        /** @throws IllegalArgumentException below 1 */
        public static Abundance of(int animals) {
            if (animals < 1) {
                throw new IllegalArgumentException("a kind that was found has at least 1, was " + animals);
            }
            return animals < FROM_COMMON ? RARE : animals < FROM_DOMINANT ? COMMON : DOMINANT;
        }
    }

    /** By sensitivity, then by abundance, in tenths. */
    private static final int[][] WEIGHT_TENTHS = {{50, 56, 53}, {32, 34, 30}, {12, 11, 10}};
    private static final int MORE_THAN_FAIR_TENTHS = 400;
    private static final int LEAST_FAIR_TENTHS = 200;

    /** @param animals of each kind that was found */
    public static GroupScore of(Map<Kind, Integer> animals) {
        int tenths = 0;
        for (Map.Entry<Kind, Integer> kind : animals.entrySet()) {
            tenths += weightTenths(kind.getKey().sensitivity(), Abundance.of(kind.getValue()));
        }
        return new GroupScore(tenths);
    }

    static int weightTenths(Sensitivity sensitivity, Abundance abundance) {
        return WEIGHT_TENTHS[sensitivity.ordinal()][abundance.ordinal()];
    }

    public double value() {
        return tenths / 10.0;
    }

    public Water water() {
        return tenths > MORE_THAN_FAIR_TENTHS ? Water.GOOD : tenths >= LEAST_FAIR_TENTHS ? Water.FAIR : Water.POOR;
    }
}
