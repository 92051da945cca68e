package org.tankrounds.forecast;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One reason behind a forecast, as numbers; the page makers turn it into words. Which numbers are
 * present depends on the kind, see {@link Kind}.
 *
 * @param kind what sort of reason
 * @param driver the limit or signal that it speaks of; empty for the reasons of a healthy tank
 * @param share of the exposure and chance that it explains, 0 to 1
 * @param value the level held now, in {@code unit}
 * @param unit of {@code value}, {@code limit}, {@code change} and {@code previous}
 * @param limit the limit that matters
 * @param previous the level before, at the start of {@code change}
 * @param change how far the level moved (signed)
 * @param overHours in how many hours it moved, or for how long the thing has lasted
 * @param at when the newest reading behind it was taken
 * @param since when the movement began, or the event happened
 * @param count how many (deaths, readings)
 * @param hoursToLimit median hours until this limit is met, 0 when met now
 * @param oneIn for silence: tanks silent this long are beyond a limit 1 time in this many
 * @param earliest of an expected event (hatch, first feeding)
 * @param latest of that event
 */
public record Reason(
        Kind kind,
        Optional<Driver> driver,
        double share,
        OptionalDouble value,
        String unit,
        OptionalDouble limit,
        OptionalDouble previous,
        OptionalDouble change,
        OptionalDouble overHours,
        Optional<Instant> at,
        Optional<Instant> since,
        OptionalInt count,
        OptionalDouble hoursToLimit,
        OptionalDouble oneIn,
        Optional<Instant> earliest,
        Optional<Instant> latest) {

    /** Alkalinity below which nothing holds the pH, mg/L as CaCO3 (US EPA national criteria list). */
    public static final double LEAST_ALKALINITY_MG_PER_L = 20;

    /** The sorts of reasons and the numbers each carries. */
    public enum Kind {
        /** The series is beyond its limit now: value, limit, at; change and overHours where it moved. */
        BEYOND_LIMIT,
        /** The series is on its way to its limit: value, limit, previous, change, overHours, hoursToLimit. */
        HEADED_FOR_LIMIT,
        /** The series is near its limit or uncertain enough to be beyond it: value, limit, at. */
        NEAR_LIMIT,
        /** Temperature climbs as a room warms a tank whose chiller stands: value, limit, hoursToLimit. */
        CHILLER_LOOKS_STOPPED,
        /** Feeding began lately and the filter does not yet keep up: since (first feeding), overHours. */
        FILTER_NOT_RIPE,
        /** Little chloride lets nitrite in: value (chloride mg/L), limit (nitrite limit, mg/L as N). */
        LOW_CHLORIDE,
        /** The pH makes more of the ammonia harmful: value (pH), change (percent un-ionised). */
        HIGH_PH_MAKES_AMMONIA_HARMFUL,
        /** Alkalinity is nearly used up, pH may fall: value (mg/L as CaCO3), at. */
        ALKALINITY_LOW,
        /** Fish found dead: count, overHours (in how many hours), value (most within a day), at (newest). */
        DEATHS,
        /** Nobody has read the tank: overHours (age of the newest reading), at, oneIn. */
        SILENCE,
        /** Not read for long while others were: overHours, at, value; no at: never read, value is held. */
        SERIES_NOT_READ,
        /** No reading of any kind has come. */
        NO_READINGS,
        /** A reading that does not fit its neighbours was set aside until another agrees: value, unit, at. */
        READING_SET_ASIDE,
        /** Nothing is near a limit: the healthy tank's reason. value, unit, at of the temperature. */
        STEADY,
        /** Eggs are to hatch: earliest, latest. */
        HATCH_EXPECTED,
        /** First feeding is to come: earliest, latest. */
        FIRST_FEEDING_EXPECTED,
        /** Fish feed since: since, overHours. */
        FEEDING_SINCE
    }

    public Reason {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(driver, "driver");
        Objects.requireNonNull(unit, "unit");
    }

    /** A reason with no numbers yet. */
    public static Reason of(Kind kind, Driver driver, double share) {
        OptionalDouble none = OptionalDouble.empty();
        return new Reason(kind, Optional.ofNullable(driver), share, none, "", none, none, none, none,
                Optional.empty(), Optional.empty(), OptionalInt.empty(), none, none,
                Optional.empty(), Optional.empty());
    }

    public Reason withShare(double newShare) {
        return new Reason(kind, driver, newShare, value, unit, limit, previous, change, overHours, at,
                since, count, hoursToLimit, oneIn, earliest, latest);
    }

    public Reason withValue(double level, String levelUnit) {
        return new Reason(kind, driver, share, OptionalDouble.of(level), levelUnit, limit, previous,
                change, overHours, at, since, count, hoursToLimit, oneIn, earliest, latest);
    }

    public Reason withLimit(OptionalDouble newLimit) {
        return new Reason(kind, driver, share, value, unit, newLimit, previous, change, overHours, at,
                since, count, hoursToLimit, oneIn, earliest, latest);
    }

    public Reason withChange(double from, double by, double hours) {
        return new Reason(kind, driver, share, value, unit, limit, OptionalDouble.of(from),
                OptionalDouble.of(by), OptionalDouble.of(hours), at, since, count, hoursToLimit,
                oneIn, earliest, latest);
    }

    /** How many per cent of the ammonia are un-ionised, kept in {@code change}. */
    public Reason withShareOfAmmonia(double percent) {
        return new Reason(kind, driver, share, value, unit, limit, previous,
                OptionalDouble.of(percent), overHours, at, since, count, hoursToLimit, oneIn, earliest,
                latest);
    }

    public Reason withOverHours(double hours) {
        return new Reason(kind, driver, share, value, unit, limit, previous, change,
                OptionalDouble.of(hours), at, since, count, hoursToLimit, oneIn, earliest, latest);
    }

    public Reason withAt(Instant time) {
        return new Reason(kind, driver, share, value, unit, limit, previous, change, overHours,
                Optional.ofNullable(time), since, count, hoursToLimit, oneIn, earliest, latest);
    }

    public Reason withSince(Instant time) {
        return new Reason(kind, driver, share, value, unit, limit, previous, change, overHours, at,
                Optional.ofNullable(time), count, hoursToLimit, oneIn, earliest, latest);
    }

    public Reason withCount(int number) {
        return new Reason(kind, driver, share, value, unit, limit, previous, change, overHours, at,
                since, OptionalInt.of(number), hoursToLimit, oneIn, earliest, latest);
    }

    public Reason withHoursToLimit(OptionalDouble hours) {
        return new Reason(kind, driver, share, value, unit, limit, previous, change, overHours, at,
                since, count, hours, oneIn, earliest, latest);
    }

    public Reason withOneIn(double oneIn) {
        return new Reason(kind, driver, share, value, unit, limit, previous, change, overHours, at,
                since, count, hoursToLimit, OptionalDouble.of(oneIn), earliest, latest);
    }

    public Reason withWindow(Instant from, Instant until) {
        return new Reason(kind, driver, share, value, unit, limit, previous, change, overHours, at,
                since, count, hoursToLimit, oneIn, Optional.of(from), Optional.of(until));
    }
}
