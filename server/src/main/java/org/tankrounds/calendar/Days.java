package org.tankrounds.calendar;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import org.tankrounds.fish.DateWindow;
import org.tankrounds.web.Formats;

/** Days of a tank in words: with their year where day and month alone would be taken for those of another year. */
record Days(Formats formats, ZoneId zone) {
    private static final int FAR_DAYS = 300;

    static Days of(TankAhead ahead, Formats formats) {
        return new Days(formats, ahead.tank().zone());
    }

    /** "9 December", "9 December 2027". */
    String date(Instant at) {
        return isFar(at) ? formats.longDate(day(at)) : formats.date(at);
    }

    /** "9 Dec", "9 Dec 2027". */
    String shortDate(Instant at) {
        return isFar(at) ? formats.speech().written("time.pattern.dateAndYear", day(at)) : formats.shortDate(at);
    }

    /** "9 to 13 December"; "9 December" of what takes a day, "from 9 December" of what may last beyond an end. */
    String window(DateWindow window, Instant end) {
        if (window.latest().isAfter(end)) {
            return formats.speech().say("calendar.windowFrom", date(window.earliest()));
        }
        if (!isFar(window.earliest()) && !isFar(window.latest())) {
            return formats.window(window.earliest(), window.latest());
        }
        LocalDate first = day(window.earliest());
        LocalDate last = day(window.latest());
        return first.equals(last) ? formats.longDate(last)
                : formats.speech().say("time.window", beginning(first, last), formats.longDate(last));
    }

    /** What the end of a window says too is not said twice. */
    private Object beginning(LocalDate first, LocalDate last) {
        if (first.getYear() != last.getYear()) {
            return formats.longDate(first);
        }
        return first.getMonth() == last.getMonth() ? first.getDayOfMonth()
                : formats.speech().written("time.pattern.date", first);
    }

    private boolean isFar(Instant at) {
        return Math.abs(ChronoUnit.DAYS.between(day(formats.now()), day(at))) > FAR_DAYS;
    }

    private LocalDate day(Instant at) {
        return at.atZone(zone).toLocalDate();
    }
}
