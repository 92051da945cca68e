package org.tankrounds.rounds;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tankrounds.belief.Observation;
import org.tankrounds.forecast.Driver;
import org.tankrounds.water.Ammonia;
import org.tankrounds.water.Analyte;

/** The dots of a series among a tank's observations; un-ionised ammonia is worked out from three of them. */
final class SeriesOfTank {
    /** Ammonia needs a pH and a temperature that were read about then; the class reads them together or in one week. */
    private static final Duration TOGETHER = Duration.ofDays(3);

    private SeriesOfTank() {}

    /** The five series that are drawn of every tank; chlorine only where it was read. */
    static final List<Driver> DRAWN = List.of(
            Driver.TEMPERATURE, Driver.UN_IONISED_AMMONIA, Driver.NITRITE, Driver.DISSOLVED_OXYGEN, Driver.PH);

    /** @param observations oldest first */
    static List<SeriesPoint> of(Driver series, List<Observation> observations) {
        if (series == Driver.UN_IONISED_AMMONIA) {
            return unIonised(observations);
        }
        Analyte analyte = analyte(series);
        return analyte == null ? List.of() : of(analyte, observations);
    }

    static List<SeriesPoint> of(Analyte analyte, List<Observation> observations) {
        return observations.stream().filter(o -> o.analyte() == analyte)
                .map(o -> new SeriesPoint(o.at(), level(o), o.below()))
                .toList();
    }

    private static List<SeriesPoint> unIonised(List<Observation> observations) {
        List<SeriesPoint> points = new ArrayList<>();
        for (Observation total : observations) {
            if (total.analyte() != Analyte.TOTAL_AMMONIA) {
                continue;
            }
            Optional<Observation> ph = nearest(Analyte.PH, total.at(), observations);
            Optional<Observation> temperature = nearest(Analyte.TEMPERATURE, total.at(), observations);
            if (ph.isPresent() && temperature.isPresent()) {
                double level = Ammonia.unIonisedMgPerL(level(total), ph.get().value(), temperature.get().value());
                points.add(new SeriesPoint(total.at(), level, total.below()));
            }
        }
        return points;
    }

    private static Optional<Observation> nearest(Analyte analyte, Instant at, List<Observation> observations) {
        Observation best = null;
        for (Observation candidate : observations) {
            if (candidate.analyte() == analyte && apart(candidate, at).compareTo(TOGETHER) <= 0
                    && (best == null || apart(candidate, at).compareTo(apart(best, at)) < 0)) {
                best = candidate;
            }
        }
        return Optional.ofNullable(best);
    }

    private static Duration apart(Observation observation, Instant at) {
        return Duration.between(observation.at(), at).abs();
    }

    /** Not detected is drawn in the middle of where it can be. */
    static double level(Observation observation) {
        if (!observation.below()) {
            return observation.value();
        }
        return observation.value() > 0 ? observation.value() / 2 : observation.halfStep() / 2;
    }

    private static Analyte analyte(Driver series) {
        return switch (series) {
            case TEMPERATURE -> Analyte.TEMPERATURE;
            case NITRITE -> Analyte.NITRITE;
            case DISSOLVED_OXYGEN -> Analyte.DISSOLVED_OXYGEN;
            case PH -> Analyte.PH;
            case CHLORINE -> Analyte.CHLORINE;
            default -> null;
        };
    }
}
