package org.tankrounds.advice;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tankrounds.belief.Observation;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.LookAhead;
import org.tankrounds.forecast.Reason;
import org.tankrounds.water.Analyte;

/**
 * What is left for a tank in trouble that nothing known would help: to read what is missing; and where all
 * has just been read, to spare the fish their feed and to look at them. Of a sour tank it is said why nothing is
 * done against that, and whom to ask.
 */
final class LastResort {

    private LastResort() {
    }

    static List<Proposal> against(Driver driver, LookAhead ahead, List<Observation> observations) {
        Optional<Analyte> missing = Asked.missing(driver, observations, ahead.forecast());
        if (missing.isPresent()) {
            return List.of(Proposal.of(Act.ask(driver, missing.get())));
        }
        Act.Kind rest = isSour(driver, ahead) ? Act.Kind.LEAVE_ALKALINITY : Act.Kind.LOOK_AT_FISH;
        return Stream.concat(Fasting.against(driver, ahead, observations).stream(),
                Stream.of(Proposal.of(Act.plain(rest, driver)))).toList();
    }

    private static boolean isSour(Driver driver, LookAhead ahead) {
        return driver == Driver.PH && (ahead.belief().ph().valueNow() < PhAdvice.MIDDLE_PH
                || ahead.forecast().reasons().stream().anyMatch(each -> each.kind() == Reason.Kind.ALKALINITY_LOW));
    }
}
