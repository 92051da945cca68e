package org.tankrounds.rounds;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.pages.SeasonChart.Tick;
import org.tankrounds.web.Formats;

/**
 * From time to place across a picture that is 1000 wide: the past takes the left, and the next 72 hours, drawn
 * wider, the right.
 */
final class SeasonAxis {
    static final double WIDTH = 1000;
    static final double NOW = 720;
    private static final int MOST_LABELS = 6;
    /** A date this near to "now" would be printed over it. */
    private static final double CLEAR_OF_NOW = 60;

    private final Instant from;
    private final Instant now;

    SeasonAxis(Instant from, Instant now) {
        this.from = from;
        this.now = now;
    }

    Instant from() {
        return from;
    }

    double x(Instant time) {
        if (time.isAfter(now)) {
            return ahead(Duration.between(now, time).toSeconds() / 3600.0);
        }
        return NOW * Duration.between(from, time).toSeconds() / Duration.between(from, now).toSeconds();
    }

    double ahead(double hours) {
        return NOW + (WIDTH - NOW) * hours / Forecast.HORIZON_HOURS;
    }

    static String percent(double x) {
        return SvgPath.number(x / WIDTH * 100) + "%";
    }

    List<Tick> days(ZoneId zone, Formats formats) {
        List<Tick> ticks = new ArrayList<>();
        long days = Math.max(1, Duration.between(from, now).toDays());
        long step = Math.max(1, (days + MOST_LABELS - 1) / MOST_LABELS);
        LocalDate day = from.atZone(zone).toLocalDate().plusDays(1);
        for (Instant at = midnight(day, zone); at.isBefore(now); at = midnight(day, zone)) {
            if (x(at) < NOW - CLEAR_OF_NOW) {
                ticks.add(new Tick(percent(x(at)), formats.shortDate(at),
                        x(at) < CLEAR_OF_NOW / 2 ? "start" : "middle"));
            }
            day = day.plusDays(step);
        }
        Instant end = now.plus(Duration.ofHours(Forecast.HORIZON_HOURS));
        ticks.add(new Tick(percent(NOW), "now", "middle"));
        ticks.add(new Tick(percent(WIDTH), formats.weekdayAndClock(end), "end"));
        return ticks;
    }

    private static Instant midnight(LocalDate day, ZoneId zone) {
        return day.atStartOfDay(zone).toInstant();
    }
}
