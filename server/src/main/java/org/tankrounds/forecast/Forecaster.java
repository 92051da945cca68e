package org.tankrounds.forecast;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.tankrounds.belief.BeliefFilter;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankBelief;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.fish.Stage;

/** From a tank's facts and observations to its next 72 hours. Stateless; one may serve all threads. */
public final class Forecaster {

    /** Losses of healthy eggs and fry (common practice, no source). */
    private static final double USUAL_DEATHS_PER_FISH_DAY = 0.0015;
    /** Added per unit of u beyond a limit, summed over the limits (the project's choice). */
    private static final double DEATHS_PER_FISH_DAY_AND_EXCESS = 0.01;

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
        TankBelief belief = BeliefFilter.believe(facts, observations, asOf);
        Paths course = ForwardModel.run(belief);
        Outcome outcome = new Outcome(course, belief, limits);
        double chanceBeforeDeaths = outcome.chance();
        outcome.weighByDeaths(belief.deaths(), belief.fishAlive(), USUAL_DEATHS_PER_FISH_DAY,
                DEATHS_PER_FISH_DAY_AND_EXCESS);
        Stage stage = course.stage()[0];
        Judgement judgement = Judgement.of(belief, outcome, chanceBeforeDeaths, limits, stage);
        return new Forecast(facts.tank(), asOf, outcome.chance(), outcome.excess() * belief.fishAlive(),
                judgement.driver(), outcome.hoursToLimit(), judgement.ageIfAny(), stage,
                belief.fishAlive(), Reasons.of(belief, outcome, judgement, limits, stage),
                Fans.of(course, outcome.picked(), belief, limits));
    }
}
