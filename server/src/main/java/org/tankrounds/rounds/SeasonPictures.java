package org.tankrounds.rounds;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.FanPoint;
import org.tankrounds.forecast.SeriesForecast;
import org.tankrounds.pages.SeasonChart;
import org.tankrounds.pages.SeasonChart.Tick;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Speech;

/** Draws the series of a tank over the season. */
final class SeasonPictures {
    static final int HEIGHT = 92;
    private static final int MOST_TICKS = 4;

    private final Formats formats;
    private final Speech speech;
    private final Levels levels;
    private final SeasonAxis axis;

    SeasonPictures(Formats formats, SeasonAxis axis) {
        this.formats = formats;
        this.speech = formats.speech();
        this.levels = new Levels(speech);
        this.axis = axis;
    }

    SeasonChart draw(SeasonSeries series) {
        List<SeriesPoint> points = series.points().stream().filter(point -> !point.at().isBefore(axis.from())).toList();
        List<FanPoint> fan = series.forecast().map(SeriesForecast::fan).orElse(List.of());
        List<SeriesPoint> drawn = series.drawn(axis.from());
        SeriesScale scale = series.scale().covering(Stream.concat(
                drawn.stream().map(SeriesPoint::value),
                fan.stream().flatMap(point -> Stream.of(point.q25(), point.q75()))).toList());
        DoubleUnaryOperator y = level -> scale.y(level, HEIGHT);
        List<String> lines = Runs.of(drawn).stream().filter(run -> run.size() > 1).map(run -> line(run, y)).toList();
        return new SeasonChart(levels.nameAndUnit(series.code()), newest(series), alternative(series, points, fan),
                HEIGHT, ticks(shown(series, scale)), lines, dots(drawn, false, y), dots(drawn, true, y),
                Fan.wide(fan, axis::ahead, y), Fan.narrow(fan, axis::ahead, y),
                series.limits().stream().map(steps -> limit(steps, y)).toList(),
                new SvgPath().to(axis.nowX(), 0).to(axis.nowX(), HEIGHT).data());
    }

    private String line(List<SeriesPoint> run, DoubleUnaryOperator y) {
        SvgPath path = new SvgPath();
        run.forEach(point -> path.to(axis.x(point.at()), y.applyAsDouble(point.value())));
        return path.data();
    }

    /** Strokes of no length with round ends: they stay round when the picture is stretched. */
    private String dots(List<SeriesPoint> points, boolean notDetected, DoubleUnaryOperator y) {
        return points.stream().filter(point -> point.notDetected() == notDetected && !point.isMean())
                .map(point -> "M" + SvgPath.number(axis.x(point.at())) + " "
                        + SvgPath.number(y.applyAsDouble(point.value())) + "h0.01")
                .collect(Collectors.joining());
    }

    private String limit(List<SeasonSeries.LimitStep> steps, DoubleUnaryOperator y) {
        SvgPath path = new SvgPath();
        for (int i = 0; i < steps.size(); i++) {
            double height = y.applyAsDouble(steps.get(i).level());
            double start = Math.max(0, axis.x(steps.get(i).from()));
            double end = i + 1 < steps.size() ? axis.x(steps.get(i + 1).from()) : SeasonAxis.WIDTH;
            if (end > 0 && start < SeasonAxis.WIDTH) {
                path.to(start, height).to(Math.min(SeasonAxis.WIDTH, end), height);
            }
        }
        return path.data();
    }

    private String newest(SeasonSeries series) {
        if (series.points().isEmpty()) {
            return speech.say("pictures.notRead");
        }
        SeriesPoint last = series.points().get(series.points().size() - 1);
        return (last.notDetected() ? levels.notDetected() : levels.withUnit(series.code(), last.value())) + ", "
                + formats.moment(last.at());
    }

    /** The same heights on the reader's scale, where numbers are to be round. */
    private SeriesScale shown(SeasonSeries series, SeriesScale scale) {
        return series.driver().equals(Optional.of(Driver.TEMPERATURE))
                ? new SeriesScale(speech.scale().of(scale.low()), speech.scale().of(scale.high())) : scale;
    }

    private String alternative(SeasonSeries series, List<SeriesPoint> points, List<FanPoint> fan) {
        String code = series.code();
        List<String> parts = new ArrayList<>();
        parts.add(speech.say("pictures.season.newest", levels.name(code), newest(series)));
        if (points.size() > 1) {
            double least = points.stream().mapToDouble(SeriesPoint::value).min().orElseThrow();
            double most = points.stream().mapToDouble(SeriesPoint::value).max().orElseThrow();
            parts.add(speech.say("pictures.season.read", points.size(), levels.bare(code, least),
                    levels.withUnit(code, most)));
        }
        series.driver().ifPresent(driver -> series.limits().forEach(steps -> parts.add(
                speech.say("pictures.season.limit", levels.limit(driver, atNow(steps))))));
        if (!fan.isEmpty()) {
            FanPoint end = fan.get(fan.size() - 1);
            parts.add(speech.say("pictures.season.ahead", levels.bare(code, end.q25()),
                    levels.withUnit(code, end.q75())));
        }
        return String.join("; ", parts) + ".";
    }

    private double atNow(List<SeasonSeries.LimitStep> steps) {
        Instant now = formats.now();
        Optional<SeasonSeries.LimitStep> held = steps.stream().filter(step -> !step.from().isAfter(now))
                .reduce((first, second) -> second);
        return held.orElse(steps.get(0)).level();
    }

    /** Round numbers, few enough to read. */
    static List<Tick> ticks(SeriesScale scale) {
        double span = scale.high() - scale.low();
        BigDecimal step = BigDecimal.ONE.scaleByPowerOfTen((int) Math.floor(Math.log10(span)) - 1);
        for (int factor : new int[] {2, 5, 10, 20, 50, 100}) {
            if (span / step.doubleValue() <= MOST_TICKS) {
                break;
            }
            step = BigDecimal.valueOf(factor)
                    .scaleByPowerOfTen((int) Math.floor(Math.log10(span)) - 1);
        }
        List<Tick> ticks = new ArrayList<>();
        long first = (long) Math.ceil(scale.low() / step.doubleValue() - 1e-9);
        for (long i = first; step.doubleValue() * i <= scale.high() + 1e-9; i++) {
            double level = step.doubleValue() * i;
            ticks.add(new Tick(SvgPath.number(scale.y(level, HEIGHT)), Formats.significant(level, 3), "end"));
        }
        return ticks;
    }
}
