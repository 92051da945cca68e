package org.tankrounds.rounds;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.FanPoint;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.SeriesForecast;
import org.tankrounds.pages.SmallPicture;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Speech;

/** The small picture of a row: ten days back, 72 hours ahead, the same for every tank. */
final class Sparkline {
    static final int WIDTH = 216;
    static final int HEIGHT = 46;
    static final Duration BACK = Duration.ofDays(10);
    /** A probe is drawn as a line, readings by hand as dots on it. */
    private static final int DOTS_UP_TO = 25;

    private final Formats formats;
    private final Speech speech;
    private final Levels wording;

    Sparkline(Formats formats) {
        this.formats = formats;
        this.speech = formats.speech();
        this.wording = new Levels(speech);
    }

    /** Levels that a scale common to all rows has to show. */
    static List<Double> levels(TankForecast row, Driver series) {
        DoubleStream read = recent(row, series).stream().mapToDouble(SeriesPoint::value);
        DoubleStream ahead = row.forecast().series().stream().filter(s -> s.series() == series)
                .flatMap(s -> s.fan().stream()).mapToDouble(FanPoint::q75);
        return DoubleStream.concat(read, ahead).boxed().toList();
    }

    SmallPicture draw(TankForecast row, SeriesForecast series, SeriesScale scale) {
        Instant now = row.forecast().asOf();
        Instant from = now.minus(BACK);
        double seconds = BACK.toSeconds() + Forecast.HORIZON_HOURS * 3600.0;
        DoubleUnaryOperator x = sinceFrom -> sinceFrom / seconds * WIDTH;
        DoubleUnaryOperator y = level -> scale.y(level, HEIGHT);
        DoubleUnaryOperator ahead = hours -> x.applyAsDouble(BACK.toSeconds() + hours * 3600);
        List<SeriesPoint> points = recent(row, series.series());
        List<String> lines = Runs.of(points).stream().filter(run -> run.size() > 1)
                .map(run -> line(run, from, x, y)).toList();
        List<SeriesPoint> dotted = points.size() <= DOTS_UP_TO
                ? points : points.subList(points.size() - 1, points.size());
        List<SmallPicture.Dot> dots = dotted.stream()
                .map(point -> new SmallPicture.Dot(
                        SvgPath.number(x.applyAsDouble(Duration.between(from, point.at()).toSeconds())),
                        SvgPath.number(y.applyAsDouble(point.value())), point.notDetected()))
                .toList();
        List<String> limits = DoubleStream.concat(series.upperLimit().stream(), series.lowerLimit().stream())
                .mapToObj(limit -> SvgPath.number(y.applyAsDouble(limit))).toList();
        return new SmallPicture(WIDTH, HEIGHT, alternative(points, series, now), lines, dots,
                Fan.wide(series.fan(), ahead, y), Fan.narrow(series.fan(), ahead, y),
                SvgPath.number(ahead.applyAsDouble(0)), limits);
    }

    private static List<SeriesPoint> recent(TankForecast row, Driver series) {
        Instant from = row.forecast().asOf().minus(BACK);
        return row.recent(series).stream().filter(point -> !point.at().isBefore(from)).toList();
    }

    private static String line(
            List<SeriesPoint> run, Instant from, DoubleUnaryOperator x, DoubleUnaryOperator y) {
        SvgPath path = new SvgPath();
        run.forEach(point -> path.to(
                x.applyAsDouble(Duration.between(from, point.at()).toSeconds()), y.applyAsDouble(point.value())));
        return path.data();
    }

    /**
     * "Temperature: 15.6 °C, read today 7:52, between 11.2 and 15.6 °C in ten days. Limit 18 °C. In 72 hours most
     * likely 16.0 to 21.0 °C."
     */
    private String alternative(List<SeriesPoint> all, SeriesForecast series, Instant now) {
        Driver driver = series.series();
        List<SeriesPoint> points = all.stream().filter(point -> !point.at().isAfter(now)).toList();
        String read = points.isEmpty() ? speech.say("pictures.row.unread", wording.name(driver)) : read(points, driver);
        String limit = series.limit().isEmpty() ? ""
                : speech.say("pictures.row.limit", wording.limit(driver, series.limit().getAsDouble()));
        return Phrase.joined(read, limit, ahead(series), later(all.subList(points.size(), all.size()), driver));
    }

    private String read(List<SeriesPoint> points, Driver driver) {
        SeriesPoint last = points.get(points.size() - 1);
        return speech.say("pictures.row.read", wording.name(driver),
                last.notDetected() ? wording.notDetected() : wording.withUnit(driver, last.value()),
                formats.moment(last.at()), wording.bare(driver, least(points)),
                wording.withUnit(driver, most(points)));
    }

    private String ahead(SeriesForecast series) {
        if (series.fan().isEmpty()) {
            return "";
        }
        FanPoint end = series.fan().get(series.fan().size() - 1);
        return speech.say("pictures.row.ahead", wording.bare(series.series(), end.q25()),
                wording.withUnit(series.series(), end.q75()));
    }

    /** Of a past morning, what was read since. */
    private String later(List<SeriesPoint> points, Driver driver) {
        return points.isEmpty() ? "" : speech.say("pictures.row.later", wording.bare(driver, least(points)),
                wording.withUnit(driver, most(points)));
    }

    private static double least(List<SeriesPoint> points) {
        return points.stream().mapToDouble(SeriesPoint::value).min().orElseThrow();
    }

    private static double most(List<SeriesPoint> points) {
        return points.stream().mapToDouble(SeriesPoint::value).max().orElseThrow();
    }
}
