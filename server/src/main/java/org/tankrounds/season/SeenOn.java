package org.tankrounds.season;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;
import org.tankrounds.fish.Milestone;
import org.tankrounds.fish.SeenStages;

/** On which days a class saw its lot come to each milestone; empty where nobody has said so. */
public record SeenOn(Optional<LocalDate> eyedOn, Optional<LocalDate> hatchedOn, Optional<LocalDate> firstFeedingOn) {

    public static final SeenOn NOTHING = new SeenOn(Optional.empty(), Optional.empty(), Optional.empty());

    public static SeenOn ofFirstFeeding(Optional<LocalDate> day) {
        return new SeenOn(Optional.empty(), Optional.empty(), day);
    }

    public Optional<LocalDate> of(Milestone milestone) {
        return switch (milestone) {
            case EYED -> eyedOn;
            case HATCH -> hatchedOn;
            case FIRST_FEEDING -> firstFeedingOn;
        };
    }

    public SeenOn with(Milestone milestone, Optional<LocalDate> day) {
        return switch (milestone) {
            case EYED -> new SeenOn(day, hatchedOn, firstFeedingOn);
            case HATCH -> new SeenOn(eyedOn, day, firstFeedingOn);
            case FIRST_FEEDING -> new SeenOn(eyedOn, hatchedOn, day);
        };
    }

    /** What was seen by a day; what was seen later is not known on it. */
    SeenOn knownOn(LocalDate today) {
        return new SeenOn(by(today, eyedOn), by(today, hatchedOn), by(today, firstFeedingOn));
    }

    /** Each at noon of its day. */
    public SeenStages at(ZoneId zone) {
        return new SeenStages(noon(eyedOn, zone), noon(hatchedOn, zone), noon(firstFeedingOn, zone));
    }

    private static Optional<LocalDate> by(LocalDate today, Optional<LocalDate> day) {
        return day.filter(seen -> !seen.isAfter(today));
    }

    private static Optional<Instant> noon(Optional<LocalDate> day, ZoneId zone) {
        return day.map(seen -> seen.atTime(LocalTime.NOON).atZone(zone).toInstant());
    }
}
