package org.tankrounds.rounds;

import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Reason;
import org.tankrounds.web.Formats;

/** What was not read, or what was counted instead: silence, deaths, doubtful readings. */
final class SilenceWording {
    private final Formats formats;

    SilenceWording(Formats formats) {
        this.formats = formats;
    }

    Phrase silence(Reason reason) {
        String lead = reason.overHours().isPresent()
                ? "Nothing heard for " + Formats.span(reason.overHours().getAsDouble()) + "."
                : "Nothing heard for long.";
        String rest = reason.oneIn().isPresent()
                ? "Tanks silent that long go beyond a limit 1 time in "
                        + Math.max(1, Math.round(reason.oneIn().getAsDouble())) + "."
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
        return Phrase.of(Levels.name(series) + " not read for " + span + ".");
    }

    Phrase deaths(Reason reason) {
        String lead = reason.count().isPresent() ? reason.count().getAsInt() + " found dead" : "Fish found dead";
        String within = reason.overHours().isPresent()
                ? " in " + Formats.span(reason.overHours().getAsDouble())
                : "";
        return new Phrase(lead + within + ".",
                reason.at().map(at -> "Last counted " + formats.moment(at) + ".").orElse(""));
    }

    Phrase setAside(Reason reason) {
        String what = reason.driver().map(Levels::name).orElse("A reading");
        String level = reason.driver().isPresent() && reason.value().isPresent()
                ? " " + Levels.withUnit(reason.driver().get(), reason.value().getAsDouble())
                : "";
        String at = reason.at().map(time -> ", read " + formats.moment(time) + ",").orElse("");
        return new Phrase(what + level + at + " does not fit its neighbours.", "Set aside until another agrees.");
    }
}
