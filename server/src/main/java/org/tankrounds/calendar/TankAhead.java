package org.tankrounds.calendar;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tankrounds.fish.DateWindow;
import org.tankrounds.fish.GrowthAhead;
import org.tankrounds.fish.LotCalendar;
import org.tankrounds.fish.Milestone;
import org.tankrounds.places.Tank;
import org.tankrounds.season.Account;
import org.tankrounds.season.Lot;
import org.tankrounds.season.Season;
import org.tankrounds.tankmodel.Room;
import org.tankrounds.tankmodel.WeeksAhead;

/**
 * What is ahead of one tank in a season.
 *
 * @param account the count of its fish
 * @param groups its fish by age, the oldest first; empty where neither eggs nor measurements tell of them
 * @param weeks while there are fish that feed; its cohorts are the groups
 * @param asOf now, or the season's end where that is past
 */
record TankAhead(Tank tank, Season season, Account account, List<Group> groups, Room room, WaterHabit habit,
        Optional<WeeksAhead> weeks, Instant asOf) {

    /** When the fish are as long as they are to be when they leave. */
    record Release(int lengthMm, boolean isTold, DateWindow window) {}

    /**
     * Fish of one age.
     *
     * @param lot the newest of their eggs that came, else the next to come; empty where no eggs are
     * @param dates of that lot
     * @param fish alive of them by count
     */
    record Group(Optional<Lot> lot, Optional<LotCalendar> dates, int fish, GrowthAhead growth, Release release) {
        boolean isFeedingAt(Instant moment) {
            return dates.filter(known -> known.firstFeeding().expected().isAfter(moment)).isEmpty();
        }

        /** Growth counts from a measurement. */
        boolean isMeasured() {
            return dates.filter(known -> known.firstFeeding().equals(growth.from())).isEmpty();
        }
    }

    /** Those whose eggs came last. */
    Optional<Group> youngest() {
        return groups.isEmpty() ? Optional.empty() : Optional.of(groups.get(groups.size() - 1));
    }

    /** All but the youngest. */
    List<Group> older() {
        return groups.isEmpty() ? List.of() : groups.subList(0, groups.size() - 1);
    }

    boolean hasAges() {
        return groups.size() > 1;
    }

    /** The newest eggs that came, else the next to come; empty where no eggs are. */
    Optional<Lot> lot() {
        return youngest().flatMap(Group::lot);
    }

    /** Of that lot. */
    Optional<LotCalendar> dates() {
        return youngest().flatMap(Group::dates);
    }

    /** What comes next to the newest eggs and has not been seen, and is not past by all that is known. */
    Optional<Milestone> next() {
        return dates().filter(known -> !isEmptied())
                .flatMap(known -> Stream.of(Milestone.HATCH, Milestone.FIRST_FEEDING)
                        .filter(milestone -> !known.of(milestone).isPastAt(asOf)).findFirst());
    }

    /** Those that are next to be long enough; empty where all of them should be. */
    Optional<Group> growing() {
        return groups.stream().filter(group -> !group.release().window().isPastAt(asOf)).findFirst();
    }

    boolean hasCome() {
        return lot().filter(eggs -> eggs.hasCome(asOf, tank.zone())).isPresent();
    }

    int alive() {
        return account.ledger().alive();
    }

    boolean isEmptied() {
        return account.ledger().came() > 0 && alive() == 0;
    }
}
