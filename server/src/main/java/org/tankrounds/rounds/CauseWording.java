package org.tankrounds.rounds;

import java.time.Duration;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Reason;
import org.tankrounds.web.Formats;

/** What lies behind a series that moves: chiller, filter, chloride, pH, alkalinity. */
final class CauseWording {
    private final Formats formats;

    CauseWording(Formats formats) {
        this.formats = formats;
    }

    Phrase chillerLooksStopped(Reason reason) {
        String level = reason.value().isPresent()
                ? "Water " + Levels.withUnit(Driver.TEMPERATURE, reason.value().getAsDouble()) + ", warming "
                : "Warming ";
        String rest = "";
        if (reason.limit().isPresent() && reason.hoursToLimit().isPresent()) {
            Duration ahead = Duration.ofSeconds(Math.round(reason.hoursToLimit().getAsDouble() * 3600));
            rest = ahead.isZero()
                    ? "Past " + Levels.limit(Driver.TEMPERATURE, reason.limit().getAsDouble()) + " already."
                    : Levels.limit(Driver.TEMPERATURE, reason.limit().getAsDouble())
                            + " by " + formats.by(formats.now().plus(ahead)) + ".";
        }
        return new Phrase(level + "as if the chiller had stopped.", rest);
    }

    Phrase filterNotRipe(Reason reason) {
        String rest = reason.since()
                .map(since -> "Fish feed since " + formats.since(since) + "; it needs weeks to catch up.")
                .orElse("It needs weeks to catch up with the feed.");
        return new Phrase("Filter not ripe yet.", rest);
    }

    Phrase lowChloride(Reason reason) {
        String level = reason.value().isPresent()
                ? "Only " + Formats.significant(reason.value().getAsDouble(), 2) + " mg/L chloride in the water."
                : "Little chloride in the water.";
        String rest = reason.limit().isPresent()
                ? "Nitrite harms from " + Levels.limit(Driver.NITRITE, reason.limit().getAsDouble()) + " on."
                : "";
        return new Phrase(level, rest);
    }

    Phrase highPh(Reason reason) {
        String lead = reason.value().isPresent()
                ? "pH " + Levels.bare(Driver.PH, reason.value().getAsDouble()) + " makes ammonia more harmful."
                : "High pH makes ammonia more harmful.";
        String rest = reason.change().isPresent()
                ? Formats.significant(reason.change().getAsDouble(), 2) + " % of it is un-ionised."
                : "";
        return new Phrase(lead, rest);
    }

    Phrase alkalinityLow(Reason reason) {
        String lead = reason.value().isPresent()
                ? "Alkalinity " + Formats.significant(reason.value().getAsDouble(), 2)
                        + " mg/L as CaCO₃, nearly used up."
                : "Alkalinity nearly used up.";
        return new Phrase(lead, "pH may fall and the filter slows"
                + reason.at().map(at -> "; read " + formats.moment(at)).orElse("") + ".");
    }
}
