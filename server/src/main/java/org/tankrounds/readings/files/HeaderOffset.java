package org.tankrounds.readings.files;

import java.time.DateTimeException;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the name of a time column says of its zone: "Time (UTC)", "Date Time, GMT-05:00". */
final class HeaderOffset {
    private static final Pattern FORM = Pattern.compile(
            "(?:^|[^A-Za-z])(?:UTC|GMT)\\s?(?:([+-])(\\d{1,2}):?(\\d{2})?)?(?![A-Za-z])", Pattern.CASE_INSENSITIVE);

    private HeaderOffset() {}

    static Optional<ZoneOffset> in(String name) {
        Matcher form = FORM.matcher(name);
        if (!form.find()) {
            return Optional.empty();
        }
        if (form.group(1) == null) {
            return Optional.of(ZoneOffset.UTC);
        }
        int minutes = form.group(3) == null ? 0 : Integer.parseInt(form.group(3));
        int sign = form.group(1).equals("-") ? -1 : 1;
        try {
            return Optional.of(ZoneOffset.ofHoursMinutes(sign * Integer.parseInt(form.group(2)), sign * minutes));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
