package org.tankrounds.rounds;

import java.util.List;
import org.tankrounds.forecast.Reason;
import org.tankrounds.web.Formats;

/** Reasons in words, the largest first. Each number of a reason has one place in its sentence and no other. */
final class ReasonWording {
    private final LimitWording limits;
    private final CauseWording causes;
    private final SilenceWording silences;
    private final LifeWording life;

    ReasonWording(Formats formats) {
        limits = new LimitWording(formats);
        causes = new CauseWording(formats);
        silences = new SilenceWording(formats);
        life = new LifeWording(formats);
    }

    List<Phrase> of(List<Reason> reasons) {
        return reasons.stream().map(this::of).toList();
    }

    Phrase of(Reason reason) {
        return switch (reason.kind()) {
            case BEYOND_LIMIT -> limits.beyond(reason);
            case HEADED_FOR_LIMIT -> limits.headedFor(reason);
            case NEAR_LIMIT -> limits.near(reason);
            case CHILLER_LOOKS_STOPPED -> limits.chillerLooksStopped(reason);
            case FILTER_NOT_RIPE -> causes.filterNotRipe(reason);
            case LOW_CHLORIDE -> causes.lowChloride(reason);
            case HIGH_PH_MAKES_AMMONIA_HARMFUL -> causes.highPh(reason);
            case ALKALINITY_LOW -> causes.alkalinityLow(reason);
            case DEATHS -> silences.deaths(reason);
            case SILENCE -> silences.silence(reason);
            case SERIES_NOT_READ -> silences.seriesNotRead(reason);
            case NO_READINGS -> silences.noReadings();
            case READING_SET_ASIDE -> silences.setAside(reason);
            case STEADY -> life.steady(reason);
            case HATCH_EXPECTED -> life.hatch(reason);
            case FIRST_FEEDING_EXPECTED -> life.firstFeeding(reason);
            case FEEDING_SINCE -> life.feedingSince(reason);
        };
    }
}
