package org.tankrounds.eggday;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.tankrounds.eggday.EggReceipt.Adult;
import org.tankrounds.pages.AskBack;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.FormField.Option;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.PersonalText;
import org.tankrounds.season.Season;
import org.tankrounds.season.TypedCount;
import org.tankrounds.season.TypedMoment;
import org.tankrounds.web.FormInput;

/** The form by which a class says what it received. */
final class ReceiptForm {
    private static final String EGGS = "eggs";
    static final String DEAD = "dead";
    private static final String DAY = "received_on";
    private static final String TIME = "received_time";
    private static final String LABEL = "class_label";
    private static final String ADULT = "adult";
    private static final String NOTE = "note";
    /** Answer to the question about names, with the names asked about. */
    static final String SURE = "sure_names";
    static final List<String> NAMES = List.of(
            EGGS, DEAD, TypedCount.METHOD, TypedCount.SPREAD, DAY, TIME, LABEL, ADULT, NOTE, SURE);
    private static final int LONGEST_LABEL = 60;

    private final Season season;
    private final EggRun run;
    private final Tank tank;
    private final Instant now;

    ReceiptForm(Season season, EggRun run, Tank tank, Instant now) {
        this.season = season;
        this.run = run;
        this.tank = tank;
        this.now = now;
    }

    Map<String, String> blank(EggStop stop) {
        Map<String, String> text = new LinkedHashMap<>();
        NAMES.forEach(name -> text.put(name, ""));
        text.put(EGGS, Integer.toString(stop.eggs()));
        text.put(TypedCount.METHOD, run.details().method().code());
        text.put(DAY, run.details().day().toString());
        text.put(LABEL, tank.classroom());
        return text;
    }

    /** Empty where something cannot be taken; the form says so. */
    Optional<EggReceipt.Details> parse(FormInput form) {
        if (form.text(EGGS).isEmpty()) {
            form.refuse(EGGS, "eggday.receipt.eggs.none");
        }
        OptionalInt eggs = RunForm.count(form, EGGS, 1);
        OptionalInt dead = RunForm.count(form, DEAD, 0);
        if (eggs.isPresent() && dead.isPresent() && dead.getAsInt() > eggs.getAsInt()) {
            form.refuse(DEAD, "eggday.receipt.dead.many");
        }
        TypedCount count = TypedCount.of(form, eggs.orElse(0));
        Optional<Instant> at = day(form).flatMap(day -> at(form, day));
        String label = form.required(LABEL, LONGEST_LABEL, "eggday.receipt.label.none");
        if (PersonalText.tellsHowToReach(label)) {
            form.refuse(LABEL, "eggday.receipt.label.reach");
        }
        Optional<Adult> adult = Adult.ofCode(form.text(ADULT));
        if (adult.isEmpty()) {
            form.refuse(ADULT, "eggday.receipt.adult.none");
        }
        Optional<String> note = form.optional(NOTE, 500);
        return form.ok() ? Optional.of(new EggReceipt.Details(at.orElseThrow(), eggs.getAsInt(), dead, count.method(),
                count.spread(), label, adult.orElseThrow(), note)) : Optional.empty();
    }

    /** What looks like somebody's name, unless the room is called so, or the writer said that it stays. */
    Optional<AskBack> askOfNames(FormInput form, EggReceipt.Details details) {
        Set<String> names = new TreeSet<>(PersonalText.namesOfWho(details.classLabel()));
        details.note().ifPresent(note -> names.addAll(PersonalText.names(note)));
        names.removeIf(tank.classroom()::contains);
        String yes = "yes " + String.join(", ", names);
        return names.isEmpty() || form.text(SURE).equals(yes) ? Optional.empty()
                : Optional.of(new AskBack(SURE, form.say("eggday.receipt.names", String.join(", ", names)),
                        List.of(new AskBack.Choice(SURE + "-yes", yes, form.say("eggday.receipt.names.keep")))));
    }

    List<List<FormField>> rows(FormInput form) {
        List<Option> adults = new ArrayList<>(List.of(new Option("", form.say("eggday.receipt.adult.choose"))));
        Stream.of(Adult.values()).forEach(adult ->
                adults.add(new Option(adult.code(), form.say("eggday.adult." + adult.code()))));
        return List.of(
                List.of(form.numberBox(EGGS, "eggday.receipt.eggs", "").withHint(form.say("eggday.receipt.eggs.hint")),
                        form.optional(form.numberBox(DEAD, "eggday.receipt.dead", ""))
                                .withHint(form.say("eggday.receipt.dead.hint"))),
                TypedCount.boxes(form),
                List.of(form.dayBox(DAY, "eggday.receipt.day"),
                        form.optional(form.textBox(TIME, "eggday.receipt.time")).withType("time", "off")
                                .withHint(form.say("count.time.hint", tank.zone().getId().replace('_', ' ')))),
                List.of(form.textBox(LABEL, "eggday.receipt.label").withHint(form.say("eggday.receipt.label.hint")),
                        form.choice(ADULT, "eggday.receipt.adult", adults)),
                List.of(form.optional(form.textBox(NOTE, "eggday.run.note"))));
    }

    private Optional<LocalDate> day(FormInput form) {
        if (form.text(DAY).isEmpty()) {
            form.refuse(DAY, "eggday.receipt.day.none");
        }
        Optional<LocalDate> day = form.day(DAY, "eggday.run.day.what");
        if (day.isPresent() && !season.details().holds(day.get())) {
            form.refuse(DAY, "season.received.outside", form.date(season.details().startsOn()),
                    form.date(season.details().endsOn()));
        } else if (day.isPresent() && day.get().isAfter(today())) {
            form.refuse(DAY, "count.day.ahead");
        }
        return day;
    }

    /** What came today without a time came by now. */
    private Optional<Instant> at(FormInput form, LocalDate day) {
        LocalTime whereEmpty = day.equals(today()) ? LocalDateTime.ofInstant(now, tank.zone()).toLocalTime()
                : LocalTime.NOON;
        Optional<Instant> at = TypedMoment.of(form, TIME, day, whereEmpty, tank.zone());
        if (at.filter(moment -> moment.isAfter(now)).isPresent()) {
            form.refuse(TIME, "count.time.ahead");
        }
        return at;
    }

    private LocalDate today() {
        return now.atZone(tank.zone()).toLocalDate();
    }
}
