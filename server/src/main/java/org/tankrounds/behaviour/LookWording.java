package org.tankrounds.behaviour;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tankrounds.fish.Stage;
import org.tankrounds.words.Saying;
import org.tankrounds.words.Words;

/** What a class saw of its fish, in words. What to do about it is common practice, no source. */
public final class LookWording {
    private LookWording() {}

    public static Saying label(Behaviour behaviour) {
        return Saying.of("looks.label." + behaviour.code());
    }

    /** Beside its label. */
    public static Saying choice(Seen seen) {
        return Saying.of("looks.choice." + seen.code());
    }

    /** Each by itself. */
    public static String list(List<Seen> seen, Words words) {
        return seen.stream().map(one -> words.say("looks.alone." + one.code())).collect(Collectors.joining(", "));
    }

    /** What to do now about what was seen; empty where nothing. */
    public static Optional<Saying> advice(SeenLately seen, Stage stage) {
        return switch (seen.alarm(stage)) {
            case ACT -> Optional.of(Saying.of("looks.advice.act"));
            case WATCH -> Optional.of(Saying.of("looks.advice.watch"));
            case NONE -> Optional.empty();
        };
    }
}
