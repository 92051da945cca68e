package org.tankrounds.rounds;

import org.tankrounds.behaviour.Look;
import org.tankrounds.behaviour.LookWording;
import org.tankrounds.fish.Stage;
import org.tankrounds.web.Formats;

/** What a class saw of its fish that is worth telling, in a sentence. */
final class SeenWording {
    private SeenWording() {}

    static String sentence(Look look, Stage stage, Formats formats) {
        return formats.speech().say("reasons.seen", LookWording.list(look.worries(stage), formats.speech().words()),
                formats.moment(look.seenAt()));
    }
}
