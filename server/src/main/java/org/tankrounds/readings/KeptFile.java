package org.tankrounds.readings;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.tankrounds.readings.files.Choices;

/**
 * A logger's file that was sent: looked at first, then kept as one batch, then perhaps taken back.
 *
 * @param code random and public
 * @param header names of its columns, by which files of the same logger are known
 * @param personId who sent it
 * @param stored how many readings it added
 */
record KeptFile(
        int fileId, int tankId, String code, String name, String header, Choices choices, int personId,
        Instant receivedAt, Optional<Instant> keptAt, int stored, Optional<Instant> takenBackAt) {

    /** A season at its longest. */
    private static final Duration CAN_BE_TAKEN_BACK = Duration.ofDays(400);

    boolean isKept() {
        return keptAt.isPresent();
    }

    boolean holds() {
        return isKept() && takenBackAt.isEmpty();
    }

    boolean canBeTakenBack(Instant now) {
        return holds() && keptAt.orElseThrow().plus(CAN_BE_TAKEN_BACK).isAfter(now);
    }
}
