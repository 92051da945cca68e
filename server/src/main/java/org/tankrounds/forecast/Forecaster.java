package org.tankrounds.forecast;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.tankrounds.belief.BeliefFilter;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.OxygenReadings;
import org.tankrounds.belief.PastedLog;
import org.tankrounds.belief.TankBelief;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.fish.Stage;
import org.tankrounds.water.Analyte;

/** From a tank's facts and observations to its next 72 hours. Stateless; one may serve all threads. */
public final class Forecaster {

    private final Limits limits;
    private final Experience experience;

    public Forecaster(Limits limits) {
        this(limits, Experience.shipped());
    }

    /** With experience other than that which ships. */
    public Forecaster(Limits limits, Experience experience) {
        this.limits = Objects.requireNonNull(limits, "limits");
        this.experience = Objects.requireNonNull(experience, "experience");
    }

    /** With the sourced limits. */
    public Forecaster() {
        this(Limits.DEFAULT);
    }

    /**
     * The forecast of a tank. The same input gives the same output, bit for bit.
     *
     * @param observations in any order; those after {@code asOf} do not count, nor last season's
     */
    public Forecast forecast(TankFacts facts, List<Observation> observations, Instant asOf) {
        return lookAhead(facts, observations, asOf).forecast();
    }

    /** The same with the courses behind it. */
    public LookAhead lookAhead(TankFacts facts, List<Observation> noted, Instant asOf) {
        List<Observation> observations = ofTheSeason(facts, noted, asOf);
        TankBelief belief = BeliefFilter.believe(facts, observations, asOf);
        Paths course = ForwardModel.run(belief);
        Outcome outcome = new Outcome(course, limits);
        double[] signs = Signs.of(belief, outcome, observations, limits);
        double learned = experience.chance(signs);
        double unseen = UnseenTrouble.chance(belief.deaths(), asOf);
        double chance = learned + (1 - learned) * unseen;
        double chanceHadNoneDied = experience.chance(Signs.hadNoneDied(signs));
        double exposurePerFish = experience.exposurePerFish(signs, learned) + outcome.excess(Driver.CHLORINE)
                + unseen * UnseenTrouble.EXCESS_HOURS;
        outcome.weighTo(chanceHadNoneDied, chance);
        Stage stage = course.stage()[0];
        Judgement judgement = Judgement.of(
                belief, outcome, 1 - chanceHadNoneDied / chance, MovedBy.of(experience, signs), limits, stage);
        Forecast forecast = new Forecast(facts.tank(), asOf, rounded(outcome.chance(), 1e4),
                rounded(exposurePerFish * belief.fishAlive(), 1e3),
                judgement.driver(), outcome.hoursToLimit(), judgement.ageIfAny(), stage,
                belief.fishAlive(), Reasons.of(belief, outcome, judgement, limits, stage),
                Fans.of(course, outcome.picked(), belief, limits));
        return new LookAhead(forecast, belief, course, outcome, limits,
                () -> lookAhead(facts, noChlorineFound(observations), asOf));
    }

    private static List<Observation> noChlorineFound(List<Observation> observations) {
        return observations.stream().map(o -> o.analyte() != Analyte.CHLORINE ? o
                : new Observation(o.at(), o.analyte(), 0, o.halfStep(), false, o.doubtful())).toList();
    }

    /** The signs that experience judges a tank by, in the order of {@link Sign}; for making experience. */
    public double[] signs(TankFacts facts, List<Observation> noted, Instant asOf) {
        List<Observation> observations = ofTheSeason(facts, noted, asOf);
        TankBelief belief = BeliefFilter.believe(facts, observations, asOf);
        return Signs.of(belief, new Outcome(ForwardModel.run(belief), limits), observations, limits);
    }

    /**
     * What counts. The same line again, as in a file pasted twice, is no second look that bears out a slip of the pen;
     * nor is a whole log that was pasted again under other hours.
     */
    private static List<Observation> ofTheSeason(TankFacts facts, List<Observation> noted, Instant asOf) {
        Instant from = facts.seasonFrom(asOf);
        List<Observation> known = PastedLog.once(noted.stream()
                .filter(o -> !o.at().isBefore(from) && !o.at().isAfter(asOf)).distinct().toList());
        known = Observation.deedsOnce(known);
        return OxygenReadings.setRight(Observation.asFarAsCredible(known), facts.elevationM().orElse(0));
    }

    /** To the decimals that are published, so that the order can be checked from what is printed. */
    static double rounded(double number, double scale) {
        return Math.rint(number * scale) / scale;
    }
}
