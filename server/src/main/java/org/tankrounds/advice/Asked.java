package org.tankrounds.advice;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tankrounds.belief.Observation;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.water.Analyte;

/** Readings, by what they are asked for. */
final class Asked {

    private Asked() {
    }

    /** The reading that says most about a limit. */
    static Analyte of(Driver driver) {
        return switch (driver) {
            case TEMPERATURE, SILENCE, DEATHS -> Analyte.TEMPERATURE;
            case UN_IONISED_AMMONIA -> Analyte.TOTAL_AMMONIA;
            case NITRITE -> Analyte.NITRITE;
            case DISSOLVED_OXYGEN -> Analyte.DISSOLVED_OXYGEN;
            case PH -> Analyte.PH;
            case CHLORINE -> Analyte.CHLORINE;
        };
    }

    static Optional<Observation> newest(List<Observation> observations, Analyte analyte, Forecast forecast) {
        return observations.stream()
                .filter(o -> o.analyte() == analyte && !o.doubtful() && !o.at().isAfter(forecast.asOf()))
                .max(Comparator.comparing(Observation::at));
    }
}
