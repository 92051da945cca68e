package org.tankrounds.breaks;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Days on which a school has no lessons while its tank runs on.
 *
 * @param name what the school calls it
 * @param firstDay and the last, both included, on the school's calendar
 * @param lookers who looks in, by day; a day on which nobody does is missing
 */
public record SchoolBreak(int breakId, String name, LocalDate firstDay, LocalDate lastDay,
        Map<LocalDate, String> lookers) {
    /** Longer than any between November and spring. */
    public static final int MOST_DAYS = 60;
    static final int LONGEST_TEXT = 60;

    public SchoolBreak {
        lookers = new TreeMap<>(lookers);
    }

    public List<LocalDate> days() {
        return firstDay.datesUntil(lastDay.plusDays(1)).toList();
    }

    boolean overlaps(LocalDate first, LocalDate last) {
        return !first.isAfter(lastDay) && !last.isBefore(firstDay);
    }

    public Optional<String> looker(LocalDate day) {
        return Optional.ofNullable(lookers.get(day));
    }

    /** Days from one on that nobody has taken. */
    List<LocalDate> openFrom(LocalDate from) {
        return days().stream().filter(day -> !day.isBefore(from) && looker(day).isEmpty()).toList();
    }
}
