package org.tankrounds.rounds;

import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Reason;
import org.tankrounds.web.Formats;

/** What to say of a tank that does well: steady, hatching, feeding. */
final class LifeWording {
    private final Formats formats;

    LifeWording(Formats formats) {
        this.formats = formats;
    }

    Phrase steady(Reason reason) {
        return reason.value().isPresent()
                ? Phrase.of("Steady at " + Levels.withUnit(Driver.TEMPERATURE, reason.value().getAsDouble()) + ".")
                : Phrase.of("Steady.");
    }

    Phrase expected(String event, Reason reason) {
        if (reason.earliest().isEmpty() || reason.latest().isEmpty()) {
            return Phrase.of(event + " expected.");
        }
        return Phrase.of(event + " expected " + formats.window(reason.earliest().get(), reason.latest().get()) + ".");
    }

    Phrase feedingSince(Reason reason) {
        return Phrase.of("Feeding" + reason.since().map(since -> " since " + formats.since(since)).orElse("") + ".");
    }
}
