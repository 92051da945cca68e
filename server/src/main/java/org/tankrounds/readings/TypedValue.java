package org.tankrounds.readings;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tankrounds.water.Analyte;
import org.tankrounds.words.Saying;

/**
 * A number as a person types it into a box: "0.25", "0,25", "0.25 mg/L", "52 F". A unit that was typed wins over the
 * one beside the box.
 *
 * @param unit UCUM code of the unit that was typed; empty where none was
 */
record TypedValue(BigDecimal number, Optional<String> unit) {
    private static final int LONGEST = 40;
    private static final Pattern FORM =
            Pattern.compile("([-+\u2212]?(?:\\d{1,7}(?:[.,]\\d{0,6})?|[.,]\\d{1,6}))\\s*([^\\d].*)?");
    private static final Pattern SEVERAL_NUMBERS = Pattern.compile(".*\\d[\\s;|]+[-+]?[\\d.,].*", Pattern.DOTALL);
    private static final Pattern THOUSANDS = Pattern.compile("[1-9]\\d{0,2}(,\\d{3})+");
    private static final Map<String, String> SCALES = Map.of(
            "f", "[degF]", "°f", "[degF]", "ºf", "[degF]", "degf", "[degF]", "fahrenheit", "[degF]",
            "c", "Cel", "°c", "Cel", "ºc", "Cel", "degc", "Cel", "celsius", "Cel");

    /**
     * @param fault hears a sentence where the text cannot be read
     * @return empty where nothing was typed, or where it cannot be read
     */
    static Optional<TypedValue> read(Analyte analyte, String text, Consumer<Saying> fault) {
        String typed = text.replace('\u00a0', ' ').strip();
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        if (typed.indexOf('\t') >= 0 || typed.indexOf('\n') >= 0 || SEVERAL_NUMBERS.matcher(typed).matches()) {
            fault.accept(Saying.of("readings.typed.several", Wording.name(analyte)));
            return Optional.empty();
        }
        if (THOUSANDS.matcher(typed).matches()) {
            fault.accept(Saying.of("readings.typed.twoThings", Wording.name(analyte), typed));
            return Optional.empty();
        }
        Matcher form = FORM.matcher(typed);
        Optional<TypedValue> value = typed.length() <= LONGEST && form.matches()
                ? value(analyte, form.group(1), form.group(2)) : Optional.empty();
        if (value.isEmpty()) {
            fault.accept(Saying.of("readings.typed.unreadable", Wording.name(analyte), shortened(typed),
                    example(analyte)));
        }
        return value;
    }

    private static Optional<TypedValue> value(Analyte analyte, String number, String unit) {
        String pointed = number.replace(',', '.').replace('\u2212', '-');
        BigDecimal value = new BigDecimal(pointed.endsWith(".") ? pointed + "0" : pointed);
        String written = unit == null ? ""
                : unit.strip().toLowerCase(Locale.ENGLISH).replaceAll("\\.$", "").replace(" ", "");
        if (written.isEmpty()) {
            return Optional.of(new TypedValue(value, Optional.empty()));
        }
        if (analyte == Analyte.TEMPERATURE) {
            return Optional.ofNullable(SCALES.get(written.replaceAll("^(degrees?|grados?)", "")))
                    .map(scale -> new TypedValue(value, Optional.of(scale)));
        }
        if (analyte == Analyte.DISSOLVED_OXYGEN && written.equals("%")) {
            return Optional.of(new TypedValue(value, Optional.of("%")));
        }
        if (analyte == Analyte.DISSOLVED_OXYGEN && milligrams().contains(written)) {
            return Optional.of(new TypedValue(value, Optional.of("mg/L")));
        }
        return spellings(analyte).contains(written)
                ? Optional.of(new TypedValue(value, Optional.empty())) : Optional.empty();
    }

    private static Set<String> spellings(Analyte analyte) {
        return switch (analyte) {
            case TEMPERATURE -> Set.of();
            case PH -> Set.of("ph");
            case DEATHS -> Set.of("fish", "egg", "eggs", "dead", "alevin", "alevins", "fry",
                    "pez", "peces", "huevo", "huevos", "muerto", "muertos", "alevines");
            case FEED -> Set.of("g", "gram", "grams", "gramo", "gramos");
            case WATER_CHANGE -> Set.of("%", "percent", "porciento");
            default -> milligrams();
        };
    }

    private static Set<String> milligrams() {
        return Set.of("mg/l", "mgl", "ppm", "mg/liter", "mg/litre");
    }

    private static Saying example(Analyte analyte) {
        return Saying.of(switch (analyte) {
            case TEMPERATURE -> "readings.typed.example.temperature";
            case PH -> "readings.typed.example.ph";
            case DEATHS -> "readings.typed.example.deaths";
            case FEED -> "readings.typed.example.feed";
            case WATER_CHANGE -> "readings.typed.example.water_change";
            default -> "readings.typed.example.others";
        });
    }

    private static String shortened(String typed) {
        return typed.codePointCount(0, typed.length()) <= LONGEST
                ? typed : typed.substring(0, typed.offsetByCodePoints(0, LONGEST)) + "…";
    }
}
