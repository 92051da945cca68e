package org.tankrounds.rounds;

import java.util.stream.Stream;
import org.tankrounds.advice.Act;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Speech;

/** What to add, with how much of it: some, so many grams or kilograms, or so many for every 100 L. */
final class DoseWording {
    private final Speech speech;

    DoseWording(Speech speech) {
        this.speech = speech;
    }

    /** @param with goes before the amount */
    String say(String prefix, Act act, Object... with) {
        if (act.amount().isEmpty()) {
            return speech.say(prefix + "some", with);
        }
        String amount = Formats.significant(act.amount().getAsDouble(), 2);
        return speech.say(prefix + measure(act), Stream.concat(Stream.of(with), Stream.of(amount)).toArray());
    }

    /** Where nobody has said how much water there is, the dose is for every 100 L. */
    private static String measure(Act act) {
        return isPer100L(act) ? "per100L" : act.unit().equals("kg") ? "kg" : "grams";
    }

    static boolean isPer100L(Act act) {
        return act.unit().equals(Act.G_PER_100_L);
    }
}
