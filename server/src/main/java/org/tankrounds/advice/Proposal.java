package org.tankrounds.advice;

import java.util.Optional;
import java.util.OptionalDouble;
import org.tankrounds.forecast.Deed;
import org.tankrounds.forecast.Driver;

/**
 * An act that is yet to stand the test of the model.
 *
 * @param deed what the water feels of it; empty where it feels nothing
 */
record Proposal(Act act, Optional<Deed> deed) {

    static Proposal of(Act act, Deed deed) {
        return new Proposal(act, Optional.of(deed));
    }

    static Proposal of(Act act) {
        return new Proposal(act, Optional.empty());
    }

    static Proposal waterChange(Driver driver, double percent, OptionalDouble volumeL) {
        return of(Act.waterChange(driver, percent, volumeL, "WaterChange.after"), Deed.waterChange(percent / 100));
    }

    boolean isLike(Proposal other) {
        return act.kind() == other.act.kind() && act.asks().equals(other.act.asks());
    }

    boolean isMoreThan(Proposal other) {
        return act.amount().orElse(0) > other.act.amount().orElse(0);
    }
}
