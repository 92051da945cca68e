package org.tankrounds.rounds;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tankrounds.belief.Observation;
import org.tankrounds.fish.DatedTemperature;
import org.tankrounds.fish.Development;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Limits;
import org.tankrounds.forecast.SeriesForecast;
import org.tankrounds.season.Lot;
import org.tankrounds.water.Analyte;

/**
 * A tank's season to date: its series, and how far its eggs have come.
 *
 * @param from where the pictures begin
 */
record TankSeason(Instant from, Optional<Development> development, List<SeasonSeries> series) {
    static final double USUAL_C = 11;
    private static final double USUAL_TOTAL_AMMONIA = 2;
    private static final double USUAL_NITRATE = 20;
    private static final double USUAL_ALKALINITY = 150;
    private static final Duration SHORTEST = Duration.ofDays(7);
    private static final Duration WITHOUT_EGGS = Duration.ofDays(30);

    static TankSeason of(TankInput input, Optional<TankForecast> row, Instant now) {
        Instant began = input.eggsReceivedAt().orElse(now.minus(WITHOUT_EGGS));
        Instant from = began.isAfter(now.minus(SHORTEST)) ? now.minus(SHORTEST) : began;
        Optional<Development> development = development(input, now);
        List<SeasonSeries> series = new ArrayList<>();
        for (Driver driver : drawn(input)) {
            Optional<SeriesForecast> forecast = row.flatMap(held -> held.forecast().series().stream()
                    .filter(candidate -> candidate.series() == driver).findFirst());
            List<SeriesPoint> points = SeriesOfTank.of(driver, input.observations());
            series.add(SeasonSeries.of(driver, points, forecast.isPresent() ? forecast : unforecast(driver, input),
                    from, development));
        }
        add(series, Analyte.TOTAL_AMMONIA, USUAL_TOTAL_AMMONIA, input.observations());
        add(series, Analyte.NITRATE, USUAL_NITRATE, input.observations());
        add(series, Analyte.ALKALINITY, USUAL_ALKALINITY, input.observations());
        return new TankSeason(from, development, series);
    }

    private static List<Driver> drawn(TankInput input) {
        List<Driver> drawn = new ArrayList<>(SeriesOfTank.DRAWN);
        if (!SeriesOfTank.of(Driver.CHLORINE, input.observations()).isEmpty()) {
            drawn.add(Driver.CHLORINE);
        }
        return drawn;
    }

    /** A picture has its limits before the first forecast too, and chlorine's, which has no forecast. */
    private static Optional<SeriesForecast> unforecast(Driver driver, TankInput input) {
        double chloride = input.tank().chlorideMgPerL().orElse(Limits.CHLORIDE_WHERE_UNKNOWN_MG_PER_L);
        Stage stage = Stage.EGG;
        OptionalDouble upper = Limits.DEFAULT.upper(driver, stage, chloride);
        return Optional.of(new SeriesForecast(
                driver, "", upper, Limits.DEFAULT.lower(driver, stage), List.of()));
    }

    private static void add(
            List<SeasonSeries> series, Analyte analyte, double usualHigh, List<Observation> observations) {
        List<SeriesPoint> points = SeriesOfTank.of(analyte, observations);
        if (!points.isEmpty()) {
            series.add(SeasonSeries.of(analyte, usualHigh, points));
        }
    }

    static Optional<Development> development(TankInput input, Instant now) {
        if (input.lot().isEmpty()) {
            return Optional.empty();
        }
        Lot lot = input.lot().get();
        List<DatedTemperature> trace = input.observations().stream()
                .filter(o -> o.analyte() == Analyte.TEMPERATURE && !o.doubtful())
                .map(o -> new DatedTemperature(o.at(), o.value())).toList();
        return Optional.of(Development.of(lot.receivedAt(), lot.thermalUnitsC(), trace,
                input.tank().chillerSetPointC().orElse(USUAL_C), input.facts().seen(), now));
    }
}
