package org.tankrounds.breaks;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How a break goes: who was to look in, and who did.
 *
 * @param looked days on which somebody did, by a reading of their own or by what they saw of the fish
 */
public record BreakWatch(SchoolBreak schoolBreak, Set<LocalDate> looked, LocalDate today) {
    /** So long before it begins, days that nobody has taken are told (common practice, no source). */
    public static final int AHEAD_DAYS = 10;

    public boolean isOn() {
        return !today.isBefore(schoolBreak.firstDay()) && !today.isAfter(schoolBreak.lastDay());
    }

    /** The last day before today on which somebody was to look in and nobody has looked since. */
    public Optional<LocalDate> missed() {
        Optional<LocalDate> due = schoolBreak.lookers().keySet().stream()
                .filter(day -> day.isBefore(today)).reduce((first, next) -> next);
        return due.filter(day -> looked.stream().noneMatch(one -> !one.isBefore(day)));
    }

    public boolean lookedToday() {
        return looked.contains(today);
    }

    /** Who is still to come today. */
    public Optional<String> awaitedToday() {
        return lookedToday() ? Optional.empty() : schoolBreak.looker(today);
    }

    /** Days to come that nobody has taken; today too, until somebody has looked. */
    public List<LocalDate> open() {
        return schoolBreak.openFrom(lookedToday() ? today.plusDays(1) : today);
    }

    /** Whether there is something about it that somebody has to know. */
    public boolean isTold() {
        boolean soon = !today.isAfter(schoolBreak.lastDay())
                && !schoolBreak.firstDay().isAfter(today.plusDays(AHEAD_DAYS));
        return soon && (missed().isPresent() || awaitedToday().isPresent() || !open().isEmpty());
    }
}
