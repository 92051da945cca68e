package org.tankrounds.behaviour;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.tankrounds.fish.Stage;

/**
 * What stands of several looks at the fish of a tank: of each behaviour the newest word. A look that left a behaviour
 * out says nothing about it, so what was seen of it before still stands: a day and a half, and what is grave a week.
 *
 * @param looks the newest first, each with what no later one speaks of
 */
public record SeenLately(List<Look> looks) {
    public static final SeenLately NOTHING = new SeenLately(List.of());

    public SeenLately {
        looks = List.copyOf(looks);
    }

    static SeenLately of(List<Look> newestFirst, Instant now) {
        Set<Behaviour> spokenOf = EnumSet.noneOf(Behaviour.class);
        List<Look> standing = new ArrayList<>();
        for (Look look : newestFirst) {
            List<Seen> stands = look.seen().stream().filter(seen -> spokenOf.add(seen.behaviour())).toList();
            Look rest = look.with(stands).standing(now);
            if (!rest.seen().isEmpty()) {
                standing.add(rest);
            }
        }
        return new SeenLately(standing);
    }

    /** The gravest of what stands. */
    public Alarm alarm(Stage stage) {
        return looks.stream().map(look -> look.alarm(stage)).max(Alarm::compareTo).orElse(Alarm.NONE);
    }

    /** The looks that saw something out of the usual, with no more than that. */
    public List<Look> worrying(Stage stage) {
        return looks.stream().map(look -> look.with(look.worries(stage)))
                .filter(look -> !look.seen().isEmpty()).toList();
    }

    /** All that is out of the usual. */
    public List<Seen> worries(Stage stage) {
        return worrying(stage).stream().map(Look::seen).flatMap(List::stream).toList();
    }

    /** Of those, the ones that ask for most. */
    public List<Seen> gravest(Stage stage) {
        return worries(stage).stream().filter(seen -> seen.alarm(stage) == alarm(stage)).toList();
    }

    /** Whether the board says so: one grave sign, or two that are worth a second look. */
    public boolean isTold(Stage stage) {
        return alarm(stage) == Alarm.ACT || worries(stage).size() > 1;
    }
}
