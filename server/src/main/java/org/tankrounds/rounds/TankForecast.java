package org.tankrounds.rounds;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tankrounds.advice.Act;
import org.tankrounds.advice.Advice;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.readings.LastLook;

/**
 * All that the rounds remember of a tank: one row.
 *
 * @param advice what to do or bring
 * @param recent the last two weeks of each drawn series, oldest first
 * @param lastLook who looked last; empty before the first reading
 */
record TankForecast(
        int tankId,
        Instant computedAt,
        Forecast forecast,
        Advice advice,
        Map<Driver, List<SeriesPoint>> recent,
        Optional<LastLook> lastLook) {

    TankForecast {
        recent = Map.copyOf(recent);
    }

    List<Act> acts() {
        return advice.acts();
    }

    List<SeriesPoint> recent(Driver series) {
        return recent.getOrDefault(series, List.of());
    }
}
