package org.tankrounds.forecast;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;

/** From a tank's facts and observations to its next 72 hours. Stateless; one may serve all threads. */
public final class Forecaster {

    private final Limits limits;

    public Forecaster(Limits limits) {
        this.limits = Objects.requireNonNull(limits, "limits");
    }

    /** With the sourced limits. */
    public Forecaster() {
        this(Limits.DEFAULT);
    }

    /**
     * The forecast of a tank. The same input gives the same output, bit for bit.
     *
     * @param observations in any order; those after {@code asOf} do not count
     */
    public Forecast forecast(TankFacts facts, List<Observation> observations, Instant asOf) {
        return Placeholder.forecast(facts, observations, asOf);
    }
}
