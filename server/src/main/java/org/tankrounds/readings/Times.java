package org.tankrounds.readings;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/** Times as the public interface writes them: ISO 8601 with an offset; kept to the microsecond. */
final class Times {
    static final String ALLOWED = "a time in ISO 8601 with an offset, such as 2027-01-12T14:05:00-05:00";
    private static final int LONGEST = 64;

    private Times() {}

    static Optional<Instant> parse(String text) {
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        try {
            return Optional.of(OffsetDateTime.parse(text).toInstant().truncatedTo(ChronoUnit.MICROS));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
