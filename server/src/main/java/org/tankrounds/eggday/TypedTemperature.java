package org.tankrounds.eggday;

import java.util.OptionalDouble;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.Digits;
import org.tankrounds.water.Range;
import org.tankrounds.water.Units;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Scale;
import org.tankrounds.web.Speech;
import org.tankrounds.web.TypedNumber;

/** A temperature as typed into a form, on the reader's own scale. */
final class TypedTemperature {
    private TypedTemperature() {}

    static String text(double celsius, Speech speech) {
        return TypedNumber.text(speech.scale().of(celsius), 1);
    }

    /**
     * In °C; empty where it cannot be taken: then the form says so.
     *
     * @param missing what is said where nothing was typed
     * @param allowed °C
     */
    static OptionalDouble of(FormInput form, String name, String missing, Range allowed, Speech speech) {
        if (form.text(name).isEmpty()) {
            form.refuse(name, missing);
            return OptionalDouble.empty();
        }
        OptionalDouble typed = form.decimal(name, "eggday.temperature");
        if (typed.isEmpty()) {
            return typed;
        }
        Scale scale = speech.scale();
        double celsius = Digits.kept(Units.toCanonical(Analyte.TEMPERATURE,
                Analyte.TEMPERATURE.form(scale.unit(), "").orElseThrow(), typed.getAsDouble(), Double.NaN));
        if (!allowed.holds(celsius)) {
            form.refuse(name, "eggday.temperature.outside", said(allowed.min(), scale), said(allowed.max(), scale),
                    scale.sign());
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(celsius);
    }

    private static String said(double celsius, Scale scale) {
        return Formats.number(scale.of(celsius), 0);
    }
}
