package org.tankrounds.rounds;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** Points that may be joined by a line. */
final class Runs {
    /** Nobody knows what the water did in a longer gap. */
    static final Duration LONGEST_JOINED = Duration.ofDays(3);

    private Runs() {}

    /** @param points oldest first */
    static List<List<SeriesPoint>> of(List<SeriesPoint> points) {
        List<List<SeriesPoint>> runs = new ArrayList<>();
        SeriesPoint before = null;
        for (SeriesPoint point : points) {
            if (before == null || Duration.between(before.at(), point.at()).compareTo(LONGEST_JOINED) > 0) {
                runs.add(new ArrayList<>());
            }
            runs.get(runs.size() - 1).add(point);
            before = point;
        }
        return runs;
    }
}
