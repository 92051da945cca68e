package org.tankrounds.lab;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The hours of a school year, counted from midnight of 1 September, and the days on which nobody comes. */
final class SchoolCalendar {

    static final ZoneId ZONE = ZoneId.of("America/New_York");
    static final int DAYS = 275;
    static final int HOURS = DAYS * 24;
    private static final LocalDate FIRST = LocalDate.of(2026, 9, 1);
    static final Instant START = FIRST.atStartOfDay(ZONE).toInstant();
    private static final int MORNING_HOUR = 7;

    private final Set<LocalDate> closed = new HashSet<>();
    private final LocalDate[] day = new LocalDate[HOURS];
    private final int[] hourOfDay = new int[HOURS];

    SchoolCalendar(Luck luck) {
        close(LocalDate.of(2026, 11, 26), 2);
        close(LocalDate.of(2026, 12, 21), 14);
        close(LocalDate.of(2027, 2, 15), luck.happens(0.5) ? 5 : 1);
        close(LocalDate.of(2027, 3, 22).plusWeeks(luck.between(0, 4)), 5);
        for (int snow = luck.between(0, 4); snow > 0; snow--) {
            close(LocalDate.of(2027, 1, 5).plusDays(luck.between(0, 60)), 1);
        }
        for (int h = 0; h < HOURS; h++) {
            ZonedDateTime local = at(h).atZone(ZONE);
            day[h] = local.toLocalDate();
            hourOfDay[h] = local.getHour();
        }
    }

    private void close(LocalDate from, int days) {
        for (int i = 0; i < days; i++) {
            closed.add(from.plusDays(i));
        }
    }

    Instant at(int hour) {
        return START.plus(Duration.ofHours(hour));
    }

    static int hourOf(Instant at) {
        return (int) Duration.between(START, at).toHours();
    }

    int hourOfDay(int hour) {
        return hourOfDay[hour];
    }

    DayOfWeek weekday(int hour) {
        return day[hour].getDayOfWeek();
    }

    boolean isWeekend(int hour) {
        return weekday(hour) == DayOfWeek.SATURDAY || weekday(hour) == DayOfWeek.SUNDAY;
    }

    boolean isSchoolDay(int hour) {
        return !isWeekend(hour) && !closed.contains(day[hour]);
    }

    /** From 0 until the end of March to 1 at the end of May. */
    double spring(int hour) {
        return Math.max(0, Math.min(1, (hour / 24.0 - 210) / 60));
    }

    /** Every school morning at 7, as hours. */
    List<Integer> mornings() {
        List<Integer> mornings = new ArrayList<>();
        for (int h = 0; h < HOURS; h++) {
            if (hourOfDay[h] == MORNING_HOUR && isSchoolDay(h)) {
                mornings.add(h);
            }
        }
        return mornings;
    }
}
