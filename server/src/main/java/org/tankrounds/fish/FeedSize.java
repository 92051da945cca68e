package org.tankrounds.fish;

import org.tankrounds.water.Range;

/**
 * Size of dry feed by the fish's length: it has to fit the mouth.
 *
 * <p>Source: two university extension charts, which agree. Lengths in inches there: 1.2, 1.5, 2.3, 3.0, 4.3 and 5.5.
 */
public enum FeedSize {
    STARTER(0, 1.2),
    CRUMBLE_1(1.2, 1.5),
    CRUMBLE_2(1.5, 2.3),
    CRUMBLE_3(2.3, 3.0),
    CRUMBLE_4(3.0, 4.3),
    /** 3/32 inch, 2.4 mm; the charts end at 5.5 inches, and a classroom's fish before. */
    PELLET_3_32_INCH(4.3, Double.POSITIVE_INFINITY);

    private final Range lengthMm;

    FeedSize(double fromInches, double toInches) {
        lengthMm = new Range(fromInches * LengthWeight.MM_PER_INCH, toInches * LengthWeight.MM_PER_INCH);
    }

    /** The lengths of fish that take it, mm. */
    public Range lengthMm() {
        return lengthMm;
    }

    /** @param lengthMm mean length of the fish, mm; on a boundary the larger size, as the smaller then grows scarce */
    public static FeedSize ofLength(double lengthMm) {
        FeedSize size = STARTER;
        for (FeedSize candidate : values()) {
            if (lengthMm >= candidate.lengthMm.min()) {
                size = candidate;
            }
        }
        return size;
    }
}
