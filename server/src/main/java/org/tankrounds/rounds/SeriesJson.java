package org.tankrounds.rounds;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.FanPoint;
import org.tankrounds.web.Speech;

/** The season of a tank for the exploring script: times in seconds since 1970, levels in the reader's units. */
final class SeriesJson {
    private final Speech speech;
    private final Levels levels;

    SeriesJson(Speech speech) {
        this.speech = speech;
        this.levels = new Levels(speech);
    }

    ObjectNode of(TankSeason season, Instant asOf) {
        ObjectNode body = JsonNodeFactory.instance.objectNode();
        body.put("from", season.from().getEpochSecond());
        body.put("asOf", asOf.getEpochSecond());
        body.put("longestJoinedSeconds", Runs.LONGEST_JOINED.toSeconds());
        ArrayNode all = body.putArray("series");
        season.series().forEach(series -> add(all.addObject(), series, season.from(), asOf));
        return body;
    }

    private void add(ObjectNode node, SeasonSeries series, Instant from, Instant asOf) {
        DoubleUnaryOperator shown = shown(series);
        node.put("code", series.code()).put("name", levels.nameAndUnit(series.code()));
        node.put("low", shown.applyAsDouble(series.scale().low()));
        node.put("high", shown.applyAsDouble(series.scale().high()));
        ArrayNode points = node.putArray("points");
        series.drawn(from).forEach(point ->
                points.addArray().add(point.at().getEpochSecond()).add(shown.applyAsDouble(point.value())));
        ArrayNode limits = node.putArray("limits");
        series.limits().forEach(steps -> {
            ArrayNode line = limits.addArray();
            steps.forEach(step -> line.addArray().add(step.from().getEpochSecond())
                    .add(shown.applyAsDouble(step.level())));
        });
        ArrayNode fan = node.putArray("fan");
        series.forecast().ifPresent(forecast ->
                forecast.fan().forEach(point -> add(fan.addArray(), point, asOf, shown)));
    }

    private DoubleUnaryOperator shown(SeasonSeries series) {
        return series.driver().equals(Optional.of(Driver.TEMPERATURE))
                ? speech.scale()::of : DoubleUnaryOperator.identity();
    }

    private static void add(ArrayNode row, FanPoint point, Instant asOf, DoubleUnaryOperator shown) {
        row.add(asOf.getEpochSecond() + Math.round(point.hours() * 3600)).add(shown.applyAsDouble(point.q05()))
                .add(shown.applyAsDouble(point.q50())).add(shown.applyAsDouble(point.q95()));
    }
}
