package org.tankrounds.rounds;

import java.util.stream.Collectors;
import org.tankrounds.behaviour.Look;
import org.tankrounds.behaviour.LookWording;
import org.tankrounds.behaviour.SeenLately;
import org.tankrounds.fish.Stage;
import org.tankrounds.web.Formats;

/** What a class saw of its fish that is worth telling, in sentences. */
final class SeenWording {
    private SeenWording() {}

    /** One sentence for each look that saw some of it. */
    static String sentences(SeenLately seen, Stage stage, Formats formats) {
        return seen.worrying(stage).stream().map(look -> sentence(look, formats)).collect(Collectors.joining(" "));
    }

    private static String sentence(Look look, Formats formats) {
        return formats.speech().say("reasons.seen", LookWording.list(look.seen(), formats.speech().words()),
                formats.moment(look.seenAt()));
    }
}
