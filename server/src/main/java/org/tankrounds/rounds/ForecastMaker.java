package org.tankrounds.rounds;

import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.tankrounds.advice.Advisor;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.Forecaster;
import org.tankrounds.forecast.LookAhead;

/** Runs the engine on a tank and keeps what a picture of it needs. */
public final class ForecastMaker {
    static final Duration RECENT = Duration.ofDays(14);
    /** A probe reads every few minutes; a small picture shows no more than this many a day. */
    private static final Duration THINNED_TO = Duration.ofHours(6);
    private static final int THIN_FROM = 40;

    private final Forecaster forecaster;
    private final Advisor advisor;

    public ForecastMaker(Forecaster forecaster, Advisor advisor) {
        this.forecaster = forecaster;
        this.advisor = advisor;
    }

    Forecast forecast(TankInput input, Instant asOf) {
        return forecaster.forecast(input.facts(), input.observations(), asOf);
    }

    TankForecast make(TankInput input, Instant asOf, Instant computedAt) {
        LookAhead ahead = forecaster.lookAhead(input.facts(), input.observations(), asOf);
        return new TankForecast(
                input.tank().tankId(),
                computedAt,
                ahead.outlook(),
                advisor.advise(ahead, input.observations()),
                recent(input, asOf),
                input.lastLook());
    }

    private static Map<Driver, List<SeriesPoint>> recent(TankInput input, Instant asOf) {
        Map<Driver, List<SeriesPoint>> recent = new EnumMap<>(Driver.class);
        for (Driver series : SeriesOfTank.DRAWN) {
            List<SeriesPoint> points = SeriesOfTank.of(series, input.observations()).stream()
                    .filter(point -> point.at().isAfter(asOf.minus(RECENT)))
                    .toList();
            recent.put(series, thinned(points));
        }
        return recent;
    }

    /** The means of every few hours. */
    static List<SeriesPoint> thinned(List<SeriesPoint> points) {
        return points.size() <= THIN_FROM ? points : Means.of(points, THINNED_TO);
    }
}
