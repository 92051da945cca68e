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
    static final Duration LATELY = Duration.ofHours(36);
    /**
     * What is grave is not over because nobody looked again; by then somebody did, or nobody is there to (our choice).
     */
    static final Duration GRAVE_STANDS = Duration.ofDays(7);

    public Look {
        seen = List.copyOf(seen);
    }

    /** What of it is still to be told. */
    Look standing(Instant now) {
        return with(seen.stream().filter(one -> seenAt.isAfter(now.minus(one.isGrave() ? GRAVE_STANDS : LATELY)))
                .toList());
    }

    Look with(List<Seen> others) {
        return new Look(lookId, seenAt, others);
    }

    /** The gravest of what was seen. */
    public Alarm alarm(Stage stage) {
        return seen.stream().map(one -> one.alarm(stage)).max(Alarm::compareTo).orElse(Alarm.NONE);
    }

    /** What of it is out of the usual. */
    public List<Seen> worries(Stage stage) {
        return seen.stream().filter(one -> one.alarm(stage) != Alarm.NONE).toList();
    }
}
