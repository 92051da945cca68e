package org.tankrounds.season;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Eggs that came together into one tank.
 *
 * @param thermalUnitsC degree-Celsius days since fertilisation on arrival; empty where nobody told
 * @param firstFeedingOn day of first feeding that the class saw; empty until then
 * @param method how the supplier counted them
 * @param spread eggs more or less that the count may be off, 95 %
 */
public record Lot(
        int lotId,
        int seasonId,
        int tankId,
        int eggs,
        Instant receivedAt,
        OptionalDouble thermalUnitsC,
        Optional<String> supplier,
        Optional<String> certificate,
        Optional<LocalDate> firstFeedingOn,
        CountMethod method,
        int spread) {

    /** As it was before the class saw it. */
    public Lot withoutFirstFeeding() {
        return new Lot(lotId, seasonId, tankId, eggs, receivedAt, thermalUnitsC, supplier, certificate,
                Optional.empty(), method, spread);
    }
}
