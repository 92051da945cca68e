package org.tankrounds.summary;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.tankrounds.readings.ReadingTally;
import org.tankrounds.season.DeathCauses;
import org.tankrounds.season.Ledger;
import org.tankrounds.season.Survivors;
import org.tankrounds.tasks.TaskTally;

/**
 * What the summary says about one tank, or about several together: every column adds up.
 *
 * @param deliveries by day
 * @param eggsToCome of lots whose day is still ahead; they are in no other figure
 * @param hatched how many were counted as hatched, where somebody counted
 * @param visits of somebody of the chapter
 * @param waterChanges how often somebody wrote one down
 * @param releases by site and date
 */
record Figures(
        Ledger ledger, Survivors survivors, List<Delivery> deliveries, int eggsToCome, int hatched,
        DeathCauses causes, ReadingTally readings, WithinLimit temperature, WithinLimit unIonisedAmmonia,
        WithinLimit nitrite, Stages stages, TaskTally tasks, int visits, int waterChanges,
        List<Release> releases) {

    static final Figures NONE = new Figures(Ledger.EMPTY, Survivors.NONE, List.of(), 0, 0, DeathCauses.NONE,
            ReadingTally.NONE, WithinLimit.NONE, WithinLimit.NONE, WithinLimit.NONE, Stages.NONE,
            TaskTally.NONE, 0, 0, List.of());

    Figures plus(Figures other) {
        return new Figures(
                ledger.plus(other.ledger),
                survivors.plus(other.survivors),
                Stream.concat(deliveries.stream(), other.deliveries.stream()).sorted(Delivery.BY_DAY).toList(),
                eggsToCome + other.eggsToCome,
                hatched + other.hatched,
                causes.plus(other.causes),
                readings.plus(other.readings),
                temperature.plus(other.temperature),
                unIonisedAmmonia.plus(other.unIonisedAmmonia),
                nitrite.plus(other.nitrite),
                stages.plus(other.stages),
                tasks.plus(other.tasks),
                visits + other.visits,
                waterChanges + other.waterChanges,
                Stream.concat(releases.stream(), other.releases.stream()).sorted(Release.BY_SITE_AND_DATE).toList());
    }

    WithinLimit of(Series series) {
        return switch (series) {
            case TEMPERATURE -> temperature;
            case UN_IONISED_AMMONIA -> unIonisedAmmonia;
            case NITRITE -> nitrite;
        };
    }

    /** Of those that came, the ones that are alive by count or left alive, as a share; empty where none came. */
    OptionalDouble survival() {
        return survivors.came() == 0 ? OptionalDouble.empty()
                : OptionalDouble.of((double) survivors.survived() / survivors.came());
    }

    Optional<Wilson> survivalInterval() {
        return survivors.came() == 0 ? Optional.empty()
                : Optional.of(Wilson.of(survivors.survived(), survivors.came()));
    }

    Optional<ClopperPearson> exactSurvivalInterval() {
        return survivors.came() == 0 ? Optional.empty()
                : Optional.of(ClopperPearson.of(survivors.survived(), survivors.came()));
    }
}
