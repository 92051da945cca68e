package org.tankrounds.rounds;

import org.tankrounds.advice.Advisor;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.MassDeaths;
import org.tankrounds.forecast.Reason;

/** What the volunteer does about a tank. */
enum Tier {
    GO_TODAY("today"),
    GO_THIS_WEEK("week"),
    /** A call or a message tells more than a drive. */
    ASK_FOR_A_READING("ask"),
    NOTHING_NEEDED("none");

    /** More likely than not: a visit that comes later comes too late more often than not. */
    static final double TODAY_CHANCE = 0.5;
    /** At 1 in 5 in three days, a tank that is left alone for a week gets there 2 times in 5. */
    static final double THIS_WEEK_CHANCE = Advisor.WORRYING_CHANCE;
    /** From Friday to Wednesday without a look: somebody forgot, or nobody is there. */
    static final double SILENT_HOURS = 5 * 24;
    /** One in twenty in a week: more than chance takes from a healthy tank (common practice, no source). */
    static final double MANY_DEATHS_PER_FISH_DAY = 0.05 / 7;
    static final int FEWEST_DEATHS = 3;

    private final String key;

    Tier(String key) {
        this.key = key;
    }

    static Tier of(Forecast forecast) {
        boolean silent = forecast.readingAgeHours().isEmpty()
                || forecast.readingAgeHours().getAsDouble() >= SILENT_HOURS;
        if (MassDeaths.pressIn(forecast)) {
            return GO_TODAY;
        }
        if (forecast.driver() == Driver.SILENCE) {
            return silent || forecast.chance() >= THIS_WEEK_CHANCE ? ASK_FOR_A_READING : NOTHING_NEEDED;
        }
        boolean beyondNow = forecast.hoursToLimit().isPresent() && forecast.hoursToLimit().getAsDouble() == 0;
        if (forecast.chance() >= TODAY_CHANCE || beyondNow) {
            return GO_TODAY;
        }
        if (forecast.chance() >= THIS_WEEK_CHANCE || alkalinityIsUsedUp(forecast)) {
            return GO_THIS_WEEK;
        }
        return silent || diesUnexplained(forecast) || awaitsAnother(forecast) ? ASK_FOR_A_READING : NOTHING_NEEDED;
    }

    /** Fish die although what was read is fine, so something was not read. */
    static boolean diesUnexplained(Forecast forecast) {
        return forecast.reasons().stream().anyMatch(reason -> reason.kind() == Reason.Kind.DEATHS
                && reason.count().orElse(0) >= FEWEST_DEATHS
                && reason.count().getAsInt() * 24 >= MANY_DEATHS_PER_FISH_DAY
                        * reason.overHours().orElse(24) * forecast.fishAlive());
    }

    /** Nothing holds the pH any more; something has to be brought. */
    static boolean alkalinityIsUsedUp(Forecast forecast) {
        return forecast.reasons().stream().anyMatch(reason -> reason.kind() == Reason.Kind.ALKALINITY_LOW
                && reason.value().orElse(0) < Reason.LEAST_ALKALINITY_MG_PER_L);
    }

    /** One reading stands against all others: true or a slip of the pen, only another one tells. */
    static boolean awaitsAnother(Forecast forecast) {
        return forecast.reasons().stream().anyMatch(reason -> reason.kind() == Reason.Kind.READING_SET_ASIDE);
    }

    /** Ends the keys of its messages and the names of its styles. */
    String key() {
        return key;
    }
}
