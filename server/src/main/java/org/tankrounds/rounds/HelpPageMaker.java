package org.tankrounds.rounds;

import java.util.List;
import java.util.stream.DoubleStream;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Limits;
import org.tankrounds.pages.HelpPage;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Speech;

/** Prints the limits from the ones that the engine uses. */
final class HelpPageMaker {
    private static final double[] CHLORIDES = {1, 5, 10, 20, 40};
    private static final Limits LIMITS = Limits.DEFAULT;
    /** As the advice has them. */
    private static final double DIGEST_BADLY_C = 20;
    private static final double ROOM_C = 21;

    private final Speech speech;
    private final Levels levels;

    HelpPageMaker(Speech speech) {
        this.speech = speech;
        this.levels = new Levels(speech);
    }

    HelpPage page() {
        return new HelpPage(speech.say("help.title"), limits(),
                DoubleStream.of(CHLORIDES).mapToObj(this::nitrite).toList(),
                levels.limit(Driver.TEMPERATURE, DIGEST_BADLY_C), levels.limit(Driver.TEMPERATURE, ROOM_C));
    }

    private List<HelpPage.Limit> limits() {
        String byChloride = speech.say("help.limits.byChloride");
        String ph = speech.say("help.limits.belowOrAbove",
                Formats.number(LIMITS.lowestPh(), 1), Formats.number(LIMITS.highestPh(), 1));
        return List.of(
                new HelpPage.Limit(levels.name(Driver.TEMPERATURE),
                        above(Driver.TEMPERATURE, LIMITS.eggTemperatureC()),
                        above(Driver.TEMPERATURE, LIMITS.feedingTemperatureC()),
                        speech.say("help.limits.sourceOfTemperature")),
                limit(levels.name(Driver.UN_IONISED_AMMONIA),
                        above(Driver.UN_IONISED_AMMONIA, LIMITS.unIonisedAmmoniaMgPerL()),
                        "help.limits.sourceOfAmmonia"),
                limit(levels.name(Driver.NITRITE), byChloride, "help.limits.sourceOfNitrite"),
                new HelpPage.Limit(levels.name(Driver.DISSOLVED_OXYGEN), oxygen(Stage.EGG), oxygen(Stage.FEEDING),
                        speech.say("help.limits.sourceOfOxygen")),
                limit(levels.name(Driver.PH), ph, "help.limits.sourceOfPh"),
                limit(speech.say("help.limits.chlorine"), above(Driver.CHLORINE, LIMITS.chlorineMgPerL()),
                        "help.limits.sourceOfChlorine"));
    }

    /** One that is the same for eggs and for fish. */
    private HelpPage.Limit limit(String name, String limit, String source) {
        return new HelpPage.Limit(name, limit, limit, speech.say(source));
    }

    private String above(Driver series, double limit) {
        return speech.say("help.limits.above", levels.limit(series, limit));
    }

    private String oxygen(Stage stage) {
        return speech.say("help.limits.below", levels.limit(Driver.DISSOLVED_OXYGEN, LIMITS.oxygenMgPerL(stage)));
    }

    private HelpPage.Nitrite nitrite(double chloride) {
        return new HelpPage.Nitrite(Formats.significant(chloride, 2) + Formats.NO_BREAK + "mg/L",
                levels.limit(Driver.NITRITE, LIMITS.nitriteMgPerL(chloride)));
    }
}
