package org.tankrounds.rounds;

import java.util.Optional;
import org.tankrounds.advice.Act;
import org.tankrounds.forecast.Driver;
import org.tankrounds.pages.TankPage.Advice;
import org.tankrounds.web.Formats;

/** What to do, how, and what to beware of, in words. Cautions after the safety part of the science notes. */
final class ActWording {
    private static final String MAINS =
            "Mains and water: dry hands, drip loops, unplug before reaching in. Breakers only "
            + "by the adult in charge there; faults and repairs by licensed people under local code.";
    private static final String REACHING_IN =
            "Unplug what is electric before reaching in. Wash hands before and after; "
            + "cover cuts.";

    private static final String AMMONIA_FREED = " Breaking chloramine frees ammonia: read it the next day.";

    private static final String TOMORROW = "Read alkalinity, pH, ammonia and nitrite again tomorrow, and chloride "
            + "where salt was given. Call your coordinator or mentor today.";

    private ActWording() {}

    /**
     * @param early whether eggs or sac fry are in the tank, which bear less
     * @param chloramine whether that is what the water works adds
     */
    static Advice of(Act act, boolean early, boolean chloramine) {
        return switch (act.kind()) {
            case WATER_CHANGE -> new Advice("Change" + amount(act) + " of the water" + litres(act) + ".",
                    "Treat fresh water against " + disinfectant(chloramine)
                            + " and bring it to the tank's temperature first."
                            + (chloramine ? AMMONIA_FREED : "")
                            + (early ? " Pour it slowly, away from eggs and sac fry." : "") + again(act), REACHING_IN);
            case LEAVE_WATER -> new Advice("Change no water for now.",
                    "The source water would lift the pH, and with it the harmful share of the ammonia."
                            + (isAgainstPh(act) ? " " + TOMORROW : ""), "");
            case TEST_WATER_FIRST -> new Advice("Change no more water before chlorine is read.",
                    "Fish died soon after a change: if that water was not treated, more of it kills the rest.", "");
            case SALT -> new Advice("Add" + amountOf(act) + "plain salt" + forEvery(act) + ".", beforeAlkalinity(act)
                    + "Read chloride first if salt was given since it was last read. Without iodine or other "
                            + "additives. Dissolve it in tank water and add it over some hours.",
                    "Write it down: it leaves only with the water, and twice is too much.");
            case BICARBONATE -> new Advice("Add" + amountOf(act) + "baking soda" + forEvery(act) + ", once.",
                    "Dissolve it first. Read pH, alkalinity and ammonia again the next day before you add more.",
                    "Not while ammonia is high: a higher pH makes more of it harmful.");
            case LEAVE_ALKALINITY -> new Advice("Add nothing now that lifts alkalinity or pH.",
                    "What ammonia and nitrite there is would then harm more: the filter wakes and makes more "
                            + "nitrite, and a higher pH makes more of the ammonia harmful. " + TOMORROW, "");
            case ICE -> new Advice("Hold the water cool with" + amountOf(act) + "ice in sealed bottles.",
                    lasts(act) + "Put them in one after the other, and watch the thermometer"
                            + (early ? ": not more than 1 °C an hour." : "."),
                    "Never let tap ice melt into the tank: it may carry chlorine.");
            case CHECK_CHILLER -> new Advice("Ask or look: does the chiller hum, and is it set right?",
                    "Is it plugged in, is air let through, does its pump run?", MAINS);
            case MORE_AIR -> new Advice("More air.",
                    "A second stone or pump, and a moving surface." + CareWording.moreAir(act), MAINS);
            case SKIP_FEED -> new Advice("No feed" + span(act) + (early ? ", if they feed already." : "."),
                    leftovers(act) + "Fish bear it well. " + CareWording.noFeed(act), "");
            case THIOSULFATE -> new Advice(
                    "Neutralise the " + disinfectant(chloramine) + " with" + amountOf(act)
                            + "sodium thiosulfate pentahydrate" + forEvery(act) + ".",
                    twiceAsRead(act) + "If the water was treated since chlorine was read, read it again first."
                            + " Dissolve it in tank water and spread it over the surface."
                            + " Read chlorine again an hour later."
                            + (chloramine ? AMMONIA_FREED : ""),
                    "By an adult, as its label says. Never mix chlorine products with acids or ammonia.");
            case ASK_FOR_READING -> new Advice("Ask for a reading: " + Analytes.inSentence(act.asks()) + ".",
                    AskWording.why(act), "");
            case LOOK_AT_FISH -> new Advice("Look at the fish and count the dead.",
                    "Take them out and write the number down. If others gasp or lie down, call for help.",
                    "Wash hands before and after. Dead fish go where the permit says.");
            case CALL_FOR_HELP -> new Advice(
                    "Call for help: the agency's fish health contact, or a local vet who sees fish.",
                    "Tell what was read, what was done last and how many died when. Keep the dead cold in a closed "
                            + "bag until you are told what to do with them.",
                    "It may be a disease: no fish, water or nets to other tanks, wash hands; nothing is eaten, "
                            + "flushed or released.");
        };
    }

    /** Half is the most at once. */
    private static String again(Act act) {
        return act.asks().isEmpty() ? "" : " Once is not enough: change again tomorrow, after another reading of "
                + Analytes.inSentence(act.asks()) + ".";
    }

    private static String beforeAlkalinity(Act act) {
        return isAgainstPh(act)
                ? "Before anything that brings alkalinity back: that wakes the filter, which makes nitrite, and salt "
                        + "keeps nitrite out of the gills. " : "";
    }

    private static boolean isAgainstPh(Act act) {
        return act.driver().equals(Optional.of(Driver.PH));
    }

    private static String lasts(Act act) {
        return act.amount().isEmpty() ? "" : act.secondAmount().isEmpty() ? "That lasts about 12 hours. "
                : "That is one load; half a day takes about " + Formats.significant(act.secondAmount().getAsDouble(), 2)
                        + " kg, so freeze bottles in turn and replace them through the day. ";
    }

    private static String leftovers(Act act) {
        return act.secondAmount().isEmpty() ? "" : "They were given up to " + Math.round(
                act.secondAmount().getAsDouble()) + " times as much as usual: take leftovers out. ";
    }

    /** Where nobody has said how much there is. */
    private static String forEvery(Act act) {
        return isPer100L(act) ? " for every 100 L" : "";
    }

    private static boolean isPer100L(Act act) {
        return act.unit().equals(Act.G_PER_100_L);
    }

    private static String twiceAsRead(Act act) {
        return act.amount().isEmpty() ? "" : "That is for twice what was read already, because a test may hide as "
                + "much again: do not double it. ";
    }

    private static String disinfectant(boolean chloramine) {
        return chloramine ? "chloramine" : "chlorine";
    }

    private static String amountOf(Act act) {
        return act.amount().isEmpty() ? " some " : amount(act) + " of ";
    }

    private static String amount(Act act) {
        return act.amount().isEmpty() ? " part"
                : " " + Formats.significant(act.amount().getAsDouble(), 2) + " " + (isPer100L(act) ? "g" : act.unit());
    }

    private static String litres(Act act) {
        return act.secondAmount().isPresent()
                ? ", " + Formats.significant(act.secondAmount().getAsDouble(), 2) + " " + act.secondUnit()
                : "";
    }

    private static String span(Act act) {
        return act.amount().isPresent() ? " for " + Formats.span(act.amount().getAsDouble()) : " for now";
    }
}
