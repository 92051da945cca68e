package org.tankrounds.belief;

/**
 * What a reading says: the true value lies between two ends.
 *
 * <p>A colour card's reading reaches to the midpoints between neighbouring colours, so the standard deviation is
 * the step over √12; its lowest colour means "below half the first step above it", never zero.
 *
 * @param low canonical unit, never below 0
 * @param high canonical unit
 */
record Interval(double low, double high) {

    private static final double SQRT_12 = Math.sqrt(12);

    /** The interval of a concentration's reading; {@code usualHalfStep} where its own is unknown. */
    static Interval of(Observation reading, double usualHalfStep) {
        double half = reading.halfStep() > 0 ? reading.halfStep() : usualHalfStep;
        if (reading.below() && reading.value() > 0) {
            return new Interval(0, reading.value());
        }
        return new Interval(Math.max(0, reading.value() - half), Math.max(0, reading.value()) + half);
    }

    /** Standard deviation of a value that may lie anywhere between the ends. */
    double sd() {
        return (high - low) / SQRT_12;
    }
}
