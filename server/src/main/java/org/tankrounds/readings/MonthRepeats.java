package org.tankrounds.readings;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The rows of a typed month that seem to be in already, and what is to become of them. Somebody who types a sheet a
 * second time must not make two readings, and twice the dead, of each of its rows.
 *
 * @param all by day
 * @param answered the days that somebody was asked about and has answered
 * @param keep whether the answer was to store them beside what is there
 */
record MonthRepeats(List<Repeat> all, Set<String> answered, boolean keep) {
    static final String CHOICE = "again";
    static final String KEEP = "keep";
    static final String LEAVE_OUT = "leave";
    /** The days that a page asked about. */
    static final String ASKED = "again_asked";
    static final MonthRepeats NONE = new MonthRepeats(List.of(), Set.of(), false);

    /**
     * @param typed the row
     * @param there what is in of that day already
     * @param same whether one of those has the very same values
     */
    record Repeat(LocalDate day, GivenReading typed, List<Reading> there, boolean same) {}

    static MonthRepeats of(List<Repeat> all, MonthForm form) {
        boolean isAnswered = Set.of(KEEP, LEAVE_OUT).contains(form.text(CHOICE));
        Set<String> asked = Arrays.stream(form.text(ASKED).split(",")).filter(MonthRepeats::isDay)
                .collect(Collectors.toSet());
        return new MonthRepeats(all, isAnswered ? asked : Set.of(), KEEP.equals(form.text(CHOICE)));
    }

    private static boolean isDay(String text) {
        try {
            LocalDate.parse(text);
            return true;
        } catch (DateTimeException e) {
            return false;
        }
    }

    /** Whether it is still to be asked about. */
    boolean isOpen(LocalDate day) {
        return holds(day) && !answered.contains(day.toString());
    }

    /** A row that has more than what is there only leaves its dead out. */
    boolean leavesOut(LocalDate day) {
        return !keep && answered.contains(day.toString())
                && all.stream().anyMatch(one -> one.same() && one.day().equals(day));
    }

    /** The days whose dead are counted already, as somebody said; the same when the answer comes twice. */
    Set<String> leavesDeadOut() {
        return keep ? Set.of() : answered;
    }

    /** What a page that asks about them all has to send along. */
    String days() {
        return all.stream().map(one -> one.day().toString()).collect(Collectors.joining(","));
    }

    private boolean holds(LocalDate day) {
        return all.stream().anyMatch(one -> one.day().equals(day));
    }
}
