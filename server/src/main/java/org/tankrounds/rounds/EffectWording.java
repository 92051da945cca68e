package org.tankrounds.rounds;

import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import org.tankrounds.advice.Act;
import org.tankrounds.advice.Remedy;
import org.tankrounds.advice.Worth;
import org.tankrounds.forecast.Effect;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.web.Formats;

/** What an act is expected to do, in one line; where it does little, that is said. */
final class EffectWording {
    private static final double MUCH_TIMES = 1.2;

    private final Formats formats;

    EffectWording(Formats formats) {
        this.formats = formats;
    }

    /** Of one act by itself; empty where there is nothing to say. */
    String alone(Remedy remedy) {
        if (remedy.effect().isEmpty() || remedy.act().kind() == Act.Kind.LEAVE_WATER) {
            return "";
        }
        Effect effect = remedy.effect().get();
        boolean mends = remedy.act().kind() == Act.Kind.CHECK_CHILLER;
        String subject = mends ? "If it is set going again" : beside(remedy.leansOn());
        if (effect.harms()) {
            return harm(remedy.act(), effect);
        }
        if (changesOdds(effect)) {
            return subject + ": " + odds(effect) + ".";
        }
        if (Worth.buysTime(effect)) {
            return "Only buys time: the limit is met " + later(effect) + ".";
        }
        if (Worth.lowersExposure(effect)) {
            return subject + ": spares about " + Formats.tenths(effect.exposureFall())
                    + " in 10 of the bad hours; the odds hardly change.";
        }
        return switch (remedy.act().kind()) {
            case ICE -> "One load does little by itself; go on until the chiller cools again.";
            case SKIP_FEED -> "Does little by itself within three days.";
            case BICARBONATE -> "Keeps the pH from falling later; within three days the odds hardly change.";
            default -> "";
        };
    }

    /** Of what is advised in trouble all the same. */
    private static String harm(Act act, Effect effect) {
        String much = effect.exposureWith() > MUCH_TIMES * effect.exposureWithout() ? "May do harm" : "May do a little harm";
        return switch (act.kind()) {
            case SKIP_FEED -> much + " within three days, for it lifts the pH; but what is not fed cannot rot.";
            case MORE_AIR -> much + ", for it lifts the pH and with it the harmful share of the ammonia; but fish "
                    + "without oxygen die first.";
            default -> "";
        };
    }

    private static String beside(Set<Act.Kind> others) {
        boolean unfed = others.contains(Act.Kind.SKIP_FEED);
        return others.contains(Act.Kind.SALT) ? unfed ? "After the salt and without feed" : "After the salt"
                : unfed ? "Without feed" : "This alone";
    }

    /** Of all of them. */
    String together(Effect effect, Instant asOf) {
        Instant until = asOf.plus(Duration.ofHours(Forecast.HORIZON_HOURS));
        String by = " by " + formats.day(until) + " " + formats.clock(until);
        if (changesOdds(effect)) {
            return "All of this together: " + odds(effect) + by + ".";
        }
        return Worth.lowersExposure(effect) ? "All of this together spares about "
                + Formats.tenths(effect.exposureFall()) + " in 10 of the bad hours" + by
                + "; the odds hardly change." : "";
    }

    /** Odds that read the same are no change. */
    private static boolean changesOdds(Effect effect) {
        return Worth.lowersChance(effect)
                && !Formats.odds(effect.chanceWith()).equals(Formats.odds(effect.chanceWithout()));
    }

    private static String odds(Effect effect) {
        return Formats.odds(effect.chanceWith()) + " instead of " + Formats.odds(effect.chanceWithout());
    }

    private static String later(Effect effect) {
        return effect.hoursToLimitWith().isEmpty() ? "likely not before three days are over"
                : "about " + Formats.span(effect.hoursToLimitWith().getAsDouble()
                        - effect.hoursToLimitWithout().orElse(0)) + " later";
    }
}
