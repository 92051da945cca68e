package org.tankrounds.rounds;

import java.util.Optional;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Reason;
import org.tankrounds.readings.Wording;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Speech;

/** What was not read, or what was counted instead: silence, deaths, doubtful readings. */
final class SilenceWording {
    private static final double HOURS_OF_A_DAY = 24;

    private final Formats formats;
    private final Speech speech;
    private final Levels levels;

    SilenceWording(Formats formats) {
        this.formats = formats;
        this.speech = formats.speech();
        this.levels = new Levels(speech);
    }

    Phrase silence(Reason reason) {
        String lead = reason.overHours().isPresent()
                ? speech.say("reasons.silence", formats.lasting(reason.overHours().getAsDouble()))
                : speech.say("reasons.longSilence");
        String rest = reason.oneIn().isPresent()
                ? speech.say("reasons.chanceInSilence", formats.chance(1 / reason.oneIn().getAsDouble()))
                : "";
        return new Phrase(lead, rest);
    }

    Phrase noReadings() {
        return new Phrase(speech.say("reasons.noReading"), speech.say("reasons.average"));
    }

    Phrase seriesNotRead(Reason reason) {
        Driver series = reason.driver().orElse(Driver.TEMPERATURE);
        String name = levels.name(series);
        if (reason.at().isEmpty()) {
            return Phrase.of(speech.say("reasons.neverRead", name));
        }
        String lead = reason.overHours().isPresent()
                ? speech.say("reasons.notReadFor", name, formats.lasting(reason.overHours().getAsDouble()))
                : speech.say("reasons.longNotRead", name);
        return new Phrase(lead, reason.value().isPresent()
                ? speech.say("reasons.last", levels.withUnit(series, reason.value().getAsDouble()))
                : "");
    }

    Phrase deaths(Reason reason) {
        String most = mostOfThem(reason).map(clause -> ", " + clause).orElse("");
        return new Phrase(dead(reason) + most + ".",
                reason.at().map(at -> speech.say("reasons.lastDead", formats.moment(at))).orElse(""));
    }

    private String dead(Reason reason) {
        Optional<String> within = reason.overHours().stream().mapToObj(formats::lasting).findFirst();
        if (reason.count().isEmpty()) {
            return within.map(span -> speech.say("reasons.someDeadIn", span))
                    .orElseGet(() -> speech.say("reasons.someDead"));
        }
        int count = reason.count().getAsInt();
        return within.map(span -> speech.say("reasons.deadIn", count, span))
                .orElseGet(() -> speech.say("reasons.dead", count));
    }

    private Optional<String> mostOfThem(Reason reason) {
        long inADay = Math.round(reason.value().orElse(0));
        int count = reason.count().orElse(0);
        boolean isMore = inADay >= 2 && inADay < count && reason.overHours().orElse(0) > HOURS_OF_A_DAY;
        return isMore ? Optional.of(speech.say("reasons.ofThemInADay", inADay)) : Optional.empty();
    }

    Phrase setAside(Reason reason) {
        String what = reason.driver().map(series -> read(series, reason))
                .orElseGet(() -> speech.say("reasons.aReading"));
        String lead = reason.at().map(time -> speech.say("reasons.oddRead", what, formats.moment(time)))
                .orElseGet(() -> speech.say("reasons.odd", what));
        return new Phrase(lead, speech.say("reasons.setAside"));
    }

    /** What was read, in the reading's own unit: total ammonia stands for un-ionised ammonia. */
    private String read(Driver series, Reason reason) {
        boolean ammonia = series == Driver.UN_IONISED_AMMONIA;
        String name = ammonia ? speech.say(Wording.name(Analyte.TOTAL_AMMONIA)) : levels.name(series);
        if (reason.value().isEmpty()) {
            return name;
        }
        double value = reason.value().getAsDouble();
        String unit = levels.unit(ammonia ? Analyte.TOTAL_AMMONIA.code() : series.code());
        String number = Formats.significant(series == Driver.TEMPERATURE ? speech.scale().of(value) : value, 3);
        return speech.say("levels.of", name, unit.isEmpty() ? number : number + Formats.NO_BREAK + unit);
    }
}
