package org.tankrounds.rounds;

import org.tankrounds.advice.Act;
import org.tankrounds.forecast.Driver;
import org.tankrounds.water.Analyte;

/** Why a reading is asked for, where it is not plain from the reasons. */
final class AskWording {
    private AskWording() {}

    static String why(Act act) {
        Driver driver = act.driver().orElse(Driver.SILENCE);
        return Analyte.ofCode(act.asks()).map(analyte -> switch (analyte) {
            case PH -> isAgainstNitrogen(driver)
                    ? "It decides how much of the ammonia harms, and what fresh water would do." : "";
            case ALKALINITY -> isAgainstNitrogen(driver)
                    ? "It decides how much water to change: where little is left, fresh water lifts the pH and does"
                    + " more harm than good. Post it, and the amount stands here."
                    : "It holds the pH; it decides what fresh water or baking soda would do.";
            case CHLORIDE -> "It decides how much nitrite harms.";
            case CHLORINE -> driver == Driver.DEATHS
                    ? "First of all: untreated water kills within hours. Total chlorine, not only free." : "";
            case TOTAL_AMMONIA, NITRITE -> driver == Driver.PH
                    ? "A pH or alkalinity that comes back can make it harmful." : "";
            default -> "";
        }).orElse("");
    }

    private static boolean isAgainstNitrogen(Driver driver) {
        return driver == Driver.UN_IONISED_AMMONIA || driver == Driver.NITRITE;
    }
}
