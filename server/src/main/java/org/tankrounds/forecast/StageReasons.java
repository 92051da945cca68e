package org.tankrounds.forecast;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.tankrounds.belief.TankBelief;
import org.tankrounds.fish.DateWindow;
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
        List<Reason> ahead = new ArrayList<>();
        belief.calendar().ifPresent(calendar -> {
            if (stage == Stage.EGG) {
                ahead.add(expected(Reason.Kind.HATCH_EXPECTED, calendar.hatch(), belief.asOf()));
            }
            ahead.add(expected(Reason.Kind.FIRST_FEEDING_EXPECTED, calendar.firstFeeding(), belief.asOf()));
        });
        return ahead;
    }

    /** What is late is expected from today on. */
    private static Reason expected(Reason.Kind kind, DateWindow window, Instant asOf) {
        return Reason.of(kind, null, 0).withWindow(later(window.earliest(), asOf), later(window.latest(), asOf));
    }

    private static Instant later(Instant one, Instant other) {
        return one.isBefore(other) ? other : one;
    }
}
