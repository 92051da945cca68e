package org.tankrounds.forecast;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.tankrounds.belief.TankBelief;
import org.tankrounds.fish.Stage;

/**
 * What adds most to a tank's risk, and each limit's share of it.
 *
 * @param driver what adds most
 * @param shares by limit, adding up to 1
 * @param deathsShare how much of the chance the deaths of the last days account for
 * @param ageHours of the newest observation; infinite without one
 * @param lastRead by limit
 * @param moved what experience adds, by limit
 */
record Judgement(Driver driver, Map<Driver, Double> shares, double deathsShare, double ageHours,
        Map<Driver, LastRead> lastRead, MovedBy moved) {

    /** From this age on silence is worth naming, h. */
    static final double SILENT_HOURS = 96;
    /** Last read below this share of its limit, a series was fine. */
    private static final double FINE = 0.75;
    private static final double DEATHS_TELL = 0.25;
    /** What is passed so much more seldom than another limit is not what a tank is visited for. */
    private static final double SELDOM = 0.2;
    /** A path that passes a limit weighs like this many hours at twice the limit. */
    private static final double HOURS_PER_PASSING = 2;

    /**
     * @param raisedByDeaths share of the chance that the deaths found lately account for; below 0 where none
     * @param moved what experience adds, by limit
     */
    static Judgement of(TankBelief belief, Outcome outcome, double raisedByDeaths, MovedBy moved, Limits limits,
            Stage stage) {
        Map<Driver, Double> shares = new EnumMap<>(Driver.class);
        Map<Driver, LastRead> lastRead = new EnumMap<>(Driver.class);
        double total = 0;
        for (Driver limit : Outcome.limits()) {
            double weight = outcome.excess(limit) + HOURS_PER_PASSING * outcome.chanceOf(limit);
            shares.put(limit, weight);
            total += weight;
            lastRead.put(limit, LastRead.of(limit, belief));
        }
        Driver top = total > 0 ? top(shares, outcome) : nearest(outcome);
        for (Driver limit : Outcome.limits()) {
            double seen = total > 0 ? shares.get(limit) / total : limit == top ? 1.0 : 0.0;
            shares.put(limit, moved.share(limit, seen));
        }
        top = moved.isMost() ? largest(shares) : top;
        double age = belief.newest().isEmpty() ? Double.POSITIVE_INFINITY
                : (belief.asOf().getEpochSecond() - belief.newest().get().getEpochSecond()) / 3600.0;
        double deathsShare = belief.deaths().count() == 0 ? 0 : Math.max(0, raisedByDeaths);
        boolean lastFine = wasFine(top, lastRead.get(top), belief, limits, stage);
        Driver driver = top;
        if (age >= SILENT_HOURS && lastFine) {
            driver = Driver.SILENCE;
        } else if (lastFine && belief.deaths().count() >= 2 && deathsShare >= DEATHS_TELL) {
            driver = Driver.DEATHS;
        }
        return new Judgement(driver, shares, deathsShare, age, lastRead, moved);
    }

    /** By the harm, among the limits that are not passed far more seldom than another. */
    private static Driver top(Map<Driver, Double> weights, Outcome outcome) {
        double likeliest = Arrays.stream(Outcome.limits()).mapToDouble(outcome::chanceOf).max().orElseThrow();
        return Arrays.stream(Outcome.limits()).filter(limit -> outcome.chanceOf(limit) >= SELDOM * likeliest)
                .max(Comparator.<Driver>comparingDouble(outcome::excess).thenComparingDouble(weights::get))
                .orElseThrow();
    }

    private static Driver largest(Map<Driver, Double> shares) {
        return shares.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey();
    }

    /** Where no path passes any limit: the one that comes nearest. */
    private static Driver nearest(Outcome outcome) {
        Driver best = Driver.TEMPERATURE;
        for (Driver limit : Outcome.limits()) {
            best = outcome.highPeak(limit) > outcome.highPeak(best) ? limit : best;
        }
        return best;
    }

    private static boolean wasFine(
            Driver limit, LastRead read, TankBelief belief, Limits limits, Stage stage) {
        return read.value().isEmpty() || u(limit, read, belief, limits, stage) < FINE;
    }

    /** Of a reading that there is. */
    private static double u(Driver limit, LastRead read, TankBelief belief, Limits limits, Stage stage) {
        double value = read.value().getAsDouble();
        return switch (limit) {
            case TEMPERATURE -> limits.ofTemperature(stage, value);
            case UN_IONISED_AMMONIA -> limits.ofUnIonisedAmmonia(value);
            case NITRITE -> limits.ofNitrite(value, belief.chlorideMgPerL());
            case DISSOLVED_OXYGEN -> limits.ofOxygen(stage, value);
            case PH -> limits.ofPh(value);
            default -> limits.ofChlorine(value);
        };
    }

    /** Whether what was read is itself beyond its limit. */
    static boolean isBeyond(Driver limit, LastRead read, TankBelief belief, Limits limits, Stage stage) {
        return read.value().isPresent() && u(limit, read, belief, limits, stage) > 1;
    }

    double movedBy(Driver limit) {
        return moved.of(limit);
    }

    double share(Driver limit) {
        return shares.getOrDefault(limit, 0.0);
    }

    /** Of what is left beside chlorine, which is far beyond its limit where it is found at all, and hides the rest. */
    double shareBesideChlorine(Driver limit) {
        double rest = 1 - share(Driver.CHLORINE);
        return limit == Driver.CHLORINE || rest <= 0 ? share(limit) : share(limit) / rest;
    }

    OptionalDouble ageIfAny() {
        return Double.isInfinite(ageHours) ? OptionalDouble.empty() : OptionalDouble.of(ageHours);
    }
}
