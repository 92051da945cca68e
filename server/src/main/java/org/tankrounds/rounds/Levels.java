package org.tankrounds.rounds;

import java.util.Locale;
import org.tankrounds.forecast.Driver;
import org.tankrounds.web.Formats;

/** How a level of each series is called and written: always with as many digits as its readings carry. */
final class Levels {
    /** No test tells less, in mg/L. */
    private static final double LEAST_SHOWN = 0.0001;
    private static final String LEAST_SHOWN_TEXT = "0.0001";
    private static final String UNDER = "under";

    private Levels() {}

    static String name(Driver series) {
        return switch (series) {
            case TEMPERATURE -> "Temperature";
            case UN_IONISED_AMMONIA -> "Un-ionised ammonia";
            case NITRITE -> "Nitrite";
            case DISSOLVED_OXYGEN -> "Dissolved oxygen";
            case PH -> "pH";
            case CHLORINE -> "Chlorine";
            case DEATHS -> "Deaths";
            case SILENCE -> "Silence";
        };
    }

    /** The name inside a sentence. */
    static String inSentence(Driver series) {
        return series == Driver.PH ? "pH" : name(series).toLowerCase(Locale.ENGLISH);
    }

    /** The unit behind a number; pH has none. */
    static String unit(Driver series) {
        return switch (series) {
            case TEMPERATURE -> "°C";
            case UN_IONISED_AMMONIA -> "mg/L as NH₃";
            case NITRITE -> "mg/L as N";
            case DISSOLVED_OXYGEN, CHLORINE -> "mg/L";
            default -> "";
        };
    }

    /** "15.6", "0.011" */
    static String bare(Driver series, double level) {
        return switch (series) {
            case TEMPERATURE, DISSOLVED_OXYGEN, PH -> Formats.number(level, 1);
            default -> level > 0 && level < LEAST_SHOWN ? UNDER + " " + LEAST_SHOWN_TEXT
                    : Formats.significant(level, 2);
        };
    }

    /** "0.011 mg/L as NH₃", or that there was none to see. */
    static String read(Driver series, double level) {
        return isSmall(series) && level == 0 ? "not detected" : withUnit(series, level);
    }

    /** Whether levels of it are so small that a change says less than the two ends. */
    static boolean isSmall(Driver series) {
        return series == Driver.UN_IONISED_AMMONIA || series == Driver.NITRITE || series == Driver.CHLORINE;
    }

    /** "15.6 °C", "0.011 mg/L as NH₃", "6.6" */
    static String withUnit(Driver series, double level) {
        return withUnit(series, bare(series, level));
    }

    /** A limit, which has no more digits than its source gives: "18 °C", "0.0125 mg/L as NH₃". */
    static String limit(Driver series, double limit) {
        return withUnit(series, bareLimit(limit));
    }

    static String bareLimit(double limit) {
        return Formats.significant(limit, 3);
    }

    /** Whether a change that would print as nothing is worth printing. */
    static boolean shows(Driver series, double change) {
        String printed = bare(series, Math.abs(change));
        return !printed.startsWith(UNDER) && !printed.matches("[0.]+");
    }

    /** Oxygen is harmful when low; the others when high, pH both ways. */
    static boolean harmfulWhenLow(Driver series, double limit) {
        return series == Driver.DISSOLVED_OXYGEN || series == Driver.PH && limit < 7;
    }

    private static String withUnit(Driver series, String number) {
        String unit = unit(series);
        return unit.isEmpty() ? number : number + Formats.NO_BREAK + unit;
    }
}
