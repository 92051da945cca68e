package org.tankrounds.readings;

import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.tankrounds.web.FieldError;
import org.tankrounds.web.Parameters;
import org.tankrounds.web.RefusedException;

/** Which part of a tank's log is asked for. */
record ReadingQuery(Optional<Instant> from, Optional<Instant> to, Optional<String> cursor, int limit) {
    private static final int MOST = 500;
    private static final int USUAL = 100;
    private static final SortedSet<String> KNOWN = new TreeSet<>(Set.of("from", "to", "cursor", "limit"));

    /** @throws RefusedException 400 naming every parameter that cannot be used */
    static ReadingQuery of(Context ctx) {
        List<FieldError> errors = Parameters.misnamed(ctx, KNOWN);
        Optional<Instant> from = time(ctx, "from", errors);
        Optional<Instant> to = time(ctx, "to", errors);
        int limit = limit(ctx.queryParam("limit"), errors);
        if (from.isPresent() && to.isPresent() && !from.get().isBefore(to.get())) {
            errors.add(new FieldError("/to", "to is later than from."));
        }
        refuse(errors);
        return new ReadingQuery(from, to, Optional.ofNullable(ctx.queryParam("cursor")), limit);
    }

    static void refuse(List<FieldError> errors) {
        if (!errors.isEmpty()) {
            throw new RefusedException(400, "The question cannot be understood.", errors);
        }
    }

    /** The same question for the page behind a cursor. */
    String next(String path, String newCursor) {
        StringBuilder address = new StringBuilder(path).append("?cursor=").append(newCursor);
        from.ifPresent(time -> address.append("&from=").append(encoded(time)));
        to.ifPresent(time -> address.append("&to=").append(encoded(time)));
        return address.append("&limit=").append(limit).toString();
    }

    private static String encoded(Instant time) {
        return URLEncoder.encode(time.toString(), StandardCharsets.UTF_8);
    }

    private static Optional<Instant> time(Context ctx, String name, List<FieldError> errors) {
        String given = ctx.queryParam(name);
        if (given == null) {
            return Optional.empty();
        }
        // A plus sign that was not escaped arrives as a space.
        Optional<Instant> time = Times.parse(given.replace(' ', '+')).filter(ReadingQuery::isInCalendar);
        if (time.isEmpty()) {
            errors.add(new FieldError("/" + name, name + " is " + Times.ALLOWED + "."));
        }
        return time;
    }

    /** The database's calendar ends before Java's does. */
    private static boolean isInCalendar(Instant time) {
        return time.isAfter(Instant.parse("0001-01-01T00:00:00Z"))
                && time.isBefore(Instant.parse("9999-12-31T00:00:00Z"));
    }

    private static int limit(String given, List<FieldError> errors) {
        if (given == null) {
            return USUAL;
        }
        if (given.matches("[0-9]{1,6}") && Integer.parseInt(given) >= 1 && Integer.parseInt(given) <= MOST) {
            return Integer.parseInt(given);
        }
        errors.add(new FieldError("/limit", "limit is a whole number from 1 to " + MOST + "."));
        return USUAL;
    }
}
