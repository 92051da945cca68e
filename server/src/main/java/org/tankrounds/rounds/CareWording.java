package org.tankrounds.rounds;

import org.tankrounds.advice.Act;
import org.tankrounds.forecast.Driver;

/** Why feed is withheld and air given, each against another trouble. */
final class CareWording {
    private CareWording() {}

    static String noFeed(Act act) {
        return switch (act.driver().orElse(Driver.UN_IONISED_AMMONIA)) {
            case UN_IONISED_AMMONIA -> "Feed turns into more ammonia.";
            case TEMPERATURE -> "In water so warm they digest badly and breathe hard.";
            case DISSOLVED_OXYGEN -> "Digesting takes oxygen.";
            case PH -> "Feed turns into ammonia, and that uses up alkalinity.";
            case DEATHS -> "What is not fed does not spoil the water.";
            default -> "The filter catches up.";
        };
    }

    static String moreAir(Act act) {
        return switch (act.driver().orElse(Driver.DISSOLVED_OXYGEN)) {
            case TEMPERATURE -> " Warm water holds less oxygen, and fish need more.";
            case NITRITE -> " Blood that nitrite has made brown carries less oxygen.";
            case DEATHS -> " They may lack it, whatever else they die of.";
            default -> "";
        };
    }
}
