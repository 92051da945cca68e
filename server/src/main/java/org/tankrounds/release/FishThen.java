package org.tankrounds.release;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import org.tankrounds.season.Account;
import org.tankrounds.words.Saying;

/**
 * The fish that were in a tank by count when some were taken to the water.
 *
 * @param alive by count
 * @param spread more or less that these may be
 * @param overdrawn how many more left before than were there by count, since all were counted
 * @param diedThatDay read as dead that day, up to then
 */
record FishThen(int alive, int spread, int overdrawn, int diedThatDay) {

    static FishThen of(Account account, Instant at, ZoneId zone) {
        FishThen then = new FishThen(0, 0, 0, 0);
        for (Account.Line line : account.lines()) {
            if (!line.at().isAfter(at)) {
                then = then.after(line, LocalDate.ofInstant(line.at(), zone).equals(LocalDate.ofInstant(at, zone)));
            }
        }
        return then;
    }

    /**
     * Why so many cannot have been released and kept back. Where the released alone are too many, the count says so
     * itself.
     *
     * @param spread that those released may be more or less
     */
    Optional<Saying> refusal(int released, int spread, Map<KeptBack, Integer> kept) {
        int both = released + kept.values().stream().mapToInt(Integer::intValue).sum();
        // Who was dead on arrival may stand in a reading of that day already.
        int there = alive + Math.min(kept.getOrDefault(KeptBack.DEAD, 0), diedThatDay);
        int about = (int) Math.ceil(StrictMath.hypot(this.spread, spread));
        if (kept.isEmpty() || released > alive + about - overdrawn || both <= there + about - overdrawn) {
            return Optional.empty();
        }
        return Optional.of(about == 0 ? Saying.of("release.kept.tooMany", there, released, both - released, both)
                : Saying.of("release.kept.tooManyAbout", there, about, released, both - released, both));
    }

    private FishThen after(Account.Line line, boolean thatDay) {
        return new FishThen(line.left(), line.spread(), switch (line.what()) {
            case COUNTED -> 0;
            case MOVED_OUT, THINNED, RELEASED -> overdrawn + line.surplus();
            case RECEIVED, MOVED_IN, DIED, HATCHED -> overdrawn;
        }, diedThatDay + (thatDay && line.what() == Account.What.DIED ? line.fish() : 0));
    }
}
