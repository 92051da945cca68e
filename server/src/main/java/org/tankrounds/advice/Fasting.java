package org.tankrounds.advice;

import org.tankrounds.forecast.Deed;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.LookAhead;

/**
 * Giving no feed for a day. Fish that fast give off less ammonia. They also breathe out less carbon dioxide, which
 * lifts the pH by about a tenth: where much ammonia is held already, that makes as much more of it harmful within three
 * days as is spared. What is not fed does not rot either, so in trouble it is withheld all the same (common
 * practice, no source); little is then promised of it.
 */
final class Fasting {

    private static final double HOURS = 24;

    private Fasting() {
    }

    static Proposal against(Driver driver) {
        return Proposal.of(Act.skipFeed(driver, HOURS), Deed.fast(HOURS));
    }

    /** Fish on their yolk are not fed. */
    static boolean isPossible(LookAhead ahead) {
        return !ahead.forecast().stage().isBeforeFirstFeeding();
    }
}
