package org.tankrounds.release;

import java.util.ArrayList;
import java.util.List;
import org.tankrounds.web.Formats;

/** What was seen and measured at a release, in short parts of a sentence. */
public final class DayWording {
    private final Formats formats;

    public DayWording(Formats formats) {
        this.formats = formats;
    }

    /** Of what anybody wrote down, but for the note. */
    public List<String> measured(ReleaseDay day) {
        List<String> parts = new ArrayList<>();
        day.kept().forEach((why, fish) -> parts.add(say("release.done.kept." + why.code(), fish)));
        if (day.boxC().isPresent() && day.streamC().isPresent()) {
            parts.add(say("release.done.water", temperature(day.boxC().getAsDouble()),
                    temperature(day.streamC().getAsDouble())));
        } else {
            day.boxC().ifPresent(celsius -> parts.add(say("release.done.box", temperature(celsius))));
            day.streamC().ifPresent(celsius -> parts.add(say("release.done.stream", temperature(celsius))));
        }
        day.temperedMinutes().ifPresent(minutes -> parts.add(say("release.done.tempered", minutes)));
        day.meanLengthMm().ifPresent(mean -> parts.add(lengths(day, mean)));
        return parts;
    }

    private String lengths(ReleaseDay day, double meanMm) {
        if (day.lengthsMm().size() == 1) {
            return say("release.done.oneLength", Formats.number(meanMm, 0));
        }
        return say("release.done.lengths", day.lengthsMm().size(), Formats.number(meanMm, 0),
                Formats.number(day.shortestMm().getAsDouble(), 0), Formats.number(day.longestMm().getAsDouble(), 0));
    }

    private String temperature(double celsius) {
        return formats.temperature(celsius, 1);
    }

    private String say(String key, Object... with) {
        return formats.speech().say(key, with);
    }
}
