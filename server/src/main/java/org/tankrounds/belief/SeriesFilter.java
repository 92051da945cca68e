package org.tankrounds.belief;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Follows one series through its readings. A reading far from what is expected is set aside; when the next
 * look agrees with it both are believed; when that is further on the same side, the first is believed, and the further
 * one as far as would fit it, and when it is nearer, it alone: a run that gets worse by leaps bears itself out. Else it
 * is forgotten. A first reading has only tanks in general against it, and is believed however odd.
 */
final class SeriesFilter {

    /** From so many standard deviations on, one reading alone is not believed. */
    private static final double SURPRISE_SDS = 3.2;
    private static final double DOUBTFUL_SURPRISE_SDS = 1.5;
    private static final double AGREEMENT_SDS = 2.5;
    private static final double DOUBTFUL_RIGHT_AFTER_ALL = 0.04;
    private static final double UNBEARABLE_RIGHT_AFTER_ALL = 0.01;
    /** How often a surprising reading turns out right where as much speaks for it as against it. */
    private static final double WORD_AGAINST_WORD = 0.5;
    private static final double OPEN_SLOPE_VAR = 0.01;

    private final TrendModel model;
    private final ToDoubleFunction<Instant> population;
    private final SecondLooks secondLooks;
    private final List<Observation> believed = new ArrayList<>();
    private LocalTrend state;
    private Instant at;
    private Pending pending;

    /**
     * A reading set aside: on the scale, as a distance from the population of its time.
     *
     * @param isBorneOut another on the same side came before it, so that it is believed in part already
     */
    private record Pending(Observation reading, double distance, double variance, boolean isBorneOut) {
    }

    SeriesFilter(TrendModel model, ToDoubleFunction<Instant> population, Instant start, SecondLooks secondLooks) {
        this.model = model;
        this.population = population;
        this.secondLooks = secondLooks;
        this.at = start;
        this.state = new LocalTrend(0, 0, model.populationSd() * model.populationSd(), 0,
                model.slopeSd() * model.slopeSd());
    }

    /** A reading whose value lies between two ends, in the model's unit. */
    void see(Observation reading, double low, double high) {
        advance(reading.at());
        double scaledLow = model.scale().of(low);
        double scaledHigh = model.scale().of(high);
        double variance = model.readingVariance(scaledLow, scaledHigh);
        double distance = (scaledLow + scaledHigh) / 2 - population.applyAsDouble(reading.at());
        double surprise = Math.abs(state.surprise(distance, variance));
        boolean fits = believed.isEmpty() && !reading.doubtful() || surprise < surpriseSds(reading);
        boolean again = pending != null && agrees(distance, variance);
        if (again && secondLooks.areTwo(pending.reading, reading)) {
            believePending();
            state = state.seeing(distance, variance);
            believed.add(reading);
            pending = null;
        } else if (!again && isBeyondPending(reading, distance)) {
            believePending();
            believeInPart(new Pending(reading, distance, variance, reading.isBearable()));
        } else if (!again && !fits && isShortOfPending(reading, distance)) {
            Pending nearer = new Pending(reading, distance, variance, false);
            state = jumped(nearer);
            believed.add(reading);
            pending = null;
        } else if (fits) {
            state = state.seeing(distance, variance);
            believed.add(reading);
            pending = null;
        } else if (!again && !staysBefore(pending, reading)) {
            pending = new Pending(reading, distance, variance, false);
        }
    }

    /** What no fish could bear tells of the reader, and leaves what was read before as doubtful as it was. */
    private static boolean staysBefore(Pending held, Observation reading) {
        return held != null && held.reading.isBearable() && !reading.isBearable();
    }

    /** A share of the water was replaced by water that holds none of it. */
    void dilute(Instant when, double share) {
        advance(when);
        double base = population.applyAsDouble(when);
        double value = model.scale().valueOf(base + state.level());
        state = state.movedTo(model.scale().of(value * (1 - share)) - base);
    }

    SeriesBelief until(Instant asOf) {
        double days = days(at, asOf);
        LocalTrend probable = pending == null || pending.isBorneOut ? state : nudged(pending);
        LocalTrend alternative = pending == null ? state : jumped(pending);
        return new SeriesBelief(model, population, probable.after(days, model), alternative.after(days, model),
                pending == null ? 0 : rightAfterAll(pending), List.copyOf(believed),
                Optional.ofNullable(pending).filter(held -> !held.isBorneOut).map(Pending::reading), asOf);
    }

    private void believePending() {
        state = jumped(pending);
        if (!pending.isBorneOut) {
            believed.add(pending.reading);
        }
    }

    /** As far as fits what is believed by now; the rest of it waits, and so does all of what no fish could bear. */
    private void believeInPart(Pending further) {
        boolean fits = Math.abs(state.surprise(further.distance, further.variance)) < surpriseSds(further.reading);
        if (further.isBorneOut) {
            state = asFarAsFits(state, further);
            believed.add(further.reading);
        }
        pending = fits ? null : further;
    }

    private double rightAfterAll(Pending held) {
        if (held.reading.doubtful()) {
            return held.reading.isBearable() ? DOUBTFUL_RIGHT_AFTER_ALL : UNBEARABLE_RIGHT_AFTER_ALL;
        }
        return held.isBorneOut || believed.size() < 2 ? WORD_AGAINST_WORD : model.rightAfterAll();
    }

    private static double surpriseSds(Observation reading) {
        return reading.doubtful() ? DOUBTFUL_SURPRISE_SDS : SURPRISE_SDS;
    }

    /**
     * A reading set aside says as much as the furthest that would be believed: further is not less, until it tells of
     * the reader.
     */
    private LocalTrend nudged(Pending reading) {
        if (!reading.reading.isBearable()) {
            return state;
        }
        return asFarAsFits(state, reading);
    }

    private static LocalTrend asFarAsFits(LocalTrend held, Pending reading) {
        double most = surpriseSds(reading.reading) * Math.sqrt(held.levelVar() + reading.variance);
        double miss = Math.min(most, Math.max(-most, reading.distance - held.level()));
        return held.seeing(held.level() + miss, reading.variance);
    }

    private boolean agrees(double distance, double variance) {
        double apart = Math.abs(distance - pending.distance);
        double fromExpected = Math.abs(distance - state.level());
        double days = days(pending.reading.at(), at);
        double spread = variance + pending.variance
                + model.noisePerDay() * days + model.slopeSd() * model.slopeSd() * days * days;
        return apart < fromExpected && apart < AGREEMENT_SDS * Math.sqrt(spread);
    }

    private boolean isBeyondPending(Observation reading, double distance) {
        return sameSide(reading, distance)
                && Math.abs(distance - state.level()) >= Math.abs(pending.distance - state.level());
    }

    private boolean isShortOfPending(Observation reading, double distance) {
        return sameSide(reading, distance)
                && Math.abs(distance - state.level()) < Math.abs(pending.distance - state.level());
    }

    /** Two that nobody expected, on the same side of what was. */
    private boolean sameSide(Observation reading, double distance) {
        return pending != null && pending.reading.isBearable()
                && (distance > state.level()) == (pending.distance > state.level())
                && secondLooks.areTwo(pending.reading, reading);
    }

    private LocalTrend jumped(Pending reading) {
        double miss = reading.distance - state.level();
        return state.loosened(miss * miss, OPEN_SLOPE_VAR * model.populationSd())
                .seeing(reading.distance, reading.variance);
    }

    private void advance(Instant to) {
        double days = days(at, to);
        if (days > 0) {
            state = state.after(days, model);
            at = to;
        }
    }

    private static double days(Instant from, Instant to) {
        return (to.getEpochSecond() - from.getEpochSecond()) / 86_400.0;
    }
}
