package org.tankrounds.rounds;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import org.tankrounds.forecast.FanPoint;

/** The season of a tank for the exploring script: times in seconds since 1970, levels in the pages' units. */
final class SeriesJson {
    private SeriesJson() {}

    static ObjectNode of(TankSeason season, Instant asOf) {
        ObjectNode body = JsonNodeFactory.instance.objectNode();
        body.put("from", season.from().getEpochSecond());
        body.put("asOf", asOf.getEpochSecond());
        body.put("longestJoinedSeconds", Runs.LONGEST_JOINED.toSeconds());
        ArrayNode all = body.putArray("series");
        season.series().forEach(series -> add(all.addObject(), series, season.from(), asOf));
        return body;
    }

    private static void add(ObjectNode node, SeasonSeries series, Instant from, Instant asOf) {
        node.put("code", series.code()).put("name", series.name()).put("unit", series.unit());
        node.put("low", series.scale().low()).put("high", series.scale().high());
        ArrayNode points = node.putArray("points");
        series.drawn(from).forEach(point ->
                points.addArray().add(point.at().getEpochSecond()).add(point.value()));
        ArrayNode limits = node.putArray("limits");
        series.limits().forEach(steps -> {
            ArrayNode line = limits.addArray();
            steps.forEach(step -> line.addArray().add(step.from().getEpochSecond()).add(step.level()));
        });
        ArrayNode fan = node.putArray("fan");
        series.forecast().ifPresent(forecast -> forecast.fan().forEach(point -> add(fan.addArray(), point, asOf)));
    }

    private static void add(ArrayNode row, FanPoint point, Instant asOf) {
        row.add(asOf.getEpochSecond() + Math.round(point.hours() * 3600))
                .add(point.q05()).add(point.q50()).add(point.q95());
    }
}
