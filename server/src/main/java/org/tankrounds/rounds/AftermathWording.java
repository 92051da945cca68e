package org.tankrounds.rounds;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Speech;

/** What happened after a past morning, in words. */
final class AftermathWording {
    /** A level that comes to three quarters of its limit was a near thing. */
    private static final double WORTH_NAMING = 0.75;

    private final Formats formats;
    private final Speech speech;
    private final Levels levels;

    AftermathWording(Formats formats) {
        this.formats = formats;
        this.speech = formats.speech();
        this.levels = new Levels(speech);
    }

    /** The worst first; then deaths, what was done, and what nobody looked at. */
    Phrase of(Aftermath then, Forecast forecast) {
        return new Phrase(worst(then), rest(then, forecast));
    }

    private String worst(Aftermath then) {
        if (then.looks() == 0) {
            return speech.say(then.isOver() ? "morning.nothingRead" : "morning.nothingYet");
        }
        if (then.worst().isEmpty()) {
            return speech.say(then.read().isEmpty() ? "morning.waterNotRead" : "morning.noneDetected");
        }
        Aftermath.Worst worst = then.worst().get();
        if (worst.u() < WORTH_NAMING) {
            return speech.say("morning.within");
        }
        boolean low = Levels.harmfulWhenLow(worst.series(), worst.limit());
        return then.wentBeyond()
                ? level(low ? "morning.below" : "morning.beyond", levels.name(worst.series()), worst)
                : level("morning.nearest", levels.inSentence(worst.series()), worst);
    }

    private String level(String key, String name, Aftermath.Worst worst) {
        return speech.say(key, name, levels.withUnit(worst.series(), worst.level()), formats.full(worst.at()),
                levels.bareLimit(worst.series(), worst.limit()));
    }

    private String rest(Aftermath then, Forecast forecast) {
        List<String> parts = new ArrayList<>();
        if (then.deathsCounted()) {
            parts.add(then.dead() == 0 ? speech.say("morning.noDeaths") : speech.say("morning.dead", then.dead()));
        } else if (then.looks() > 0) {
            parts.add(speech.say("morning.deathsNotCounted"));
        }
        if (!then.changedPercent().isEmpty()) {
            parts.add(speech.say("morning.changed", then.changedPercent().stream()
                    .map(change -> speech.say("morning.change", Formats.significant(change.value(), 2),
                            formats.weekday(change.at())))
                    .collect(Collectors.joining(", "))));
        }
        if (then.looks() > 0) {
            parts.add(speech.say((then.isOver() ? "morning.looks." : "morning.looksSoFar.") + times(then.looks()),
                    then.looks()));
        }
        if (isReadable(forecast.driver()) && then.looks() > 0 && !then.read().contains(forecast.driver())) {
            parts.add(speech.say("morning.seriesNotRead", levels.name(forecast.driver())));
        }
        return String.join(" ", parts);
    }

    private static String times(int looks) {
        return looks == 1 ? "once" : looks == 2 ? "twice" : "often";
    }

    private static boolean isReadable(Driver driver) {
        return driver == Driver.UN_IONISED_AMMONIA || Analyte.ofCode(driver.code())
                .filter(analyte -> !analyte.isHusbandry()).isPresent();
    }
}
