package org.tankrounds.rounds;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.LastLook;
import org.tankrounds.season.Lot;

/**
 * What the engine is given of a tank.
 *
 * @param observations of the season, oldest first, none after the moment asked about
 * @param moreSoon somebody's clock runs ahead: a reading waits whose time comes within minutes
 */
record TankInput(
        Tank tank,
        Optional<Lot> lot,
        TankFacts facts,
        List<Observation> observations,
        Optional<LastLook> lastLook,
        boolean moreSoon) {

    Optional<Instant> eggsReceivedAt() {
        return lot.map(Lot::receivedAt);
    }
}
