package org.tankrounds.rounds;

import java.util.Optional;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Reason;
import org.tankrounds.web.Formats;

/** What was not read, or what was counted instead: silence, deaths, doubtful readings. */
final class SilenceWording {
    private static final double HOURS_OF_A_DAY = 24;

    private final Formats formats;

    SilenceWording(Formats formats) {
        this.formats = formats;
    }

    Phrase silence(Reason reason) {
        String lead = reason.overHours().isPresent()
                ? "Nothing heard for " + Formats.span(reason.overHours().getAsDouble()) + "."
                : "Nothing heard for long.";
        String rest = reason.oneIn().isPresent()
                ? "Going by what was heard before, " + Formats.odds(1 / reason.oneIn().getAsDouble())
                        + " to go beyond a limit."
                : "";
        return new Phrase(lead, rest);
    }

    Phrase noReadings() {
        return new Phrase("No reading has come yet.", "It is held for an average tank of its age.");
    }

    Phrase seriesNotRead(Reason reason) {
        Driver series = reason.driver().orElse(Driver.TEMPERATURE);
        if (reason.at().isEmpty()) {
            return Phrase.of(Levels.name(series) + " never read.");
        }
        String span = reason.overHours().isPresent()
                ? Formats.span(reason.overHours().getAsDouble())
                : "long";
        return new Phrase(Levels.name(series) + " not read for " + span + ".", reason.value().isPresent()
                ? "Last " + Levels.withUnit(series, reason.value().getAsDouble()) + "."
                : "");
    }

    Phrase deaths(Reason reason) {
        String lead = reason.count().isPresent() ? reason.count().getAsInt() + " found dead" : "Fish found dead";
        String within = reason.overHours().isPresent()
                ? " in " + Formats.span(reason.overHours().getAsDouble())
                : "";
        return new Phrase(lead + within + mostOfThem(reason) + ".",
                reason.at().map(at -> "The last found " + formats.moment(at) + ".").orElse(""));
    }

    private static String mostOfThem(Reason reason) {
        long inADay = Math.round(reason.value().orElse(0));
        int count = reason.count().orElse(0);
        boolean isMore = inADay >= 2 && inADay < count && reason.overHours().orElse(0) > HOURS_OF_A_DAY;
        return isMore ? ", " + inADay + " of them within a day" : "";
    }

    /** What was read, in the reading's own unit: total ammonia stands for un-ionised ammonia. */
    Phrase setAside(Reason reason) {
        String what = reason.driver().map(SilenceWording::read).orElse("A reading");
        String unit = reason.unit().isEmpty() || reason.driver().equals(Optional.of(Driver.PH))
                ? "" : " " + reason.unit();
        String level = reason.value().isPresent()
                ? " " + Formats.significant(reason.value().getAsDouble(), 3) + unit
                : "";
        String at = reason.at().map(time -> ", read " + formats.moment(time) + ",").orElse("");
        return new Phrase(what + level + at + " does not fit its neighbours.", "Set aside until another agrees.");
    }

    private static String read(Driver series) {
        return series == Driver.UN_IONISED_AMMONIA ? "Ammonia" : Levels.name(series);
    }
}
