package org.tankrounds.rounds;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tankrounds.fish.Development;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Limits;
import org.tankrounds.forecast.SeriesForecast;
import org.tankrounds.water.Analyte;

/**
 * A series of the tank page: one of those with limits and a forecast, or one that only explains them.
 *
 * @param code the public name
 * @param driver empty where there is neither limit nor forecast
 * @param limits each a line that may step where the fish begin to feed
 */
record SeasonSeries(
        String code, Optional<Driver> driver, SeriesScale scale, List<SeriesPoint> points,
        Optional<SeriesForecast> forecast, List<List<LimitStep>> limits) {

    /** A limit from a moment on. */
    record LimitStep(Instant from, double level) {}

    static SeasonSeries of(
            Driver driver, List<SeriesPoint> points, Optional<SeriesForecast> forecast, Instant from,
            Optional<Development> development) {
        return new SeasonSeries(driver.code(), Optional.of(driver),
                SeriesScale.usual(driver), points, forecast, limits(driver, forecast, from, development));
    }

    static SeasonSeries of(Analyte analyte, double usualHigh, List<SeriesPoint> points) {
        return new SeasonSeries(analyte.code(), Optional.empty(),
                new SeriesScale(0, usualHigh), points, Optional.empty(), List.of());
    }

    /** What a picture shows of it: a probe's readings as hourly means. */
    List<SeriesPoint> drawn(Instant from) {
        return Means.of(points.stream().filter(point -> !point.at().isBefore(from)).toList(), Means.HOUR);
    }

    private static List<List<LimitStep>> limits(
            Driver driver, Optional<SeriesForecast> forecast, Instant from, Optional<Development> development) {
        List<List<LimitStep>> limits = new ArrayList<>();
        if (driver == Driver.TEMPERATURE || driver == Driver.DISSOLVED_OXYGEN) {
            limits.add(stepping(driver, from, development));
            return limits;
        }
        forecast.map(SeriesForecast::upperLimit).filter(OptionalDouble::isPresent)
                .ifPresent(limit -> limits.add(List.of(new LimitStep(from, limit.getAsDouble()))));
        forecast.map(SeriesForecast::lowerLimit).filter(OptionalDouble::isPresent)
                .ifPresent(limit -> limits.add(List.of(new LimitStep(from, limit.getAsDouble()))));
        return limits;
    }

    private static List<LimitStep> stepping(Driver driver, Instant from, Optional<Development> development) {
        double early = level(driver, Stage.EGG);
        double feeding = level(driver, Stage.FEEDING);
        if (development.isEmpty()) {
            return List.of(new LimitStep(from, early));
        }
        Instant fed = development.get().firstFeedingAt();
        return fed.isAfter(from)
                ? List.of(new LimitStep(from, early), new LimitStep(fed, feeding))
                : List.of(new LimitStep(from, feeding));
    }

    private static double level(Driver driver, Stage stage) {
        return driver == Driver.TEMPERATURE
                ? Limits.DEFAULT.temperatureC(stage)
                : Limits.DEFAULT.oxygenMgPerL(stage);
    }
}
