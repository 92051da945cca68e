package org.tankrounds.readings.files;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

/**
 * A logger's clock, row after row: in the hour that comes twice in autumn the order of the rows says which of the two
 * is meant.
 */
final class LoggerClock {
    private final ZoneId zone;
    private Instant before = Instant.MIN;
    private int doubled;

    LoggerClock(ZoneId zone) {
        this.zone = zone;
    }

    /** Empty for a time that this clock skips when it is put forward. */
    Optional<Instant> instant(LocalDateTime local) {
        List<ZoneOffset> offsets = zone.getRules().getValidOffsets(local);
        if (offsets.isEmpty()) {
            return Optional.empty();
        }
        if (offsets.size() > 1) {
            doubled++;
        }
        Instant first = local.toInstant(offsets.get(0));
        Instant meant = offsets.size() > 1 && !first.isAfter(before) ? local.toInstant(offsets.get(1)) : first;
        before = meant;
        return Optional.of(meant);
    }

    /** How many times lay in an hour that comes twice. */
    int doubled() {
        return doubled;
    }
}
