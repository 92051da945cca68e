package org.tankrounds.advice;

import java.util.List;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
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
    /** Fish digest badly in water so warm, and breathe hard (common practice, no source). */
    static final double TOO_WARM_TO_FEED_C = 20;

    private Fasting() {
    }

    /** The fast, where they may be fed; none for fish on their yolk. */
    static List<Proposal> against(Driver driver, LookAhead ahead, List<Observation> observations) {
        return isPossible(ahead) ? List.of(Proposal.of(
                Act.skipFeed(driver, HOURS, FeedGiven.timesTheUsual(observations, ahead.forecast().asOf())),
                Deed.fast(HOURS))) : List.of();
    }

    static boolean isTooWarmToFeed(LookAhead ahead) {
        return ahead.belief().temperature().medianC() >= TOO_WARM_TO_FEED_C;
    }

    /** Where nobody has said when eggs came, they may be fed by now. */
    private static boolean isPossible(LookAhead ahead) {
        TankFacts facts = ahead.belief().facts();
        boolean isStageTold = facts.eggsReceivedAt().isPresent() || facts.firstFeedingAt().isPresent();
        return !isStageTold || !ahead.forecast().stage().isBeforeFirstFeeding();
    }
}
