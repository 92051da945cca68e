package org.tankrounds.advice;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tankrounds.forecast.Effect;
import org.tankrounds.forecast.LookAhead;
import org.tankrounds.forecast.MassDeaths;

/**
 * Acts that are done together.
 *
 * @param acts all of them
 * @param shown what those that the water feels do in all, as the courses show it; empty of fewer than two
 */
record Together(List<Tried> acts, Optional<Effect> shown) {

    static Together of(LookAhead ahead, List<Tried> acts) {
        long felt = acts.stream().filter(tried -> tried.proposal().deed().isPresent()).count();
        return new Together(acts, felt < 2 ? Optional.empty() : Optional.of(ahead.effect(
                Proposal.deedOf(acts.stream().map(Tried::proposal)), ahead.forecast().driver())));
    }

    /**
     * What one does may spoil what another does, so that all of them come to more trouble than the best alone. What
     * spoils is left out; never what is needed in trouble anyhow or is for later than three days, and nothing where
     * fish die en masse of who knows what.
     */
    static Together inConcert(LookAhead ahead, List<Tried> acts) {
        Together all = of(ahead, acts);
        while (!MassDeaths.in(ahead.forecast()) && all.isSpoilt()) {
            Optional<Together> better = all.bestWithoutOne(ahead);
            if (better.isEmpty()) {
                return all;
            }
            all = better.get();
        }
        return all;
    }

    private boolean isSpoilt() {
        return shown.filter(all -> felt().stream().anyMatch(one -> all.isWorseThan(one.shown().orElseThrow())))
                .isPresent();
    }

    private Optional<Together> bestWithoutOne(LookAhead ahead) {
        return felt().stream().filter(one -> !isNeededAnyhow(one.proposal()))
                .map(one -> of(ahead, acts.stream().filter(other -> other != one).toList()))
                .filter(fewer -> fewer.exposureLeft() < exposureLeft())
                .min(Comparator.comparingDouble(Together::exposureLeft));
    }

    private static boolean isNeededAnyhow(Proposal proposal) {
        return proposal.isForBreath() || proposal.isForesight() || Worth.isNeededInTrouble(proposal.act());
    }

    private double exposureLeft() {
        return shown.or(() -> felt().stream().flatMap(one -> one.shown().stream()).findFirst())
                .orElseThrow().exposureWith();
    }

    /**
     * As far as it is to be trusted, but no less than of the one that most is promised of, among those whose good the
     * others leave.
     */
    Optional<Effect> promised(Trust trust) {
        return shown.map(all -> felt().stream().filter(one -> all.keepsMostOf(one.shown().orElseThrow()))
                .flatMap(one -> one.effect().stream())
                .reduce(trust.in(all), Effect::noWorseThan)).filter(effect -> !effect.harms());
    }

    private List<Tried> felt() {
        return acts.stream().filter(tried -> tried.shown().isPresent()).toList();
    }
}
