package org.tankrounds.advice;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.tankrounds.belief.Observation;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.water.Analyte;

/** Readings, by what they are asked for. */
final class Asked {

    private static final Duration LATELY = Duration.ofDays(1);

    /** Water is changed against what was read within this time; later, another reading tells whether to. */
    private static final Duration FRESH = Duration.ofDays(3);
    /** So long a reading of ammonia or nitrite tells of what is held. */
    static final Duration NITROGEN_COUNTS = Duration.ofDays(7);

    private Asked() {
    }

    /** The reading that says most about a limit. */
    static Analyte of(Driver driver) {
        return switch (driver) {
            case TEMPERATURE, SILENCE -> Analyte.TEMPERATURE;
            case UN_IONISED_AMMONIA -> Analyte.TOTAL_AMMONIA;
            case NITRITE -> Analyte.NITRITE;
            case DISSOLVED_OXYGEN, DEATHS -> Analyte.DISSOLVED_OXYGEN;
            case PH -> Analyte.PH;
            case CHLORINE -> Analyte.CHLORINE;
        };
    }

    /** What also bears on it, in the order to ask for. */
    private static List<Analyte> beside(Driver driver) {
        return switch (driver) {
            case PH -> List.of(Analyte.ALKALINITY, Analyte.TOTAL_AMMONIA, Analyte.NITRITE);
            case UN_IONISED_AMMONIA -> List.of(Analyte.PH, Analyte.TEMPERATURE);
            case NITRITE -> List.of(Analyte.CHLORIDE);
            case DISSOLVED_OXYGEN -> List.of(Analyte.TEMPERATURE, Analyte.TOTAL_AMMONIA);
            case DEATHS -> List.of(Analyte.NITRITE, Analyte.TOTAL_AMMONIA);
            case SILENCE -> List.of(Analyte.NITRITE, Analyte.TOTAL_AMMONIA, Analyte.DISSOLVED_OXYGEN);
            case TEMPERATURE, CHLORINE -> List.of();
        };
    }

    /** The first of what bears on a limit that nobody has read within a day. */
    static Optional<Analyte> missing(Driver driver, List<Observation> observations, Forecast forecast) {
        return Stream.concat(Stream.of(of(driver)), beside(driver).stream())
                .filter(analyte -> !isReadLately(analyte, observations, forecast)).findFirst();
    }

    /**
     * The first of what has to be read before water is changed against a limit. What fresh water does to
     * ammonia hangs on the pH, and what it does to the pH on the ammonia; and a tank that has gone sour unseen
     * is only harmed by it, which either would show.
     */
    static Optional<Analyte> beforeChange(Driver driver, List<Observation> observations, Forecast forecast) {
        Predicate<Analyte> isFresh = analyte -> isReadWithin(FRESH, analyte, observations, forecast);
        if (driver == Driver.NITRITE) {
            return !isFresh.test(Analyte.NITRITE) ? Optional.of(Analyte.NITRITE)
                    : isFresh.test(Analyte.PH) || isFresh.test(Analyte.TOTAL_AMMONIA) ? Optional.empty()
                    : Optional.of(Analyte.PH);
        }
        return Stream.of(of(driver), driver == Driver.PH ? Analyte.TOTAL_AMMONIA : Analyte.PH)
                .filter(isFresh.negate()).findFirst();
    }

    /** Read within the week. */
    static boolean isAmmoniaKnown(List<Observation> observations, Forecast forecast) {
        return isReadWithin(NITROGEN_COUNTS, Analyte.TOTAL_AMMONIA, observations, forecast);
    }

    static boolean isReadLately(Analyte analyte, List<Observation> observations, Forecast forecast) {
        return isReadWithin(LATELY, analyte, observations, forecast);
    }

    static boolean isReadWithin(
            Duration time, Analyte analyte, List<Observation> observations, Forecast forecast) {
        return newest(observations, analyte, forecast)
                .filter(read -> read.at().isAfter(forecast.asOf().minus(time))).isPresent();
    }

    static Optional<Observation> newest(List<Observation> observations, Analyte analyte, Forecast forecast) {
        return observations.stream()
                .filter(o -> o.analyte() == analyte && !o.doubtful() && !o.at().isAfter(forecast.asOf()))
                .max(Comparator.comparing(Observation::at));
    }
}
