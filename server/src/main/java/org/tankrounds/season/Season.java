package org.tankrounds.season;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

/**
 * From the egg delivery to the release.
 *
 * @param code for addresses and commands
 */
public record Season(int seasonId, String code, Details details) {

    /** @param endsOn last day, included */
    public record Details(String name, LocalDate startsOn, LocalDate endsOn) {
        boolean holds(LocalDate day) {
            return !day.isBefore(startsOn) && !day.isAfter(endsOn);
        }

        boolean overlaps(Details other) {
            return !startsOn.isAfter(other.endsOn) && !other.startsOn.isAfter(endsOn);
        }
    }

    public String name() {
        return details.name();
    }

    /** The first moment of it on a school's clock. */
    public Instant from(ZoneId zone) {
        return details.startsOn().atStartOfDay(zone).toInstant();
    }

    /** The last moment of it on a school's clock. */
    public Instant until(ZoneId zone) {
        return details.endsOn().plusDays(1).atStartOfDay(zone).toInstant().minusMillis(1);
    }
}
