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
import org.tankrounds.web.Speech;
import org.tankrounds.words.Saying;

/** Boxes, choices and questions that the form of a reading and that of its correction share. */
final class LogFields {
    private final LogForm form;
    private final Map<String, String> errors;
    private final Speech speech;

    /** @param errors sentences by field */
    LogFields(LogForm form, Map<String, String> errors, Speech speech) {
        this.form = form;
        this.errors = errors;
        this.speech = speech;
    }

    FormField box(Analyte analyte, UnitForm unitForm) {
        String mode = analyte.isWholeNumber() ? "numeric" : "decimal";
        String unit = analyte == Analyte.TEMPERATURE ? "" : speech.say(Wording.unitBesideLabel(analyte, unitForm));
        return field(analyte.code(), speech.say(Wording.name(analyte)), unit, mode);
    }

    /** For the number of a meter, where the kit has a card. */
    FormField typedBox(Analyte analyte, UnitForm unitForm) {
        String unit = speech.say(analyte == Analyte.PH
                ? Saying.of("log.byMeter") : Wording.unitBesideLabel(analyte, unitForm));
        return field(analyte.code() + LogForm.TYPED, speech.say("log.typed", Wording.name(analyte)), unit,
                "decimal");
    }

    FormField by() {
        return field(LogForm.BY, speech.say("log.by"), "", "text");
    }

    FormField note() {
        return field(LogForm.NOTE, speech.say("log.note"), speech.say("log.noNames"), "text");
    }

    FormField measuredAt(String unit) {
        return field(LogForm.MEASURED_AT, speech.say("log.measuredAt"), unit, "text");
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

    static List<AskBack> asks(LogForm form, GivenReading given, JudgedReading judged, Speech speech) {
        boolean typed = !form.text(LogForm.MEASURED_AT).isBlank();
        Stream<AskBack> time = typed && judged.timeDoubtful() && !form.timeConfirmed()
                ? Stream.of(askTime(form.text(LogForm.MEASURED_AT).strip(), speech)) : Stream.empty();
        Stream<AskBack> values = given.values().stream()
                .filter(value -> judged.unlikely().contains(value.analyte()))
                .map(value -> ask(value, speech));
        return Stream.of(time, values, PersonalAsks.of(form, speech).stream()).flatMap(asks -> asks).toList();
    }

    private static AskBack askTime(String typed, Speech speech) {
        String name = LogForm.SURE + LogForm.MEASURED_AT;
        return new AskBack(name, speech.say("log.asks.timeAhead", typed),
                List.of(new AskBack.Choice(name + "-yes", LogForm.answerYes(typed),
                        speech.say("log.asks.yes", typed))));
    }

    /** A temperature that cannot be, but would be usual on the thermometer's other scale: that is what to offer. */
    static List<AskBack> mixedUpScales(GivenReading given, Faults faults, Speech speech) {
        boolean impossible = faults.errors().stream()
                .anyMatch(error -> error.field().equals(Analyte.TEMPERATURE.code() + "/value"));
        return given.values().stream()
                .filter(value -> impossible && value.analyte() == Analyte.TEMPERATURE)
                .filter(value -> Judge.likely(value.analyte(), LogForm.otherScale(value.unit()), value.value()))
                .map(value -> {
                    AskBack ask = ask(value, speech);
                    return new AskBack(ask.name(), ask.question(), ask.choices().subList(0, 1));
                })
                .toList();
    }

    private static AskBack ask(GivenValue value, Speech speech) {
        Analyte analyte = value.analyte();
        String name = LogForm.SURE + analyte.code();
        String number = value.value().toPlainString();
        UnitForm form = new UnitForm(value.unit(), value.as().orElse(""));
        Saying shown = shown(analyte, number, form);
        List<AskBack.Choice> choices = new ArrayList<>();
        if (analyte == Analyte.TEMPERATURE) {
            UnitForm other = LogForm.otherScale(value.unit());
            if (Judge.likely(analyte, other, value.value())) {
                choices.add(new AskBack.Choice(name + "-swap", LogForm.answerSwap(number, other.unit()),
                        speech.say("log.asks.swap", shown(analyte, number, other))));
            }
        }
        choices.add(new AskBack.Choice(name + "-yes", LogForm.answerYes(number, value.unit()),
                speech.say("log.asks.yes", shown)));
        return new AskBack(name, speech.say("log.asks.unusual", shown, Wording.inSentence(analyte),
                Wording.usual(analyte, form)), choices);
    }

    private static Saying shown(Analyte analyte, String number, UnitForm form) {
        EnteredValue entered = new EnteredValue(
                analyte, new BigDecimal(number), form, Optional.empty(), false);
        return Wording.value(entered);
    }
}
