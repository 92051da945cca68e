package org.tankrounds.rounds;

import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Reason;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Speech;

/** What to say of a tank that does well: steady, hatching, feeding. */
final class LifeWording {
    private final Formats formats;
    private final Speech speech;

    LifeWording(Formats formats) {
        this.formats = formats;
        this.speech = formats.speech();
    }

    Phrase steady(Reason reason) {
        return Phrase.of(reason.value().isPresent()
                ? speech.say("reasons.steadyAt",
                        new Levels(speech).withUnit(Driver.TEMPERATURE, reason.value().getAsDouble()))
                : speech.say("reasons.steady"));
    }

    Phrase hatch(Reason reason) {
        return Phrase.of(isDated(reason) ? speech.say("reasons.hatchWithin", window(reason))
                : speech.say("reasons.hatch"));
    }

    Phrase firstFeeding(Reason reason) {
        return Phrase.of(isDated(reason) ? speech.say("reasons.firstFeedingWithin", window(reason))
                : speech.say("reasons.firstFeeding"));
    }

    private static boolean isDated(Reason reason) {
        return reason.earliest().isPresent() && reason.latest().isPresent();
    }

    private String window(Reason reason) {
        return formats.window(reason.earliest().orElseThrow(), reason.latest().orElseThrow());
    }

    Phrase feedingSince(Reason reason) {
        return Phrase.of(reason.since().map(since -> speech.say("reasons.feedingSince", formats.since(since)))
                .orElseGet(() -> speech.say("reasons.feeding")));
    }
}
