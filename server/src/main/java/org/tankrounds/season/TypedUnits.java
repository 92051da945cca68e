package org.tankrounds.season;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.FormField.Option;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.TypedNumber;
import org.tankrounds.words.Saying;

/** How far eggs have come, as typed into a form: degree-days on either scale. */
public final class TypedUnits {
    private static final String UNITS = "thermal_units";
    private static final String UNITS_IN = "thermal_units_in";
    private static final String CELSIUS_DAYS = "Cel.d";
    private static final String FAHRENHEIT_DAYS = "degF.d";
    private static final double F_DAYS_PER_C_DAY = 1.8;
    private static final double MOST_C_DAYS = 1000;

    private TypedUnits() {}

    public static Map<String, Saying> labels() {
        Map<String, Saying> labels = new LinkedHashMap<>();
        labels.put(UNITS, Saying.of("season.units"));
        labels.put(UNITS_IN, Saying.of("season.unitsIn"));
        return labels;
    }

    /** What the boxes show. */
    public static Map<String, String> text(OptionalDouble unitsC) {
        Map<String, String> text = new LinkedHashMap<>();
        text.put(UNITS, unitsC.isPresent() ? TypedNumber.text(unitsC.getAsDouble(), 1) : "");
        text.put(UNITS_IN, CELSIUS_DAYS);
        return text;
    }

    /** In degree-Celsius days; empty where nobody told, or where it cannot be taken: then the form says so. */
    public static OptionalDouble of(FormInput form) {
        String in = form.text(UNITS_IN);
        if (!in.equals(CELSIUS_DAYS) && !in.equals(FAHRENHEIT_DAYS)) {
            form.refuse(UNITS_IN, "season.unitsIn.none");
        }
        OptionalDouble typed = form.decimal(UNITS, "season.units.what");
        if (typed.isEmpty()) {
            return typed;
        }
        double unitsC = typed.getAsDouble() / (in.equals(FAHRENHEIT_DAYS) ? F_DAYS_PER_C_DAY : 1);
        if (!(unitsC >= 0 && unitsC <= MOST_C_DAYS)) {
            form.refuse(UNITS, "season.units.wrong");
        }
        return OptionalDouble.of(unitsC);
    }

    public static List<FormField> boxes(FormInput form) {
        return List.of(
                form.optional(form.numberBox(UNITS, "season.units", "")).withHint(form.say("season.units.hint")),
                form.choice(UNITS_IN, "season.unitsIn", List.of(
                        new Option(CELSIUS_DAYS, form.say("season.unitsIn.celsius")),
                        new Option(FAHRENHEIT_DAYS, form.say("season.unitsIn.fahrenheit")))));
    }
}
