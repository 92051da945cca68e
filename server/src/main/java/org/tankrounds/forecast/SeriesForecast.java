package org.tankrounds.forecast;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The spread of one series over the next 72 hours.
 *
 * @param series temperature, un-ionised ammonia, nitrite, dissolved oxygen or pH
 * @param unit as a person reads it: °C, mg/L as NH₃, mg/L as N, mg/L, pH
 * @param upperLimit the level above which the series is beyond its limit (at the stage and chloride held now)
 * @param lowerLimit the level below which it is
 * @param fan every 6 hours from 0 to 72
 */
public record SeriesForecast(
        Driver series,
        String unit,
        OptionalDouble upperLimit,
        OptionalDouble lowerLimit,
        List<FanPoint> fan) {

    public SeriesForecast {
        fan = List.copyOf(fan);
    }

    /** The limit to draw where only one fits: the upper one, else the lower one. */
    public OptionalDouble limit() {
        return upperLimit.isPresent() ? upperLimit : lowerLimit;
    }
}
