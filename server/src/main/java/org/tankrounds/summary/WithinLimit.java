package org.tankrounds.summary;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One series against its limit, by reading-days: days on the school's calendar with at least one usable value.
 *
 * @param days reading-days
 * @param within days on which every value was within the limit of its moment
 * @param undecided days on which none was beyond and at least one could not be decided
 * @param values usable values
 * @param notDetected how many of those were below what the method shows
 * @param doubtful values left out because they are marked as doubtful
 * @param worst the detected value highest against its limit; the earliest of equals
 * @param spell the longest run of reading-days beyond the limit
 */
record WithinLimit(
        int days, int within, int undecided, int values, int notDetected, int doubtful, Optional<Worst> worst,
        Optional<Spell> spell) {

    static final WithinLimit NONE = new WithinLimit(0, 0, 0, 0, 0, 0, Optional.empty(),
            Optional.empty());

    /** @param ofLimit the value as a share of its limit */
    record Worst(double value, double ofLimit, Instant at, LocalDate day, String tank) {
        boolean worseThan(Worst other) {
            return ofLimit > other.ofLimit || ofLimit == other.ofLimit && at.isBefore(other.at);
        }
    }

    WithinLimit plus(WithinLimit other) {
        return new WithinLimit(days + other.days, within + other.within, undecided + other.undecided,
                values + other.values, notDetected + other.notDetected, doubtful + other.doubtful,
                worse(worst, other.worst), longer(spell, other.spell));
    }

    int beyond() {
        return days - within - undecided;
    }

    /** Days within as a share of the days that could be decided; empty where there is none. */
    OptionalDouble share() {
        int decided = days - undecided;
        return decided == 0 ? OptionalDouble.empty() : OptionalDouble.of((double) within / decided);
    }

    static Optional<Worst> worse(Optional<Worst> one, Optional<Worst> other) {
        if (one.isEmpty()) {
            return other;
        }
        return other.isPresent() && other.get().worseThan(one.get()) ? other : one;
    }

    static Optional<Spell> longer(Optional<Spell> one, Optional<Spell> other) {
        if (one.isEmpty()) {
            return other;
        }
        return other.isPresent() && other.get().longerThan(one.get()) ? other : one;
    }
}
