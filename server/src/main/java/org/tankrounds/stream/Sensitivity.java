package org.tankrounds.stream;

/**
 * How much of what spoils a stream a kind of animal bears, as volunteers sort them.
 *
 * <p>Source: US EPA 1997, Volunteer Stream Monitoring, EPA 841-B-97-003.
 */
public enum Sensitivity {
    SENSITIVE(3),
    SOMEWHAT_SENSITIVE(2),
    TOLERANT(1);

    private final int points;

    Sensitivity(int points) {
        this.points = points;
    }

    /** In the kind count. */
    int points() {
        return points;
    }
}
