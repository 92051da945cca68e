package org.tankrounds.fish;

import java.time.Instant;

/**
 * Between which moments something is to be expected.
 *
 * @param expected the most likely one
 * @param seen it was seen: then the three are one
 */
public record DateWindow(Instant earliest, Instant expected, Instant latest, boolean seen) {

    /** @throws IllegalArgumentException unless they come in this order */
    public DateWindow {
        if (expected.isBefore(earliest) || latest.isBefore(expected)) {
            throw new IllegalArgumentException(earliest + ", " + expected + " and " + latest + " are not in order");
        }
    }

    /** Something that was seen. */
    public static DateWindow ofSeen(Instant at) {
        return new DateWindow(at, at, at, true);
    }

    public boolean isPastAt(Instant moment) {
        return !latest.isAfter(moment);
    }

    /** Bounds may have crossed where several of them were drawn together. */
    static DateWindow around(Instant earliest, Instant expected, Instant latest) {
        Instant last = latest.isBefore(earliest) ? earliest : latest;
        Instant middle = expected.isBefore(earliest) ? earliest : expected.isAfter(last) ? last : expected;
        return new DateWindow(earliest, middle, last, false);
    }
}
