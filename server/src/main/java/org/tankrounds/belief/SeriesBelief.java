package org.tankrounds.belief;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What is held of one series at a moment.
 *
 * @param model how it moves
 * @param population the population's level on the model's scale at a moment
 * @param state distance from the population, with slope
 * @param alternative the state if the reading set aside is right after all
 * @param alternativeChance how likely that is; 0 without one
 * @param readings those that were believed, oldest first
 * @param setAside the newest reading, if it does not fit and no other has yet agreed with it
 * @param asOf the moment
 */
public record SeriesBelief(
        TrendModel model,
        ToDoubleFunction<Instant> population,
        LocalTrend state,
        LocalTrend alternative,
        double alternativeChance,
        List<Observation> readings,
        Optional<Observation> setAside,
        Instant asOf) {

    /** The most likely value now, in the model's unit. */
    public double valueNow() {
        return model.scale().valueOf(population.applyAsDouble(asOf) + state.level());
    }

    /** A standard deviation above that, on the scale: one in six such tanks is higher. */
    public double highNow() {
        return model.scale().valueOf(population.applyAsDouble(asOf) + state.level() + Math.sqrt(state.levelVar()));
    }

    /** The newest reading that was believed. */
    public Optional<Observation> newest() {
        return readings.isEmpty() ? Optional.empty() : Optional.of(readings.get(readings.size() - 1));
    }
}
