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
import org.tankrounds.web.Speech;

/** What an act is expected to do, in one line; where it does little, that is said. */
final class EffectWording {
    private static final double MUCH_TIMES = 1.2;

    private final Formats formats;
    private final Speech speech;

    EffectWording(Formats formats) {
        this.formats = formats;
        this.speech = formats.speech();
    }

    /** Of one act by itself; empty where there is nothing to say. */
    String alone(Remedy remedy) {
        if (remedy.effect().isEmpty() || remedy.act().kind() == Act.Kind.LEAVE_WATER) {
            return "";
        }
        Effect effect = remedy.effect().get();
        if (effect.harms()) {
            return harm(remedy.act(), effect);
        }
        if (changesOdds(effect)) {
            return speech.say("advice.effect.chance", subject(remedy), formats.chance(effect.chanceWith()),
                    formats.chance(effect.chanceWithout()));
        }
        if (Worth.buysTime(effect)) {
            return later(effect);
        }
        if (Worth.lowersExposure(effect)) {
            return speech.say("advice.effect.hours", subject(remedy), Formats.tenths(effect.exposureFall()));
        }
        return little(remedy.act());
    }

    private String little(Act act) {
        return switch (act.kind()) {
            case ICE -> speech.say("advice.effect.ice");
            case SKIP_FEED -> speech.say("advice.effect.feed");
            case BICARBONATE -> speech.say("advice.effect.soda");
            default -> "";
        };
    }

    /** Of what is advised in trouble all the same. */
    private String harm(Act act, Effect effect) {
        boolean much = effect.exposureWith() > MUCH_TIMES * effect.exposureWithout();
        return switch (act.kind()) {
            case SKIP_FEED -> speech.say(much ? "advice.effect.harm.feed" : "advice.effect.littleHarm.feed");
            case MORE_AIR -> speech.say(much ? "advice.effect.harm.air" : "advice.effect.littleHarm.air");
            default -> "";
        };
    }

    private String subject(Remedy remedy) {
        return speech.say(remedy.act().kind() == Act.Kind.CHECK_CHILLER ? "advice.effect.mended"
                : beside(remedy.leansOn()));
    }

    private static String beside(Set<Act.Kind> others) {
        boolean unfed = others.contains(Act.Kind.SKIP_FEED);
        if (others.contains(Act.Kind.SALT)) {
            return unfed ? "advice.effect.afterSaltUnfed" : "advice.effect.afterSalt";
        }
        return unfed ? "advice.effect.unfed" : "advice.effect.alone";
    }

    /** Of all of them. */
    String together(Effect effect, Instant asOf) {
        String until = formats.dayAndClock(asOf.plus(Duration.ofHours(Forecast.HORIZON_HOURS)));
        if (changesOdds(effect)) {
            return speech.say("advice.effect.together", formats.chance(effect.chanceWith()),
                    formats.chance(effect.chanceWithout()), until);
        }
        return Worth.lowersExposure(effect)
                ? speech.say("advice.effect.togetherHours", Formats.tenths(effect.exposureFall()), until) : "";
    }

    /** Odds that read the same are no change. */
    private boolean changesOdds(Effect effect) {
        return Worth.lowersChance(effect)
                && !formats.chance(effect.chanceWith()).equals(formats.chance(effect.chanceWithout()));
    }

    private String later(Effect effect) {
        return effect.hoursToLimitWith().isEmpty() ? speech.say("advice.effect.muchLater")
                : speech.say("advice.effect.later", formats.lasting(effect.hoursToLimitWith().getAsDouble()
                        - effect.hoursToLimitWithout().orElse(0)));
    }
}
