package org.tankrounds.release;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tankrounds.belief.Observation;
import org.tankrounds.transport.Tempering;
import org.tankrounds.transport.Tempering.Pace;
import org.tankrounds.water.Analyte;

/**
 * The total ammonia that a tank of a plan had when somebody read it last: its water is what the boxes carry.
 *
 * @param place of the tank
 * @param mgNPerL total ammonia, mg/L as N
 */
record AmmoniaRead(String place, double mgNPerL, Instant at) {
    /** What was read before says nothing of the boxes any more (common practice, no source). */
    static final Duration LATELY = Duration.ofDays(7);

    /** Empty where nobody read it; what is in doubt tells nothing. */
    static Optional<AmmoniaRead> newest(String place, List<Observation> observations) {
        return observations.stream().filter(seen -> seen.analyte() == Analyte.TOTAL_AMMONIA && !seen.doubtful())
                .max(Comparator.comparing(Observation::at))
                .map(seen -> new AmmoniaRead(place, seen.below() ? 0 : seen.value(), seen.at()));
    }

    boolean asksToMixSlowly() {
        return Tempering.paceAt(mgNPerL) == Pace.SLOW;
    }
}
