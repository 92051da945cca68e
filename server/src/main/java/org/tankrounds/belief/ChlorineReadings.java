package org.tankrounds.belief;

import java.util.List;
import java.util.Optional;

/**
 * The chlorine of a tank, which no filter judges. More than taps bring is a pH or an oxygen in the wrong column, or a
 * dose that went wrong: it waits for a second look.
 *
 * @param held the newest that counts
 * @param setAside the newest that waits
 */
record ChlorineReadings(Optional<Observation> held, Optional<Observation> setAside) {

    /** @param readings oldest first */
    static ChlorineReadings of(List<Observation> readings, SecondLooks secondLooks) {
        Observation held = null;
        Observation odd = null;
        boolean isOddBorneOut = false;
        for (Observation reading : readings) {
            if (!reading.doubtful()) {
                held = reading;
                odd = null;
            } else if (!reading.isCredible()) {
                isOddBorneOut = odd != null && (isOddBorneOut || secondLooks.areTwo(odd, reading));
                odd = isOddBorneOut || odd == null ? reading : odd;
                held = isOddBorneOut ? reading : held;
            }
        }
        return new ChlorineReadings(Optional.ofNullable(held),
                isOddBorneOut ? Optional.empty() : Optional.ofNullable(odd));
    }
}
