package org.tankrounds.calendar;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
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
 * @param lot the newest that came, else the next to come; empty where no eggs are
 * @param dates of that lot
 * @param account the count of its fish
 * @param growth of its fish; empty where neither eggs nor measurements tell of them
 * @param weeks while there are fish that feed
 * @param asOf now, or the season's end where that is past
 */
record TankAhead(Tank tank, Season season, Optional<Lot> lot, Optional<LotCalendar> dates, Account account,
        Optional<GrowthAhead> growth, Optional<Release> release, Room room, WaterHabit habit,
        Optional<WeeksAhead> weeks, Instant asOf) {

    /** When the fish are as long as they are to be when they leave. */
    record Release(int lengthMm, boolean isTold, DateWindow window) {}

    /** What comes next and has not been seen, and is not past by all that is known. */
    Optional<Milestone> next() {
        return isEmptied() ? Optional.empty() : dates.stream().flatMap(known -> List.of(Milestone.HATCH, Milestone.FIRST_FEEDING).stream()
                .filter(milestone -> !known.of(milestone).isPastAt(asOf))).findFirst();
    }

    boolean hasCome() {
        return lot.filter(eggs -> !eggs.receivedAt().isAfter(asOf)).isPresent();
    }

    int alive() {
        return account.ledger().alive();
    }

    boolean isEmptied() {
        return account.ledger().came() > 0 && alive() == 0;
    }
}
