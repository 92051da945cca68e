package org.tankrounds.forecast;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.SeriesBelief;
import org.tankrounds.belief.TankBelief;
import org.tankrounds.water.Ammonia;

/**
 * What a person saw last of a limit's series, and the reading before that it is told against.
 *
 * @param reading the newest reading; for un-ionised ammonia the total ammonia's
 * @param value in the limit's unit
 * @param previous the value it moved from
 * @param overHours in how many hours
 */
record LastRead(Optional<Observation> reading, OptionalDouble value, OptionalDouble previous,
        OptionalDouble overHours) {

    private static final Duration MOVEMENT = Duration.ofDays(6);
    private static final Duration OTHERS = Duration.ofDays(21);
    private static final double FEW_HOURS = 3;

    static LastRead of(Driver limit, TankBelief belief) {
        return of(limit, belief, SeriesBelief::readings, belief.temperature().readings());
    }

    /** The same with the newest reading even where that is set aside until another agrees with it. */
    static LastRead ofAll(Driver limit, TankBelief belief) {
        return of(limit, belief, series -> and(series.readings(), series.setAside()),
                and(belief.temperature().readings(), belief.temperature().setAside()));
    }

    private static LastRead of(Driver limit, TankBelief belief,
            Function<SeriesBelief, List<Observation>> readings, List<Observation> temperatures) {
        return switch (limit) {
            case TEMPERATURE -> warmedSince(temperatures);
            case UN_IONISED_AMMONIA ->
                scaled(against(readings.apply(belief.totalAmmonia())), unIonised(belief));
            case NITRITE -> against(readings.apply(belief.nitrite()));
            case DISSOLVED_OXYGEN -> against(readings.apply(belief.oxygenShare()));
            case PH -> against(readings.apply(belief.ph()));
            case CHLORINE -> belief.newestChlorine().map(o -> of(o, OptionalDouble.empty(),
                    OptionalDouble.empty())).orElse(none());
            default -> none();
        };
    }

    private static List<Observation> and(List<Observation> readings, Optional<Observation> setAside) {
        return Stream.concat(readings.stream(), setAside.stream()).toList();
    }

    /** Signed movement, where there is one to tell. */
    OptionalDouble change() {
        return previous.isPresent() && value.isPresent()
                ? OptionalDouble.of(value.getAsDouble() - previous.getAsDouble())
                : OptionalDouble.empty();
    }

    private static double unIonised(TankBelief belief) {
        return Ammonia.unIonisedMgPerL(1, belief.ph().valueNow(), belief.temperature().medianC());
    }

    /** Against the coldest reading of the last days, so that a slow warming is told whole. */
    private static LastRead warmedSince(List<Observation> readings) {
        if (readings.isEmpty()) {
            return none();
        }
        Observation newest = readings.get(readings.size() - 1);
        Observation coldest = null;
        for (Observation reading : readings) {
            if (reading.at().isAfter(newest.at().minus(MOVEMENT)) && reading.at().isBefore(newest.at())
                    && (coldest == null || reading.value() <= coldest.value())) {
                coldest = reading;
            }
        }
        return coldest == null ? of(newest, OptionalDouble.empty(), OptionalDouble.empty())
                : between(coldest, newest);
    }

    /** Against the reading before. */
    private static LastRead against(List<Observation> readings) {
        if (readings.isEmpty()) {
            return none();
        }
        Observation newest = readings.get(readings.size() - 1);
        for (int i = readings.size() - 2; i >= 0; i--) {
            Observation before = readings.get(i);
            if (before.at().isBefore(newest.at().minus(OTHERS))) {
                break;
            }
            if (hours(before, newest) >= FEW_HOURS) {
                return between(before, newest);
            }
        }
        return of(newest, OptionalDouble.empty(), OptionalDouble.empty());
    }

    private static LastRead scaled(LastRead read, double by) {
        return new LastRead(read.reading, times(read.value, by), times(read.previous, by), read.overHours);
    }

    private static OptionalDouble times(OptionalDouble value, double by) {
        return value.isPresent() ? OptionalDouble.of(value.getAsDouble() * by) : value;
    }

    private static LastRead between(Observation before, Observation newest) {
        return of(newest, OptionalDouble.of(before.value()), OptionalDouble.of(hours(before, newest)));
    }

    private static double hours(Observation before, Observation newest) {
        return (newest.at().getEpochSecond() - before.at().getEpochSecond()) / 3600.0;
    }

    private static LastRead of(Observation newest, OptionalDouble previous, OptionalDouble hours) {
        return new LastRead(Optional.of(newest), OptionalDouble.of(newest.value()), previous, hours);
    }

    private static LastRead none() {
        return new LastRead(Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
                OptionalDouble.empty());
    }
}
