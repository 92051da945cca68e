package org.tankrounds.rounds;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tankrounds.advice.Act;
import org.tankrounds.advice.Advice;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.Held;
import org.tankrounds.forecast.Outlook;
import org.tankrounds.forecast.Telling;
import org.tankrounds.forecast.Ways;
import org.tankrounds.readings.LastLook;

/**
 * All that the rounds remember of a tank: one row.
 *
 * @param ways how far apart the ways lie in which it could go; empty in a row of an older version of the service
 * @param telling the reading that would narrow it most; empty where none would tell much
 * @param held what it takes for true; empty as {@code ways} is
 * @param advice what to do or bring
 * @param recent the last two weeks of each drawn series, oldest first
 * @param lastLook who looked last; empty before the first reading
 */
record TankForecast(
        int tankId,
        Instant computedAt,
        Forecast forecast,
        Optional<Ways> ways,
        Optional<Telling> telling,
        Optional<Held> held,
        Advice advice,
        Map<Driver, List<SeriesPoint>> recent,
        Optional<LastLook> lastLook) {

    TankForecast(int tankId, Instant computedAt, Outlook outlook, Advice advice,
            Map<Driver, List<SeriesPoint>> recent, Optional<LastLook> lastLook) {
        this(tankId, computedAt, outlook.forecast(), Optional.of(outlook.ways()), outlook.telling(),
                Optional.of(outlook.held()), advice, recent, lastLook);
    }

    TankForecast {
        recent = Map.copyOf(recent);
    }

    TankForecast withRecent(Map<Driver, List<SeriesPoint>> newRecent) {
        return new TankForecast(tankId, computedAt, forecast, ways, telling, held, advice, newRecent, lastLook);
    }

    List<Act> acts() {
        return advice.acts();
    }

    List<SeriesPoint> recent(Driver series) {
        return recent.getOrDefault(series, List.of());
    }
}
