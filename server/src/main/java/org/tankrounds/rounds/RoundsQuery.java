package org.tankrounds.rounds;

import io.javalin.http.Context;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.tankrounds.web.FieldError;
import org.tankrounds.web.Parameters;
import org.tankrounds.web.RefusedException;

/**
 * What a script asks of the rounds.
 *
 * @param asOf empty: now
 * @param limit how many tanks from the top
 */
record RoundsQuery(Optional<Instant> asOf, int limit) {
    private static final SortedSet<String> KNOWN = new TreeSet<>(Set.of("asOf", "limit"));
    private static final int MOST = 10_000;
    private static final Instant EARLIEST = Instant.parse("2000-01-01T00:00:00Z");
    private static final Duration LATEST_AHEAD = Duration.ofDays(7);

    static RoundsQuery of(Context ctx, Instant now) {
        List<FieldError> errors = Parameters.misnamed(ctx, KNOWN);
        Optional<Instant> asOf = asOf(ctx.queryParam("asOf"), now, errors);
        int limit = limit(ctx.queryParam("limit"), errors);
        if (!errors.isEmpty()) {
            throw new RefusedException(400, "The question cannot be understood.", errors);
        }
        return new RoundsQuery(asOf, limit);
    }

    private static Optional<Instant> asOf(String text, Instant now, List<FieldError> errors) {
        if (text == null) {
            return Optional.empty();
        }
        try {
            // A plus sign that was not escaped arrives as a space.
            Instant asOf = OffsetDateTime.parse(text.strip().replace(' ', '+')).toInstant();
            if (!asOf.isBefore(EARLIEST) && !asOf.isAfter(now.plus(LATEST_AHEAD))) {
                return Optional.of(asOf);
            }
        } catch (DateTimeException e) {
            // The same sentence says what is allowed.
        }
        errors.add(new FieldError("/asOf", "asOf is a time with an offset, such as 2027-01-12T14:05:00Z, from the year"
                + " 2000 to seven days ahead."));
        return Optional.empty();
    }

    private static int limit(String text, List<FieldError> errors) {
        if (text == null) {
            return MOST;
        }
        if (text.matches("[0-9]{1,5}")) {
            int limit = Integer.parseInt(text);
            if (limit >= 1 && limit <= MOST) {
                return limit;
            }
        }
        errors.add(new FieldError("/limit", "limit is a whole number from 1 to " + MOST + "."));
        return MOST;
    }
}
