package org.tankrounds.forecast;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.tankrounds.belief.TankBelief;
import org.tankrounds.fish.Stage;

/** How far the lot has come, and what it comes to next. */
final class StageReasons {

    private StageReasons() {
    }

    static List<Reason> of(TankBelief belief, Stage stage) {
        Instant feeding = belief.development().firstFeedingAt();
        if (stage == Stage.FEEDING) {
            return List.of(Reason.of(Reason.Kind.FEEDING_SINCE, null, 0).withSince(feeding)
                    .withOverHours((belief.asOf().getEpochSecond() - feeding.getEpochSecond()) / 3600.0));
        }
        if (belief.facts().eggsReceivedAt().isEmpty()) {
            return List.of();
        }
        List<Reason> ahead = new ArrayList<>();
        if (stage == Stage.EGG) {
            ahead.add(expected(Reason.Kind.HATCH_EXPECTED, belief.development().hatchAt(), belief.asOf()));
        }
        ahead.add(expected(Reason.Kind.FIRST_FEEDING_EXPECTED, feeding, belief.asOf()));
        return ahead;
    }

    /** A tenth of the time left to either side, a day at least. */
    private static Reason expected(Reason.Kind kind, Instant at, Instant asOf) {
        Duration left = Duration.between(asOf, at);
        Duration margin = left.dividedBy(10).compareTo(Duration.ofDays(1)) > 0
                ? left.dividedBy(10) : Duration.ofDays(1);
        Instant earliest = at.minus(margin);
        return Reason.of(kind, null, 0).withWindow(earliest.isBefore(asOf) ? asOf : earliest, at.plus(margin));
    }
}
