package org.tankrounds.rounds;

import java.util.List;
import org.tankrounds.forecast.Driver;
import org.tankrounds.readings.Wording;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Saying;

/**
 * How a level of each series is called and written, in the reader's language and on the reader's scale: always with as
 * many digits as its readings carry. A series is called by its public code.
 */
final class Levels {
    /** No test tells less, in mg/L. */
    private static final double LEAST_SHOWN = 0.0001;
    private static final String LEAST_SHOWN_TEXT = "0.0001";
    private static final UnitForm AS_AMMONIA = new UnitForm("mg/L", "NH3");

    private final Speech speech;

    Levels(Speech speech) {
        this.speech = speech;
    }

    String name(Driver series) {
        return name(series.code());
    }

    String name(String code) {
        return speech.say("levels.name." + code);
    }

    /** The name inside a sentence. */
    String inSentence(Driver series) {
        return speech.say("levels.inSentence." + series.code());
    }

    /** The unit behind a number; pH has none. */
    String unit(String code) {
        if (isTemperature(code)) {
            return speech.scale().sign();
        }
        if (code.equals(Driver.UN_IONISED_AMMONIA.code())) {
            return speech.say(Wording.unit(AS_AMMONIA));
        }
        return Analyte.ofCode(code).map(analyte -> speech.say(Wording.unit(analyte.canonical()))).orElse("");
    }

    /** "15.6", "0.011" */
    String bare(Driver series, double level) {
        return bare(series.code(), level);
    }

    String bare(String code, double level) {
        return isTemperature(code) ? Formats.number(speech.scale().of(level), 1) : digits(code, level);
    }

    /** How far apart two levels are. */
    String difference(Driver series, double difference) {
        return series == Driver.TEMPERATURE ? Formats.number(speech.scale().ofDifference(difference), 1)
                : digits(series.code(), difference);
    }

    private String digits(String code, double level) {
        if (List.of(Driver.TEMPERATURE.code(), Driver.DISSOLVED_OXYGEN.code(), Driver.PH.code()).contains(code)) {
            return Formats.number(level, 1);
        }
        return level > 0 && level < LEAST_SHOWN ? speech.say("levels.under", LEAST_SHOWN_TEXT)
                : Formats.significant(level, 2);
    }

    /** "0.011 mg/L as NH₃", or that there was none to see. */
    String read(Driver series, double level) {
        return isSmall(series) && level == 0 ? notDetected() : withUnit(series, level);
    }

    String notDetected() {
        return speech.say("levels.notDetected");
    }

    /** Whether levels of it are so small that a change says less than the two ends. */
    static boolean isSmall(Driver series) {
        return series == Driver.UN_IONISED_AMMONIA || series == Driver.NITRITE || series == Driver.CHLORINE;
    }

    /** "15.6 °C", "0.011 mg/L as NH₃", "6.6" */
    String withUnit(Driver series, double level) {
        return withUnit(series.code(), level);
    }

    String withUnit(String code, double level) {
        return withUnit(code, bare(code, level));
    }

    /** A limit, which has no more digits than its source gives: "18 °C", "0.0125 mg/L as NH₃". */
    String limit(Driver series, double limit) {
        return withUnit(series.code(), bareLimit(series, limit));
    }

    String bareLimit(Driver series, double limit) {
        return Formats.significant(series == Driver.TEMPERATURE ? speech.scale().of(limit) : limit, 3);
    }

    /** "11.2 to 15.6 °C" */
    String span(Driver series, double low, double high) {
        return speech.say("levels.fromTo", bare(series, low), withUnit(series, high));
    }

    /** "Temperature, °C" */
    String nameAndUnit(String code) {
        String unit = unit(code);
        return unit.isEmpty() ? name(code) : speech.say("levels.inUnit", name(code), unit);
    }

    /** "a", "a and b", "a, b and c" */
    String list(List<String> names) {
        if (names.size() < 2) {
            return String.join("", names);
        }
        return speech.say("levels.and", String.join(", ", names.subList(0, names.size() - 1)),
                names.get(names.size() - 1));
    }

    /** An analyte by its public code, within a sentence. */
    String asked(String code) {
        return speech.say(Analyte.ofCode(code).map(Wording::inSentence).orElseGet(() -> Saying.asIs(code)));
    }

    /** Whether a change that would print as nothing is worth printing. */
    static boolean shows(Driver series, double change) {
        double apart = Math.abs(change);
        return isSmall(series) ? apart >= LEAST_SHOWN : !Formats.number(apart, 1).matches("[0.]+");
    }

    /** Oxygen is harmful when low; the others when high, pH both ways. */
    static boolean harmfulWhenLow(Driver series, double limit) {
        return series == Driver.DISSOLVED_OXYGEN || series == Driver.PH && limit < 7;
    }

    private static boolean isTemperature(String code) {
        return code.equals(Driver.TEMPERATURE.code());
    }

    private String withUnit(String code, String number) {
        String unit = unit(code);
        return unit.isEmpty() ? number : number + Formats.NO_BREAK + unit;
    }
}
