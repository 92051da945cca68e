package org.tankrounds.behaviour;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.tankrounds.fish.Stage;

/**
 * One look at the fish of a tank.
 *
 * @param seen one way at most of each behaviour
 */
public record Look(int lookId, Instant seenAt, List<Seen> seen) {
    /** Older, it tells little of the fish now (common practice, no source). */
    public static final Duration LATELY = Duration.ofHours(36);

    public Look {
        seen = List.copyOf(seen);
    }

    /** The gravest of what was seen; two that are worth a second look are worth telling the coordinator. */
    public Alarm alarm(Stage stage) {
        return seen.stream().map(one -> one.alarm(stage)).max(Alarm::compareTo).orElse(Alarm.NONE);
    }

    /** What of it is out of the usual. */
    public List<Seen> worries(Stage stage) {
        return seen.stream().filter(one -> one.alarm(stage) != Alarm.NONE).toList();
    }

    /** Whether the board says so: one grave sign, or two that are worth a second look. */
    public boolean isTold(Stage stage) {
        return alarm(stage) == Alarm.ACT || worries(stage).size() > 1;
    }
}
