package org.tankrounds.forecast;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One of some equally likely ways in which a tank goes beyond a limit.
 *
 * @param afterHours whole hours until it first does, 0 when it is now; empty where only deaths tell of it
 * @param limit the one that it passes first; empty where only deaths tell of it
 */
public record Way(OptionalInt afterHours, Optional<Driver> limit) {

    /** Trouble that no reading shows. */
    static final Way UNSEEN = new Way(OptionalInt.empty(), Optional.empty());

    public Way {
        Objects.requireNonNull(afterHours, "afterHours");
        Objects.requireNonNull(limit, "limit");
    }

    static Way of(int afterHours, Driver limit) {
        return new Way(OptionalInt.of(afterHours), Optional.of(limit));
    }
}
