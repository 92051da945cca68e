package org.tankrounds.lab;

import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.Set;

/** When a class goes to its tank. */
final class Visits {

    private static final double OTHER_DAYS_SHARE = 0.1;
    private static final double UNWORRIED_SHARE = 0.5;
    private static final double WORRIED = 0.97;
    private static final int WORRIED_HOURS = 7 * 24;

    private final Mechanics.Visits when;
    private final double onSchoolDays;
    private final double atWeekends;
    private final Set<DayOfWeek> weekdays = EnumSet.noneOf(DayOfWeek.class);
    private int worriedUntil;

    Visits(Mechanics.Visits when, double onSchoolDays, double atWeekends, Luck luck) {
        this.when = when;
        this.onSchoolDays = onSchoolDays;
        this.atWeekends = atWeekends;
        for (int i = luck.between(1, 5); i > 0; i--) {
            weekdays.add(DayOfWeek.of(luck.between(1, 5)));
        }
    }

    Visits(Visits other) {
        when = other.when;
        onSchoolDays = other.onSchoolDays;
        atWeekends = other.atWeekends;
        weekdays.addAll(other.weekdays);
        worriedUntil = other.worriedUntil;
    }

    /** Of a look on this day. */
    double chance(int hour, SchoolCalendar calendar) {
        if (!calendar.isSchoolDay(hour)) {
            return atWeekends;
        }
        return switch (when) {
            case ANY_DAY -> onSchoolDays;
            case SAME_WEEKDAYS ->
                weekdays.contains(calendar.weekday(hour)) ? onSchoolDays : OTHER_DAYS_SHARE * onSchoolDays;
            case WHEN_WORRIED -> hour < worriedUntil ? WORRIED : UNWORRIED_SHARE * onSchoolDays;
        };
    }

    void worryAt(int hour, boolean isBad) {
        worriedUntil = isBad ? hour + WORRIED_HOURS : worriedUntil;
    }
}
