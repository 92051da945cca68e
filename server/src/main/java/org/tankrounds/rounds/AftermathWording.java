package org.tankrounds.rounds;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Formats;

/** What happened after a past morning, in words. */
final class AftermathWording {
    /** A level that comes to three quarters of its limit was a near thing. */
    private static final double WORTH_NAMING = 0.75;

    private final Formats formats;

    AftermathWording(Formats formats) {
        this.formats = formats;
    }

    /** The worst first; then deaths, what was done, and what nobody looked at. */
    Phrase of(Aftermath then, Forecast forecast) {
        return new Phrase(worst(then), rest(then, forecast));
    }

    private String worst(Aftermath then) {
        if (then.looks() == 0) {
            return then.isOver() ? "Nothing was read in the 72 hours after." : "Nothing has been read since.";
        }
        if (then.worst().isEmpty()) {
            return then.read().isEmpty() ? "The water was not read." : "Nothing was detected.";
        }
        Aftermath.Worst worst = then.worst().get();
        if (worst.u() < WORTH_NAMING) {
            return "Within limits as far as read.";
        }
        String level = " " + Levels.withUnit(worst.series(), worst.level()) + ", " + formats.full(worst.at());
        String limit = Levels.bareLimit(worst.limit());
        if (then.wentBeyond()) {
            boolean low = Levels.harmfulWhenLow(worst.series(), worst.limit());
            return Levels.name(worst.series()) + level + ": " + (low ? "below" : "beyond") + " its limit of "
                    + limit + ".";
        }
        return "Within limits as far as read. Nearest: " + Levels.inSentence(worst.series()) + level
                + " (limit " + limit + ").";
    }

    private String rest(Aftermath then, Forecast forecast) {
        List<String> parts = new ArrayList<>();
        if (then.deathsCounted()) {
            parts.add(then.dead() == 0 ? "No deaths." : Formats.number(then.dead(), 0) + " found dead.");
        } else if (then.looks() > 0) {
            parts.add("Deaths not counted.");
        }
        if (!then.changedPercent().isEmpty()) {
            parts.add("Water changed: " + then.changedPercent().stream()
                    .map(change -> Formats.significant(change.value(), 2) + " % " + formats.weekday(change.at()))
                    .collect(Collectors.joining(", ")) + ".");
        }
        if (then.looks() > 0) {
            parts.add("Read " + times(then.looks()) + (then.isOver() ? "." : " so far."));
        }
        if (isReadable(forecast.driver()) && then.looks() > 0 && !then.read().contains(forecast.driver())) {
            parts.add(Levels.name(forecast.driver()) + " was not read.");
        }
        return String.join(" ", parts);
    }

    private static String times(int looks) {
        return looks == 1 ? "once" : looks == 2 ? "twice" : looks + " times";
    }

    private static boolean isReadable(Driver driver) {
        return driver == Driver.UN_IONISED_AMMONIA || Analyte.ofCode(driver.code())
                .filter(analyte -> !analyte.isHusbandry()).isPresent();
    }
}
