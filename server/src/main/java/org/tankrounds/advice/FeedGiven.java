package org.tankrounds.advice;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.tankrounds.belief.Observation;
import org.tankrounds.water.Analyte;

/** Whether a tank was fed much more than it is used to, so that some of it may lie there and rot. */
final class FeedGiven {

    private static final Duration LATELY = Duration.ofDays(3);
    private static final Duration USUALLY = Duration.ofDays(17);
    private static final int FEWEST_TO_KNOW = 3;
    /** Twice the usual is no growth of the fish (common practice, no source). */
    private static final double JUMP_TIMES = 2;

    private FeedGiven() {
    }

    /** The most that was given a day in the last three, by the median of two weeks before; empty below twice that. */
    static OptionalDouble timesTheUsual(List<Observation> observations, Instant asOf) {
        List<Daily> daily = daily(observations, asOf);
        double[] before = daily.stream().filter(each -> !each.at().isAfter(asOf.minus(LATELY)))
                .mapToDouble(Daily::grams).sorted().toArray();
        if (before.length < FEWEST_TO_KNOW || before[before.length / 2] == 0) {
            return OptionalDouble.empty();
        }
        return daily.stream().filter(each -> each.at().isAfter(asOf.minus(LATELY)))
                .mapToDouble(each -> each.grams() / before[before.length / 2])
                .filter(times -> times >= JUMP_TIMES).max();
    }

    private record Daily(Instant at, double grams) {
    }

    /** A note tells what was given since the one before. */
    private static List<Daily> daily(List<Observation> observations, Instant asOf) {
        List<Observation> notes = observations.stream()
                .filter(o -> o.analyte() == Analyte.FEED && !o.doubtful() && !o.at().isAfter(asOf))
                .filter(o -> o.at().isAfter(asOf.minus(USUALLY)))
                .sorted(Comparator.comparing(Observation::at)).toList();
        List<Daily> daily = new ArrayList<>();
        Instant since = Instant.MIN;
        for (Observation note : notes) {
            double days = since == Instant.MIN ? 1 : Duration.between(since, note.at()).toHours() / 24.0;
            daily.add(new Daily(note.at(), note.value() / Math.max(1, days)));
            since = note.at();
        }
        return daily;
    }
}
