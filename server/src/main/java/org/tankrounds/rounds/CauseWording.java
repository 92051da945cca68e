package org.tankrounds.rounds;

import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Reason;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Speech;

/** What lies behind a series that moves: filter, chloride, pH, alkalinity. */
final class CauseWording {
    private final Formats formats;
    private final Speech speech;
    private final Levels levels;

    CauseWording(Formats formats) {
        this.formats = formats;
        this.speech = formats.speech();
        this.levels = new Levels(speech);
    }

    Phrase filterNotRipe(Reason reason) {
        return new Phrase(speech.say("reasons.filter"),
                reason.since().map(since -> speech.say("reasons.filterSince", formats.since(since)))
                        .orElseGet(() -> speech.say("reasons.filterCatchesUp")));
    }

    Phrase lowChloride(Reason reason) {
        String level = reason.value().isPresent()
                ? speech.say("reasons.chloride", Formats.significant(reason.value().getAsDouble(), 2))
                : speech.say("reasons.littleChloride");
        String rest = reason.limit().isPresent()
                ? speech.say("reasons.nitriteHarmsFrom", levels.limit(Driver.NITRITE, reason.limit().getAsDouble()))
                : "";
        return new Phrase(level, rest);
    }

    Phrase highPh(Reason reason) {
        String lead = reason.value().isPresent()
                ? speech.say("reasons.ph", levels.bare(Driver.PH, reason.value().getAsDouble()))
                : speech.say("reasons.highPh");
        String rest = reason.change().isPresent()
                ? speech.say("reasons.unIonised", Formats.significant(reason.change().getAsDouble(), 2))
                : "";
        return new Phrase(lead, rest);
    }

    Phrase alkalinityLow(Reason reason) {
        String lead = reason.value().isPresent()
                ? speech.say("reasons.alkalinity",
                        levels.withUnit(Analyte.ALKALINITY.code(), reason.value().getAsDouble()))
                : speech.say("reasons.littleAlkalinity");
        return new Phrase(lead, reason.at().map(at -> speech.say("reasons.phMayFallRead", formats.moment(at)))
                .orElseGet(() -> speech.say("reasons.phMayFall")));
    }
}
