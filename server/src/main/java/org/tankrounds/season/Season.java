package org.tankrounds.season;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * From the egg delivery to the release.
 *
 * @param code for addresses and commands
 */
public record Season(int seasonId, String code, Details details) {

    /**
     * @param endsOn last day, included
     * @param releaseOn day for which the release is planned; empty where nobody said
     * @param releaseLengthMm how long fish are to be when they leave, as the agency asks; empty where nobody said
     */
    public record Details(String name, LocalDate startsOn, LocalDate endsOn, Optional<LocalDate> releaseOn,
            OptionalInt releaseLengthMm) {
        public boolean holds(LocalDate day) {
            return !day.isBefore(startsOn) && !day.isAfter(endsOn);
        }

        boolean overlaps(Details other) {
            return !startsOn.isAfter(other.endsOn) && !other.startsOn.isAfter(endsOn);
        }
    }

    /** The one that runs on a day, else the first of them. */
    public static Optional<Season> runningOn(LocalDate day, List<Season> seasons) {
        return seasons.stream().filter(season -> season.details().holds(day)).findFirst()
                .or(() -> seasons.stream().findFirst());
    }

    public String name() {
        return details.name();
    }

    /** The first moment of it on a school's clock. */
    public Instant from(ZoneId zone) {
        return details.startsOn().atStartOfDay(zone).toInstant();
    }

    /** The last microsecond of it on a school's clock. */
    public Instant until(ZoneId zone) {
        return details.endsOn().plusDays(1).atStartOfDay(zone).toInstant().minusNanos(1000);
    }
}
