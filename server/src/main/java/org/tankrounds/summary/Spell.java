package org.tankrounds.summary;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.tankrounds.summary.WithinLimit.Worst;

/**
 * A run of reading-days beyond a limit. It ends before a day that was within or could not be decided, and where nothing
 * was read for more than {@value #LONGEST_GAP_DAYS} days; the days without a reading inside it are nobody's knowledge.
 *
 * @param from and until, reading-days both
 * @param days reading-days in it
 * @param worst of all of them
 */
record Spell(LocalDate from, LocalDate until, int days, Worst worst) {
    static final int LONGEST_GAP_DAYS = 3;

    static Spell of(LocalDate day, Worst worst) {
        return new Spell(day, day, 1, worst);
    }

    /** Whether a reading-day beyond the limit, the next one, goes on with it. */
    boolean goesOnWith(LocalDate day) {
        return ChronoUnit.DAYS.between(until, day) - 1 <= LONGEST_GAP_DAYS;
    }

    Spell and(LocalDate day, Worst ofDay) {
        return new Spell(from, day, days + 1, ofDay.worseThan(worst) ? ofDay : worst);
    }

    /** From the first to the last, both counted. */
    int calendarDays() {
        return (int) ChronoUnit.DAYS.between(from, until) + 1;
    }

    /** By days on the calendar, then by days read, then by the worst value. */
    boolean longerThan(Spell other) {
        if (calendarDays() != other.calendarDays()) {
            return calendarDays() > other.calendarDays();
        }
        return days != other.days ? days > other.days : worst.worseThan(other.worst);
    }
}
