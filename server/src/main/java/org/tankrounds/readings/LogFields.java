package org.tankrounds.readings;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.tankrounds.pages.AskBack;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.LogPage.Hidden;
import org.tankrounds.pages.LogPage.Step;
import org.tankrounds.readings.GivenReading.GivenValue;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;

/** Boxes, choices and questions that the form of a reading and that of its correction share. */
final class LogFields {
    private final LogForm form;
    private final Map<String, String> errors;

    /** @param errors sentences by field */
    LogFields(LogForm form, Map<String, String> errors) {
        this.form = form;
        this.errors = errors;
    }

    FormField box(Analyte analyte, UnitForm unitForm) {
        String mode = analyte.isWholeNumber() ? "numeric" : "decimal";
        String unit = analyte == Analyte.TEMPERATURE ? "" : unit(analyte, unitForm);
        return field(analyte.code(), Wording.name(analyte), unit, mode);
    }

    /** For the number of a meter, where the kit has a card. */
    FormField typedBox(Analyte analyte, UnitForm unitForm) {
        String unit = analyte == Analyte.PH ? "as by a meter" : unit(analyte, unitForm);
        return field(analyte.code() + LogForm.TYPED, Wording.name(analyte) + ", typed", unit, "decimal");
    }

    /** Beside a label: "mg/L, total, as N". */
    static String unit(Analyte analyte, UnitForm form) {
        String unit = Wording.unit(form);
        return analyte == Analyte.TOTAL_AMMONIA ? unit.replaceFirst(" as ", ", total, as ") : unit;
    }

    FormField by() {
        return field(LogForm.BY, "Class or period", "", "text");
    }

    FormField note() {
        return field(LogForm.NOTE, "Note", "optional, no names", "text");
    }

    FormField measuredAt(String unit) {
        return field(LogForm.MEASURED_AT, "Measured at", unit, "text");
    }

    FormField field(String name, String label, String unit, String mode) {
        return new FormField(name, label, "", unit, form.text(name), errors.getOrDefault(name, ""), "text", mode,
                "off", true, List.of());
    }

    /** @param usual the class's habit */
    List<Step> scales(String usual) {
        String name = Analyte.TEMPERATURE.code() + LogForm.UNIT;
        String chosen = form.text(name).isEmpty() ? usual : form.text(name);
        return List.of(new Step(name + "-f", "[degF]", "°F", chosen.equals("[degF]")),
                new Step(name + "-c", "Cel", "°C", !chosen.equals("[degF]")));
    }

    /** Answers already given go along, so that nobody is asked the same thing twice. */
    List<Hidden> kept(Set<Analyte> confirmed) {
        Stream<String> time = form.timeConfirmed() ? Stream.of(LogForm.MEASURED_AT) : Stream.empty();
        return Stream.of(confirmed.stream().sorted().map(Analyte::code), time, PersonalAsks.answered(form).stream())
                .flatMap(names -> names)
                .map(name -> LogForm.SURE + name)
                .map(name -> new Hidden(name, form.text(name)))
                .toList();
    }

    static List<AskBack> asks(LogForm form, GivenReading given, JudgedReading judged) {
        boolean typed = !form.text(LogForm.MEASURED_AT).isBlank();
        Stream<AskBack> time = typed && judged.timeDoubtful() && !form.timeConfirmed()
                ? Stream.of(askTime(form.text(LogForm.MEASURED_AT).strip())) : Stream.empty();
        Stream<AskBack> values = given.values().stream()
                .filter(value -> judged.unlikely().contains(value.analyte()))
                .map(LogFields::ask);
        return Stream.of(time, values, PersonalAsks.of(form).stream()).flatMap(asks -> asks).toList();
    }

    private static AskBack askTime(String typed) {
        String name = LogForm.SURE + LogForm.MEASURED_AT;
        return new AskBack(name, "Measured at " + typed + ": that is still to come. Is the clock right?",
                List.of(new AskBack.Choice(name + "-yes", LogForm.answerYes(typed), "Yes, " + typed + " is right")));
    }

    /** A temperature that cannot be, but would be usual on the thermometer's other scale: that is what to offer. */
    static List<AskBack> mixedUpScales(GivenReading given, Faults faults) {
        boolean impossible = faults.errors().stream()
                .anyMatch(error -> error.field().equals(Analyte.TEMPERATURE.code() + "/value"));
        return given.values().stream()
                .filter(value -> impossible && value.analyte() == Analyte.TEMPERATURE)
                .filter(value -> Judge.likely(value.analyte(), LogForm.otherScale(value.unit()), value.value()))
                .map(value -> {
                    AskBack ask = ask(value);
                    return new AskBack(ask.name(), ask.question(), ask.choices().subList(0, 1));
                })
                .toList();
    }

    private static AskBack ask(GivenValue value) {
        Analyte analyte = value.analyte();
        String name = LogForm.SURE + analyte.code();
        String number = value.value().toPlainString();
        UnitForm form = new UnitForm(value.unit(), value.as().orElse(""));
        String shown = shown(analyte, number, form);
        List<AskBack.Choice> choices = new ArrayList<>();
        if (analyte == Analyte.TEMPERATURE) {
            UnitForm other = LogForm.otherScale(value.unit());
            if (Judge.likely(analyte, other, value.value())) {
                choices.add(new AskBack.Choice(name + "-swap", LogForm.answerSwap(number, other.unit()),
                        "No, it was " + shown(analyte, number, other)));
            }
        }
        choices.add(new AskBack.Choice(name + "-yes", LogForm.answerYes(number, value.unit()),
                "Yes, " + shown + " is right"));
        return new AskBack(name, "You typed " + shown + " for " + Wording.lower(analyte) + "; in a trout tank it"
                + " is usually between " + Wording.usual(analyte, form) + ".", choices);
    }

    private static String shown(Analyte analyte, String number, UnitForm form) {
        EnteredValue entered = new EnteredValue(
                analyte, new BigDecimal(number), form, Optional.empty(), false);
        return Wording.value(entered);
    }
}
