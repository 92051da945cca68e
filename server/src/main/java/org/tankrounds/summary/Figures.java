package org.tankrounds.summary;

import java.util.Optional;
import java.util.OptionalDouble;
import org.tankrounds.readings.ReadingTally;
import org.tankrounds.season.Ledger;

/** What the summary says about one tank, or about several together: every column adds up. */
record Figures(
        Ledger ledger, ReadingTally readings, WithinLimit temperature, WithinLimit unIonisedAmmonia,
        WithinLimit nitrite) {

    static final Figures NONE =
            new Figures(Ledger.EMPTY, ReadingTally.NONE, WithinLimit.NONE, WithinLimit.NONE, WithinLimit.NONE);

    Figures plus(Figures other) {
        return new Figures(
                ledger.plus(other.ledger),
                readings.plus(other.readings),
                temperature.plus(other.temperature),
                unIonisedAmmonia.plus(other.unIonisedAmmonia),
                nitrite.plus(other.nitrite));
    }

    WithinLimit of(Series series) {
        return switch (series) {
            case TEMPERATURE -> temperature;
            case UN_IONISED_AMMONIA -> unIonisedAmmonia;
            case NITRITE -> nitrite;
        };
    }

    /** Alive by count as a share of the eggs received; empty where none came. */
    OptionalDouble survival() {
        return ledger.received() == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of((double) ledger.alive() / ledger.received());
    }

    Optional<Wilson> survivalInterval() {
        return ledger.received() == 0
                ? Optional.empty()
                : Optional.of(Wilson.of(ledger.alive(), ledger.received()));
    }
}
