package org.tankrounds.rounds;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class MeansTest {
    private static final Instant EIGHT = Instant.parse("2026-01-12T08:00:00Z");

    @Test
    void aProbesReadings_becomeTheirHourlyMeans_butForTheNewest() {
        List<SeriesPoint> points = everyFiveMinutes(25);

        List<SeriesPoint> drawn = Means.of(points, Means.HOUR);

        assertThat(drawn).hasSize(3);
        assertThat(drawn.get(0).at()).isEqualTo("2026-01-12T08:30:00Z");
        // the mean of 0, 1 … 11 is 5.5
        assertThat(drawn.get(0).value()).isCloseTo(5.5, Offset.offset(1e-9));
        assertThat(drawn.get(0).isMean()).isTrue();
        assertThat(drawn.get(2)).isEqualTo(points.get(24));
    }

    @Test
    void aClasssReadings_stayAsTheyAre() {
        List<SeriesPoint> points = List.of(point(0, 11), point(30, 12), point(1440, 11.5));

        assertThat(Means.of(points, Means.HOUR)).isEqualTo(points);
    }

    @Test
    void aSeasonOfFiveMinutes_isDrawnByTheHour() {
        assertThat(Means.of(everyFiveMinutes(240 * 288), Means.HOUR)).hasSize(240 * 24 + 1);
    }

    @Test
    void nothing_staysNothing() {
        assertThat(Means.of(List.of(), Means.HOUR)).isEmpty();
    }

    private static List<SeriesPoint> everyFiveMinutes(int count) {
        return new ArrayList<>(IntStream.range(0, count).mapToObj(i -> point(5 * i, i)).toList());
    }

    private static SeriesPoint point(int minutes, double value) {
        return new SeriesPoint(EIGHT.plusSeconds(60L * minutes), value, false);
    }
}
