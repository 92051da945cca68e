package org.tankrounds.advice;

import java.util.List;
import org.tankrounds.belief.Observation;
import org.tankrounds.forecast.Deed;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.LookAhead;
import org.tankrounds.water.Analyte;

/**
 * Giving no feed for a day. Fish that fast give off less ammonia, and breathe out less carbon dioxide, which
 * lifts the pH by about a tenth and so makes a quarter more of the ammonia harmful. A day's ammonia of a
 * classroom tank is half a milligram: of a few milligrams that is less than the quarter.
 */
final class Fasting {

    private static final double HOURS = 24;
    /** Total ammonia, mg N/L, from which on a day without feed does more harm than good within three days. */
    private static final double TOO_MUCH_AMMONIA_MG_PER_L = 3;

    private Fasting() {
    }

    static Proposal against(Driver driver) {
        return Proposal.of(Act.skipFeed(driver, HOURS), Deed.fast(HOURS));
    }

    /** Fish on their yolk are not fed. */
    static boolean helps(LookAhead ahead, List<Observation> observations) {
        double read = Asked.newest(observations, Analyte.TOTAL_AMMONIA, ahead.forecast())
                .map(Observation::value).orElse(0.0);
        return !ahead.forecast().stage().isBeforeFirstFeeding()
                && Math.max(read, ahead.belief().totalAmmonia().valueNow()) < TOO_MUCH_AMMONIA_MG_PER_L;
    }
}
