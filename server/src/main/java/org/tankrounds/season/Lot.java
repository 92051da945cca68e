package org.tankrounds.season;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Eggs that came together into one tank.
 *
 * @param thermalUnitsC degree-Celsius days since fertilisation on arrival; empty where nobody told
 * @param seenOn what the class saw it come to
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
        SeenOn seenOn,
        CountMethod method,
        int spread) {

    /** Eggs count from the beginning of their day. */
    public boolean hasCome(Instant asOf, ZoneId zone) {
        return !receivedAt.atZone(zone).toLocalDate().isAfter(asOf.atZone(zone).toLocalDate());
    }

    /** As it was known on a day. */
    public Lot knownOn(LocalDate today) {
        return seeing(seenOn.knownOn(today));
    }

    /** As it was before the class saw anything of it. */
    public Lot unseen() {
        return seeing(SeenOn.NOTHING);
    }

    private Lot seeing(SeenOn seen) {
        return new Lot(lotId, seasonId, tankId, eggs, receivedAt, thermalUnitsC, supplier, certificate, seen, method,
                spread);
    }
}
