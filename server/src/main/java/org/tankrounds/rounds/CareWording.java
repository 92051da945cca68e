package org.tankrounds.rounds;

import org.tankrounds.advice.Act;
import org.tankrounds.forecast.Driver;
import org.tankrounds.web.Speech;

/** Why feed is withheld and air given, each against another trouble. */
final class CareWording {
    private final Speech speech;

    CareWording(Speech speech) {
        this.speech = speech;
    }

    String noFeed(Act act) {
        Driver trouble = act.driver().orElse(Driver.UN_IONISED_AMMONIA);
        return speech.say("advice.noFeed.why." + switch (trouble) {
            case UN_IONISED_AMMONIA, TEMPERATURE, DISSOLVED_OXYGEN, PH, DEATHS -> trouble.code();
            default -> "others";
        });
    }

    String moreAir(Act act) {
        Driver trouble = act.driver().orElse(Driver.DISSOLVED_OXYGEN);
        return switch (trouble) {
            case TEMPERATURE, NITRITE, DEATHS -> speech.say("advice.air.why." + trouble.code());
            default -> "";
        };
    }
}
