package org.tankrounds.calendar;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.tankrounds.fish.DateWindow;
import org.tankrounds.pages.CalendarPage.Bar;
import org.tankrounds.pages.CalendarPage.Tick;
import org.tankrounds.web.Formats;

/** Puts moments on a line from the first to the last, in hundredths of its length. */
final class Timeline {
    private static final int MOST_NAMES = 9;
    private static final double WHOLE = 100;
    /** What takes a day only is seen too. */
    private static final double LEAST = 0.6;

    private final Instant from;
    private final Instant until;

    Timeline(Instant from, Instant until) {
        this.from = from;
        this.until = until.isAfter(from) ? until : from.plusSeconds(1);
    }

    Bar bar(String kind, DateWindow window) {
        double start = at(window.earliest());
        double end = Math.max(start + LEAST, at(window.latest()));
        return new Bar(kind + (window.seen() ? " bar--seen" : ""), text(start), text(end - start));
    }

    String position(Instant moment) {
        return text(at(moment));
    }

    boolean holds(Instant moment) {
        return !moment.isBefore(from) && !moment.isAfter(until);
    }

    /** The first of each month; of many, every second or third is named. */
    List<Tick> months(ZoneId zone, Formats formats) {
        LocalDate first = from.atZone(zone).toLocalDate().withDayOfMonth(1).plusMonths(1);
        long count = ChronoUnit.MONTHS.between(first, until.atZone(zone).toLocalDate()) + 1;
        long apart = (count + MOST_NAMES - 1) / MOST_NAMES;
        List<Tick> ticks = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            LocalDate month = first.plusMonths(i);
            ticks.add(new Tick(text(at(month.atStartOfDay(zone).toInstant())),
                    i % apart == 0 ? formats.speech().written("calendar.pattern.month", month) : ""));
        }
        return ticks;
    }

    private double at(Instant moment) {
        double share = (moment.getEpochSecond() - from.getEpochSecond())
                / (double) (until.getEpochSecond() - from.getEpochSecond());
        return WHOLE * Math.max(0, Math.min(1, share));
    }

    private static String text(double value) {
        return Formats.number(value, 2) + "%";
    }
}
