package org.tankrounds.rounds;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A probe reads more often than a picture can show: what lies close together is drawn as its mean. */
final class Means {
    static final Duration HOUR = Duration.ofHours(1);
    /** So many within a span are a probe's. */
    private static final int MANY = 3;

    private Means() {}

    /**
     * Means of every span that holds many points; few stay as they are, and so does the newest.
     *
     * @param points oldest first
     */
    static List<SeriesPoint> of(List<SeriesPoint> points, Duration span) {
        if (points.isEmpty()) {
            return points;
        }
        Map<Long, List<SeriesPoint>> spans = new TreeMap<>();
        points.subList(0, points.size() - 1).forEach(point -> spans.computeIfAbsent(
                Math.floorDiv(point.at().getEpochSecond(), span.toSeconds()), at -> new ArrayList<>()).add(point));
        List<SeriesPoint> drawn = new ArrayList<>();
        spans.forEach((at, within) -> drawn.addAll(within.size() < MANY ? within : List.of(mean(at, span, within))));
        drawn.add(points.get(points.size() - 1));
        return drawn;
    }

    /** Stands in the middle of its span, so that those of several series share a time. */
    private static SeriesPoint mean(long span, Duration length, List<SeriesPoint> within) {
        double mean = within.stream().mapToDouble(SeriesPoint::value).average().orElseThrow();
        Instant middle = Instant.ofEpochSecond(span * length.toSeconds()).plus(length.dividedBy(2));
        boolean noneDetected = within.stream().allMatch(SeriesPoint::notDetected);
        return new SeriesPoint(middle, mean, noneDetected, within.size());
    }
}
