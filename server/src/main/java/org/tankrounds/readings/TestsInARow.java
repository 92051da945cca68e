package org.tankrounds.readings;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.tankrounds.belief.Observation;
import org.tankrounds.water.Analyte;
import org.tankrounds.words.Saying;

/** Whether a reading goes on with what the tests before it began. */
final class TestsInARow {
    private static final Duration LOOK_BACK = Duration.ofDays(21);
    private static final Duration APART = Duration.ofHours(1);
    private static final List<Analyte> WATCHED = List.of(Analyte.TOTAL_AMMONIA, Analyte.NITRITE, Analyte.TEMPERATURE);

    private TestsInARow() {}

    /** @return a sentence; empty where there is nothing to say */
    static Optional<Saying> upTo(ObservationRepository observations, DSLContext tx, int chapterId, Reading reading) {
        List<Observation> seen = observations.list(tx, chapterId, reading.tankId(),
                reading.measuredAt().minus(LOOK_BACK), reading.measuredAt());
        for (Analyte analyte : WATCHED) {
            int rises = rises(seen, analyte);
            boolean measuredNow = reading.values().stream().anyMatch(value -> value.analyte() == analyte);
            if (measuredNow && rises >= 2) {
                return Optional.of(Saying.of("readings.rising", Wording.name(analyte), words(rises)));
            }
        }
        return Optional.empty();
    }

    private static int rises(List<Observation> seen, Analyte analyte) {
        List<Observation> tests = seen.stream().filter(one -> one.analyte() == analyte && !one.doubtful()).toList();
        int rises = 0;
        for (int i = tests.size() - 1; i > 0 && isRise(tests.get(i - 1), tests.get(i)); i--) {
            rises++;
        }
        return rises;
    }

    /** What lies closer together is a probe's, or the same test once more. */
    private static boolean isRise(Observation before, Observation after) {
        return after.value() > before.value()
                && Duration.between(before.at(), after.at()).compareTo(APART) >= 0;
    }

    private static Saying words(int count) {
        return switch (count) {
            case 2 -> Saying.of("readings.two");
            case 3 -> Saying.of("readings.three");
            case 4 -> Saying.of("readings.four");
            default -> Saying.asIs(Integer.toString(count));
        };
    }
}
