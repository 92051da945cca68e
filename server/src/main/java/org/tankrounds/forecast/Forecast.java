package org.tankrounds.forecast;

import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import org.tankrounds.fish.Stage;

/**
 * A tank's next 72 hours.
 *
 * @param tank the tank's code
 * @param asOf the moment from which it looks ahead; nothing measured later counts
 * @param chance probability that the water is beyond a limit for two hours or more in all
 * @param exposure expected fish-hours beyond a limit, each weighted by how far beyond
 * @param driver what adds most
 * @param hoursToLimit median hours until a limit is met; 0 when met now; empty when the odds are against it
 * @param readingAgeHours hours since the newest observation of any kind; empty without one
 * @param stage the lot's stage at {@code asOf}
 * @param fishAlive eggs or fish believed alive
 * @param reasons why, the largest share first; never empty
 * @param series the spread of the five series, in the order of {@link Driver}
 */
public record Forecast(
        String tank,
        Instant asOf,
        double chance,
        double exposure,
        Driver driver,
        OptionalDouble hoursToLimit,
        OptionalDouble readingAgeHours,
        Stage stage,
        int fishAlive,
        List<Reason> reasons,
        List<SeriesForecast> series) {

    /** How far a forecast looks ahead, h. */
    public static final int HORIZON_HOURS = 72;

    public Forecast {
        reasons = List.copyOf(reasons);
        series = List.copyOf(series);
    }
}
