package org.tankrounds.advice;

import java.util.List;
import java.util.Optional;
import org.tankrounds.belief.Observation;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.LookAhead;
import org.tankrounds.water.Analyte;

/**
 * What is left for a tank in trouble that nothing known would help: to read what is missing; and where all
 * has just been read, to spare the fish their feed and to look at them.
 */
final class LastResort {

    private LastResort() {
    }

    static List<Proposal> against(Driver driver, LookAhead ahead, List<Observation> observations) {
        Optional<Analyte> missing = Asked.missing(driver, observations, ahead.forecast());
        if (missing.isPresent()) {
            return List.of(Proposal.of(Act.ask(driver, missing.get())));
        }
        Proposal look = Proposal.of(Act.plain(Act.Kind.LOOK_AT_FISH, driver));
        return Fasting.isPossible(ahead) ? List.of(Fasting.against(driver), look) : List.of(look);
    }
}
