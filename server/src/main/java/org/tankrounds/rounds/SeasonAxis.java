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
    private static final double NOW_BEFORE_WHAT_MAY_COME = 720;
    private static final int MOST_LABELS = 6;
    /** A date this near to "now" would be printed over it. */
    private static final double CLEAR_OF_NOW = 60;

    private final Instant from;
    private final Instant now;
    private final double nowX;

    private SeasonAxis(Instant from, Instant now, double nowX) {
        this.from = from;
        this.now = now;
        this.nowX = nowX;
    }

    /** With what may come. */
    static SeasonAxis ahead(Instant from, Instant now) {
        return new SeasonAxis(from, now, NOW_BEFORE_WHAT_MAY_COME);
    }

    /** What was, and no more: now is the right edge. */
    static SeasonAxis past(Instant from, Instant now) {
        return new SeasonAxis(from, now, WIDTH);
    }

    double nowX() {
        return nowX;
    }

    Instant from() {
        return from;
    }

    double x(Instant time) {
        if (time.isAfter(now)) {
            return ahead(Duration.between(now, time).toSeconds() / 3600.0);
        }
        return nowX * Duration.between(from, time).toSeconds() / Duration.between(from, now).toSeconds();
    }

    double ahead(double hours) {
        return nowX + (WIDTH - nowX) * hours / Forecast.HORIZON_HOURS;
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
            if (x(at) < nowX - CLEAR_OF_NOW) {
                ticks.add(new Tick(percent(x(at)), formats.shortDate(at),
                        x(at) < CLEAR_OF_NOW / 2 ? "start" : "middle"));
            }
            day = day.plusDays(step);
        }
        boolean isPast = nowX == WIDTH;
        ticks.add(new Tick(percent(nowX), formats.speech().say("pictures.now"), isPast ? "end" : "middle"));
        if (!isPast) {
            Instant end = now.plus(Duration.ofHours(Forecast.HORIZON_HOURS));
            ticks.add(new Tick(percent(WIDTH), formats.weekdayAndClock(end), "end"));
        }
        return ticks;
    }

    private static Instant midnight(LocalDate day, ZoneId zone) {
        return day.atStartOfDay(zone).toInstant();
    }
}
