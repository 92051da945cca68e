package org.tankrounds.eggday;

import java.time.Instant;
import java.time.LocalTime;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tankrounds.transport.Tempering;

/**
 * Where a run takes eggs: one tank.
 *
 * @param place smaller comes first
 * @param eggs as planned
 * @param plannedFor when they are expected, on the school's clock
 * @param tempered empty until somebody read the temperatures there
 */
record EggStop(int stopId, int tankId, int place, int eggs, Optional<LocalTime> plannedFor,
        Optional<Tempered> tempered) {

    /**
     * @param coolerC of the water that the eggs came in
     * @param from when tempering began
     */
    record Tempered(double coolerC, double tankC, OptionalDouble ph, Tempering.Pace pace, Instant from) {}

    /** What is planned for a tank. */
    record Planned(int eggs, Optional<LocalTime> plannedFor) {}
}
