package org.tankrounds.tasks;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * Something to do at a tank.
 *
 * @param act kind of the advised act that was ticked; empty where a person asked
 * @param words what to do, as the class read it
 * @param askedBy name of the person; empty where it was advice
 * @param doneAt empty until the class ticked it
 */
public record Task(int taskId, Optional<String> act, String words, Optional<String> askedBy, Instant askedAt,
        Optional<Instant> doneAt) {

    public static final int LONGEST = 500;
    /** For so long what was done is still told. */
    public static final Duration LATELY = Duration.ofDays(3);
    /** An advised act that was ticked is not asked for again so soon (common practice, no source). */
    public static final Duration SAME_DEED = Duration.ofHours(12);

    public boolean isOpen() {
        return doneAt.isEmpty();
    }
}
