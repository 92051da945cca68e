package org.tankrounds.web;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.UUID;
import java.util.regex.Pattern;

/** What addresses and hidden fields name. */
public final class Asked {
    /** As a script writes it where the browser makes none. */
    private static final Pattern WITHOUT_DASHES =
            Pattern.compile("^(\\p{XDigit}{8})(\\p{XDigit}{4})(\\p{XDigit}{4})(\\p{XDigit}{4})(\\p{XDigit}{12})$");

    private Asked() {}

    /** @throws NotFoundException where the address names no day */
    public static LocalDate day(Context ctx) {
        try {
            return LocalDate.parse(ctx.pathParam("day"));
        } catch (DateTimeParseException e) {
            throw new NotFoundException("day");
        }
    }

    /**
     * By which a form that is sent twice is stored once. One without it, or with one made up, is taken as sent once.
     *
     * @param text as the form has it; null where it has none
     */
    public static UUID submissionId(String text) {
        try {
            return UUID.fromString(text == null ? "" : WITHOUT_DASHES.matcher(text).replaceFirst("$1-$2-$3-$4-$5"));
        } catch (IllegalArgumentException e) {
            return UUID.randomUUID();
        }
    }
}
