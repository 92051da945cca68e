package org.tankrounds.readings;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tankrounds.pages.AskBack;
import org.tankrounds.pages.LogPage.Hidden;
import org.tankrounds.readings.StoreReading.Submitted;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Formats;

/** What there is to say about each row of a month before any of it may be stored. */
final class MonthHearing implements StoreReading.Hearing {
    /** No row: the sheet itself. */
    static final MonthHearing NOTHING = new MonthHearing(null, List.of(), MonthRepeats.NONE, null);

    private final MonthForm form;
    private final Map<String, LocalDate> days = new TreeMap<>();
    private final MonthRepeats repeats;
    private final Formats formats;
    private final Map<LocalDate, Map<String, String>> errors = new TreeMap<>();
    private final List<AskBack> asks = new ArrayList<>();
    private final List<Hidden> kept = new ArrayList<>();

    MonthHearing(MonthForm form, List<LocalDate> days, MonthRepeats repeats, Formats formats) {
        this.form = form;
        this.repeats = repeats;
        this.formats = formats;
        days.forEach(day -> this.days.put(form.key(day), day));
    }

    @Override
    public boolean accept(Submitted submitted, JudgedReading judged) {
        LocalDate day = days.get(submitted.key());
        if (repeats.isOpen(day)) {
            return false;
        }
        LogForm row = form.day(day);
        boolean sound = submitted.faults().none();
        List<AskBack> asked = sound ? LogFields.asks(row, submitted.given(), judged, formats.speech())
                : LogFields.mixedUpScales(submitted.given(), submitted.faults(), formats.speech());
        asked.forEach(ask -> asks.add(ofDay(day, ask)));
        new LogFields(row, Map.of(), formats.speech()).kept(submitted.confirmed())
                .forEach(one -> kept.add(new Hidden(MonthForm.name(day, one.name()), one.value())));
        errors.put(day, LogForm.byField(submitted.faults(), formats.speech()));
        return sound && asked.isEmpty();
    }

    @Override
    public void overtaken(Submitted submitted) {
        errors.put(days.get(submitted.key()),
                Map.of(Analyte.TEMPERATURE.code(), formats.speech().say("paper.month.overtaken")));
    }

    private AskBack ofDay(LocalDate day, AskBack ask) {
        List<AskBack.Choice> choices = ask.choices().stream().map(choice -> new AskBack.Choice(
                MonthForm.name(day, choice.id()), choice.value(), choice.text())).toList();
        return new AskBack(MonthForm.name(day, ask.name()),
                formats.speech().say("paper.month.ofDay", formats.weekdayAndDay(day), ask.question()), choices);
    }

    /** Sentences by field of a day's reading. */
    Map<String, String> errors(LocalDate day) {
        return errors.getOrDefault(day, Map.of());
    }

    List<AskBack> asks() {
        return asks;
    }

    MonthRepeats repeats() {
        return repeats;
    }

    /** Answers already given go along. */
    List<Hidden> kept() {
        return kept;
    }
}
