package org.tankrounds.fish;

import java.time.Instant;
import java.util.Optional;

/** When a class saw its lot come to each milestone; empty where nobody has said so. */
public record SeenStages(Optional<Instant> eyedAt, Optional<Instant> hatchedAt, Optional<Instant> firstFeedingAt) {

    public static final SeenStages NONE = new SeenStages(Optional.empty(), Optional.empty(), Optional.empty());

    public Optional<Instant> of(Milestone milestone) {
        return switch (milestone) {
            case EYED -> eyedAt;
            case HATCH -> hatchedAt;
            case FIRST_FEEDING -> firstFeedingAt;
        };
    }

    /** What was seen by then, as seen just after: days are kept without their hour. */
    SeenStages notBefore(Instant moment) {
        Instant after = moment.plusSeconds(1);
        return new SeenStages(eyedAt.map(at -> at.isBefore(after) ? after : at),
                hatchedAt.map(at -> at.isBefore(after) ? after : at),
                firstFeedingAt.map(at -> at.isBefore(after) ? after : at));
    }

    /** With another first feeding, or none. */
    public SeenStages withFirstFeedingAt(Optional<Instant> at) {
        return new SeenStages(eyedAt, hatchedAt, at);
    }
}
