package org.tankrounds.advice;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tankrounds.belief.Observation;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.LookAhead;
import org.tankrounds.water.Analyte;

/**
 * What fish that die en masse call for, before anybody knows why: breath, no feed, the readings that tell most at
 * once, and somebody who knows fish diseases (common practice, no source). A tank full of dead fish is above all
 * one that was filled up with untreated water, has lost its air or its pH.
 */
final class Losses {

    private static final List<Analyte> FIRST = List.of(Analyte.CHLORINE, Analyte.PH);
    /** Chlorine that was let in is driven out within days. */
    private static final Duration CHANGE_COUNTS = Duration.ofDays(3);

    private final LookAhead ahead;
    private final Forecast forecast;
    private final List<Observation> observations;

    Losses(LookAhead ahead, List<Observation> observations) {
        this.ahead = ahead;
        this.forecast = ahead.forecast();
        this.observations = observations;
    }

    List<Proposal> proposals() {
        List<Proposal> all = new ArrayList<>();
        all.add(Proposal.moreAir(mayLackBreath() ? Driver.DISSOLVED_OXYGEN : Driver.DEATHS).asForesight());
        FIRST.stream().filter(this::isUnread).forEach(analyte -> all.add(ask(analyte)));
        if (isUnread(Analyte.CHLORINE) && isChangedLately()) {
            all.add(Proposal.of(Act.plain(Act.Kind.TEST_WATER_FIRST, Driver.DEATHS)));
        }
        Asked.missing(Driver.DEATHS, observations, forecast).ifPresent(analyte -> all.add(ask(analyte)));
        all.addAll(Fasting.against(Driver.DEATHS, ahead, observations));
        all.add(Proposal.of(Act.plain(Act.Kind.LOOK_AT_FISH, Driver.DEATHS)));
        all.add(Proposal.of(Act.plain(Act.Kind.CALL_FOR_HELP, Driver.DEATHS)));
        return all;
    }

    private static Proposal ask(Analyte analyte) {
        return Proposal.of(Act.ask(Driver.DEATHS, analyte));
    }

    /**
     * Oxygen was read today and found short, or neither it nor ammonia is known. Where ammonia is, the courses tell
     * whether air, which lifts the pH, would only make more of it harmful.
     */
    private boolean mayLackBreath() {
        return isUnread(Analyte.DISSOLVED_OXYGEN) && !Asked.isAmmoniaKnown(observations, forecast)
                || Breath.isShort(ahead);
    }

    /** What was read before the water was changed says nothing about what came in. */
    private boolean isUnread(Analyte analyte) {
        return !Asked.isReadLately(analyte, observations, forecast)
                || Asked.newest(observations, analyte, forecast).map(Observation::at)
                        .filter(read -> newestChange().filter(read::isBefore).isPresent()).isPresent();
    }

    /** Before the dead were found: a change in answer to them did not kill them. */
    private boolean isChangedLately() {
        Optional<Instant> found = noted(Analyte.DEATHS).max(Comparator.naturalOrder());
        return noted(Analyte.WATER_CHANGE).filter(at -> found.filter(at::isBefore).isPresent())
                .anyMatch(at -> at.isAfter(forecast.asOf().minus(CHANGE_COUNTS)));
    }

    private Optional<Instant> newestChange() {
        return noted(Analyte.WATER_CHANGE).max(Comparator.naturalOrder());
    }

    private Stream<Instant> noted(Analyte analyte) {
        return observations.stream().filter(o -> o.analyte() == analyte && o.value() > 0)
                .map(Observation::at).filter(at -> !at.isAfter(forecast.asOf()));
    }
}
