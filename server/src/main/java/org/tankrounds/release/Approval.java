package org.tankrounds.release;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;
import org.tankrounds.words.Saying;

/**
 * What an agency allowed at a site, as the chapter copied it down. It is not the permit, which outranks it.
 *
 * @param withdrawnAt empty while it stands
 */
public record Approval(int approvalId, int siteId, Details details, Optional<Instant> withdrawnAt) {

    /**
     * @param number of the permit or approval
     * @param agency who gave it, in words
     * @param firstDay on which fish may be released
     * @param lastDay included
     * @param mostFish in all
     * @param expiresOn last day on which the paper itself holds; empty where it names none
     * @param note its conditions, or anything else
     */
    public record Details(String number, String agency, Species species, LocalDate firstDay, LocalDate lastDay,
            int mostFish, Optional<LocalDate> expiresOn, Optional<String> note) {

        /** The last day on which fish may be released by a paper that still holds. */
        LocalDate lastGoodDay() {
            return expiresOn.filter(lastDay::isAfter).orElse(lastDay);
        }
    }

    /**
     * What is used up of it.
     *
     * @param released fish that were released under its number
     * @param planned fish in plans that were not carried out yet
     */
    public record Used(int released, int planned) {
        static final Used NOTHING = new Used(0, 0);
    }

    public String number() {
        return details.number();
    }

    /** Fish that may still be planned; below 0 where more are out or planned than it allows. */
    public int left(Used used) {
        return details.mostFish() - used.released() - used.planned();
    }

    /** Whether rainbow trout may be released by it on a day. */
    public boolean holdsOn(LocalDate day) {
        return refusal(day, LocalDate::toString).isEmpty();
    }

    /**
     * Why no rainbow trout may be released by it on a day; empty where they may.
     *
     * @param written how a day is written to the reader
     */
    public Optional<Saying> refusal(LocalDate day, Function<LocalDate, String> written) {
        if (withdrawnAt.isPresent()) {
            return Optional.of(Saying.of("release.refused.withdrawn", number()));
        }
        if (details.species() != Species.RAINBOW_TROUT) {
            return Optional.of(Saying.of("release.refused.species", number(),
                    Saying.of("release.species." + details.species().code())));
        }
        if (day.isBefore(details.firstDay()) || day.isAfter(details.lastDay())) {
            return Optional.of(Saying.of("release.refused.days", number(), written.apply(details.firstDay()),
                    written.apply(details.lastDay())));
        }
        return details.expiresOn().filter(day::isAfter)
                .map(last -> Saying.of("release.refused.expired", number(), written.apply(last)));
    }

    /** Why so many fish are too many; empty where they are not. */
    public Optional<Saying> refusal(int fish, Used used) {
        return fish <= left(used) ? Optional.empty() : Optional.of(Saying.of("release.refused.tooMany", number(),
                details.mostFish(), used.released(), used.planned(), Math.max(0, left(used)), fish));
    }
}
