package org.tankrounds.rounds;

import org.tankrounds.advice.Act;
import org.tankrounds.forecast.Driver;
import org.tankrounds.pages.TankPage.Advice;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Speech;

/** What to do, how, and what to beware of, in words. Cautions after the safety part of the science notes. */
final class ActWording {
    private static final double WARMER_AN_HOUR_C = 1;

    private final Formats formats;
    private final Speech speech;
    private final CareWording care;
    private final DoseWording doses;

    ActWording(Formats formats) {
        this.formats = formats;
        this.speech = formats.speech();
        this.care = new CareWording(speech);
        this.doses = new DoseWording(speech);
    }

    /**
     * @param early whether eggs or sac fry are in the tank, which bear less
     * @param chloramine whether that is what the water works adds
     */
    Advice of(Act act, boolean early, boolean chloramine) {
        return switch (act.kind()) {
            case WATER_CHANGE -> new Advice(change(act), howToChange(act, early, chloramine), say("advice.reachingIn"));
            case LEAVE_WATER -> new Advice(say("advice.leaveWater"),
                    Phrase.joined(say("advice.leaveWater.why"), isAgainstPh(act) ? say("advice.tomorrow") : ""), "");
            case TEST_WATER_FIRST -> new Advice(say("advice.testFirst"), say("advice.testFirst.why"), "");
            case SALT -> new Advice(doses.say("advice.salt.", act),
                    Phrase.joined(isAgainstPh(act) ? say("advice.salt.first") : "", say("advice.salt.how")),
                    say("advice.salt.caution"));
            case BICARBONATE -> new Advice(
                    doses.say("advice.soda.", act), say("advice.soda.how"), say("advice.soda.caution"));
            case LEAVE_ALKALINITY -> new Advice(say("advice.leaveAlkalinity"),
                    Phrase.joined(say("advice.leaveAlkalinity.why"), say("advice.tomorrow")), "");
            case ICE -> new Advice(doses.say("advice.ice.", act), Phrase.joined(lasts(act), howToCool(early)),
                    say("advice.ice.caution"));
            case CHECK_CHILLER -> new Advice(say("advice.chiller"), say("advice.chiller.how"), say("advice.mains"));
            case MORE_AIR -> new Advice(say("advice.air"), Phrase.joined(say("advice.air.how"), care.moreAir(act)),
                    say("advice.mains"));
            case SKIP_FEED -> new Advice(noFeed(act, early),
                    Phrase.joined(leftovers(act), say("advice.noFeed.bear"), care.noFeed(act)), "");
            case THIOSULFATE -> new Advice(
                    doses.say("advice.thiosulfate.", act, say(disinfectant("advice.thiosulfate.", chloramine))),
                    Phrase.joined(act.amount().isEmpty() ? "" : say("advice.thiosulfate.twice"),
                            say("advice.thiosulfate.how"), chloramine ? say("advice.freed") : ""),
                    say("advice.thiosulfate.caution"));
            case ASK_FOR_READING -> new Advice(say("advice.ask", new Levels(speech).asked(act.asks())),
                    AskWording.why(act).map(speech::say).orElse(""), "");
            case LOOK_AT_FISH -> new Advice(say("advice.look"), say("advice.look.how"), say("advice.look.caution"));
            case CALL_FOR_HELP -> new Advice(say("advice.help"), say("advice.help.how"), say("advice.help.caution"));
        };
    }

    private String change(Act act) {
        if (act.amount().isEmpty()) {
            return say("advice.change.part");
        }
        String percent = Formats.significant(act.amount().getAsDouble(), 2);
        return act.secondAmount().isEmpty() ? say("advice.change.share", percent)
                : say("advice.change.litres", percent, Formats.significant(act.secondAmount().getAsDouble(), 2));
    }

    private String howToChange(Act act, boolean early, boolean chloramine) {
        return Phrase.joined(say(disinfectant("advice.change.treat.", chloramine)),
                chloramine ? say("advice.freed") : "", early ? say("advice.change.slowly") : "", again(act));
    }

    /** Half is the most at once. */
    private String again(Act act) {
        return act.asks().isEmpty() ? "" : say("advice.change.again", new Levels(speech).asked(act.asks()));
    }

    private static boolean isAgainstPh(Act act) {
        return act.driver().filter(Driver.PH::equals).isPresent();
    }

    private String lasts(Act act) {
        if (act.amount().isEmpty()) {
            return "";
        }
        return act.secondAmount().isEmpty() ? say("advice.ice.lasts")
                : say("advice.ice.load", Formats.significant(act.secondAmount().getAsDouble(), 2));
    }

    private String howToCool(boolean early) {
        return early ? say("advice.ice.slowly", Formats.significant(speech.scale().ofDifference(WARMER_AN_HOUR_C), 2)
                + Formats.NO_BREAK + speech.scale().sign()) : say("advice.ice.how");
    }

    private String noFeed(Act act, boolean early) {
        if (act.amount().isEmpty()) {
            return say(early ? "advice.noFeed.early" : "advice.noFeed");
        }
        return say(early ? "advice.noFeed.spanEarly" : "advice.noFeed.span",
                formats.lasting(act.amount().getAsDouble()));
    }

    private String leftovers(Act act) {
        return act.secondAmount().isEmpty() ? ""
                : say("advice.noFeed.leftovers", Math.round(act.secondAmount().getAsDouble()));
    }

    private static String disinfectant(String prefix, boolean chloramine) {
        return prefix + (chloramine ? "chloramine" : "chlorine");
    }

    private String say(String key, Object... with) {
        return speech.say(key, with);
    }
}
