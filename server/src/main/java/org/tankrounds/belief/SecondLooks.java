package org.tankrounds.belief;

import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.List;

/**
 * Tells a second look, which bears out an odd reading, from the same look that came twice: resent soon after with the
 * same digits, or with a log that was pasted again under other hours. Of such a log every reading is there again, the
 * same time later, before and after the odd one. All figures are the project's choice.
 */
final class SecondLooks {

    /** Who doubts what he read and tests again is seldom done sooner, and seldom reads the very same then. */
    private static final Duration RESENT = Duration.ofMinutes(30);
    /** So many looks in a row come again at the same distance by no accident. */
    private static final int RUN = 3;
    /** Where a class reads by the timetable, looks are alike at the same distance anyway. */
    private static final int RUN_ON_A_TIMETABLE = 6;
    private static final long DAY_S = Duration.ofDays(1).toSeconds();

    private final List<Observation> known;
    /** Made when first asked for: most tanks have no odd reading. */
    private Looks looks;

    /** @param known all that was observed of a tank, whatever of it */
    SecondLooks(List<Observation> known) {
        this.known = known;
    }

    /** Whether two readings that agree are two looks. */
    boolean areTwo(Observation one, Observation other) {
        if (other.at().isBefore(one.at())) {
            return areTwo(other, one);
        }
        Duration later = Duration.between(one.at(), other.at());
        return !one.isSameLookAs(other)
                && (one.value() != other.value() || later.compareTo(RESENT) > 0 && !isRunAgain(one.at(), later));
    }

    private boolean isRunAgain(Instant at, Duration later) {
        if (looks == null) {
            looks = new Looks(known);
        }
        boolean isOnATimetable = later.toSeconds() % DAY_S == 0 || !looks.at(at.minus(later)).isEmpty();
        int enough = isOnATimetable ? RUN_ON_A_TIMETABLE : RUN;
        int since = comeAgain(looks.byTime().tailMap(at, true).values(), later, enough);
        return since + comeAgain(looks.byTime().headMap(at, false).descendingMap().values(), later, enough) >= enough;
    }

    /** How many looks in a row are there again so much later, each of them in all that was read. */
    private int comeAgain(Collection<List<Observation>> inARow, Duration later, int enough) {
        int count = 0;
        for (List<Observation> look : inARow) {
            boolean isAgain = look.stream().anyMatch(o -> isOnlyOneOfTwo(o, later));
            boolean isCopy = look.stream().anyMatch(o -> isOnlyOneOfTwo(o, later.negated()));
            if (count == enough || !isAgain && !isCopy
                    || !look.stream().allMatch(o -> looks.isThere(o, later) || looks.isThere(o, later.negated()))) {
                break;
            }
            count += isAgain ? 1 : 0;
        }
        return count;
    }

    /** There again once; what always reads the same is there again and again, which tells nothing. */
    private boolean isOnlyOneOfTwo(Observation o, Duration later) {
        return looks.isThere(o, later) && !looks.isThere(o, later.negated())
                && !looks.isThere(o, later.multipliedBy(2));
    }
}
