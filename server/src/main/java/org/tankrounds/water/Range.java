package org.tankrounds.water;

/** A closed range of values in an analyte's canonical unit. */
public record Range(double min, double max) {

    public Range {
        if (!(min <= max)) {
            throw new IllegalArgumentException("range from " + min + " to " + max + " is empty");
        }
    }

    /** The value that lies in the range and nearest to a value. */
    public double nearest(double value) {
        return Math.min(max, Math.max(min, value));
    }

    /** False for NaN, which lies in no range. */
    public boolean holds(double value) {
        return value >= min && value <= max;
    }
}
