package org.tankrounds.forecast;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.fish.Stage;

/** Stands in for the engine until it is built: a flat forecast of the right shape. */
final class Placeholder {

    private Placeholder() {
    }

    static Forecast forecast(TankFacts facts, List<Observation> observations, Instant asOf) {
        List<SeriesForecast> series = new ArrayList<>();
        series.add(flat(Driver.TEMPERATURE, "°C", 10, 13));
        series.add(flat(Driver.UN_IONISED_AMMONIA, "mg/L as NH₃", 0.002, 0.0125));
        series.add(flat(Driver.NITRITE, "mg/L as N", 0.02, 0.15));
        series.add(flat(Driver.DISSOLVED_OXYGEN, "mg/L", 10, 8));
        series.add(flat(Driver.PH, "pH", 7.4, 9));
        OptionalDouble age = observations.stream().map(Observation::at).filter(at -> !at.isAfter(asOf))
                .mapToDouble(at -> (asOf.getEpochSecond() - at.getEpochSecond()) / 3600.0).min();
        return new Forecast(facts.tank(), asOf, 0.1, 1, Driver.TEMPERATURE, OptionalDouble.empty(), age,
                Stage.EGG, facts.eggs().orElse(100),
                List.of(Reason.of(Reason.Kind.STEADY, null, 1).withValue(10, "°C")), series);
    }

    private static SeriesForecast flat(Driver series, String unit, double level, double limit) {
        List<FanPoint> fan = new ArrayList<>();
        for (int hours = 0; hours <= Forecast.HORIZON_HOURS; hours += 6) {
            double spread = level * 0.1 * (1 + hours / 72.0);
            fan.add(new FanPoint(hours, level - spread, level - spread / 2, level, level + spread / 2,
                    level + spread));
        }
        return new SeriesForecast(series, unit, OptionalDouble.of(limit), OptionalDouble.empty(), fan);
    }
}
