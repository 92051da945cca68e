package org.tankrounds.eggday;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.tankrounds.pages.FormPage.Group;
import org.tankrounds.season.CountMethod;
import org.tankrounds.season.Season;
import org.tankrounds.season.TypedCount;
import org.tankrounds.season.TypedMoment;
import org.tankrounds.season.TypedUnits;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.TypedNumber;
import org.tankrounds.words.Saying;

/** The form of an egg day: when, from whom, with which papers, and how many eggs were collected. */
final class RunForm {
    private static final String DAY = "day";
    private static final String STARTS = "starts_at";
    private static final String SUPPLIER = "supplier";
    private static final String CERTIFICATE = "certificate";
    private static final String PERMIT = "permit";
    private static final String EGGS = "eggs";
    private static final String LEFT_OVER = "left_over";
    private static final String NOTE = "note";
    static final Map<String, Saying> LABELS = labels();

    private RunForm() {}

    static Map<String, String> blank() {
        Map<String, String> text = new LinkedHashMap<>();
        LABELS.keySet().forEach(name -> text.put(name, ""));
        text.putAll(TypedUnits.text(OptionalDouble.empty()));
        text.put(TypedCount.METHOD, CountMethod.ONE_BY_ONE.code());
        return text;
    }

    static Map<String, String> textOf(EggRun.Details run) {
        Map<String, String> text = blank();
        text.put(DAY, run.day().toString());
        text.put(STARTS, TypedMoment.CLOCK.format(run.startsAt()));
        text.put(SUPPLIER, run.supplier().orElse(""));
        text.put(CERTIFICATE, run.certificate().orElse(""));
        text.put(PERMIT, run.permit().orElse(""));
        text.putAll(TypedUnits.text(run.thermalUnitsC()));
        text.put(EGGS, number(run.eggs()));
        text.put(TypedCount.METHOD, run.method().code());
        text.put(TypedCount.SPREAD, run.spread() == run.method().usualSpread(run.eggs().orElse(0)) ? ""
                : Integer.toString(run.spread()));
        text.put(LEFT_OVER, number(run.leftOver()));
        text.put(NOTE, run.note().orElse(""));
        return text;
    }

    /** Empty where something cannot be taken; the form says so. */
    static Optional<EggRun.Details> parse(FormInput form, Season season) {
        Optional<LocalDate> day = day(form, season);
        Optional<LocalTime> starts = time(form, STARTS);
        if (form.text(STARTS).isEmpty()) {
            form.refuse(STARTS, "eggday.run.starts.none");
        }
        OptionalInt eggs = count(form, EGGS, 1);
        OptionalInt leftOver = count(form, LEFT_OVER, 0);
        TypedCount typed = TypedCount.of(form, eggs.orElse(0));
        Optional<String> supplier = form.optional(SUPPLIER, 120);
        Optional<String> certificate = form.optional(CERTIFICATE, 80);
        Optional<String> permit = form.optional(PERMIT, 80);
        OptionalDouble units = TypedUnits.of(form);
        Optional<String> note = form.optional(NOTE, 500);
        return form.ok() ? Optional.of(new EggRun.Details(day.orElseThrow(), starts.orElseThrow(), supplier,
                certificate, permit, units, eggs, typed.method(), typed.spread(), leftOver, note))
                : Optional.empty();
    }

    static List<Group> groups(FormInput form, Season season) {
        return List.of(
                new Group(form.say("eggday.run.when"), "", form.say("eggday.run.permit.caution"), List.of(
                        List.of(form.dayBox(DAY, "eggday.run.day").withHint(form.say("season.received.hint",
                                        form.date(season.details().startsOn()), form.date(season.details().endsOn()))),
                                form.textBox(STARTS, "eggday.run.starts").withType("time", "off")
                                        .withHint(form.say("eggday.run.starts.hint"))),
                        List.of(form.optional(form.textBox(SUPPLIER, "season.supplier"))),
                        List.of(form.optional(form.textBox(CERTIFICATE, "season.certificate")),
                                form.optional(form.textBox(PERMIT, "eggday.run.permit"))))),
                new Group(form.say("season.units.group"), form.say("season.units.note"),
                        List.of(TypedUnits.boxes(form))),
                new Group(form.say("eggday.run.collected.group"), form.say("eggday.run.collected.note"), List.of(
                        List.of(form.optional(form.numberBox(EGGS, "eggday.run.collected", ""))),
                        TypedCount.boxes(form),
                        List.of(form.optional(form.numberBox(LEFT_OVER, "eggday.run.leftOver", ""))
                                .withHint(form.say("eggday.run.leftOver.hint"))),
                        List.of(form.optional(form.textBox(NOTE, "eggday.run.note"))))));
    }

    private static Optional<LocalDate> day(FormInput form, Season season) {
        if (form.text(DAY).isEmpty()) {
            form.refuse(DAY, "eggday.run.day.none");
        }
        Optional<LocalDate> day = form.day(DAY, "eggday.run.day.what");
        if (day.isPresent() && !season.details().holds(day.get())) {
            form.refuse(DAY, "eggday.run.day.outside", form.date(season.details().startsOn()),
                    form.date(season.details().endsOn()));
        }
        return day;
    }

    /** Empty where nothing was typed, or where it cannot be taken: then the form says so. */
    static Optional<LocalTime> time(FormInput form, String name) {
        if (form.text(name).isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalTime.parse(form.text(name)).truncatedTo(ChronoUnit.MINUTES));
        } catch (DateTimeException e) {
            form.refuse(name, "season.time.wrong", form.text(name));
            return Optional.empty();
        }
    }

    /** The same of a number of eggs. */
    static OptionalInt count(FormInput form, String name, int least) {
        if (form.text(name).isEmpty()) {
            return OptionalInt.empty();
        }
        OptionalInt eggs = TypedNumber.whole(form.text(name));
        if (eggs.isEmpty() || eggs.getAsInt() < least || eggs.getAsInt() > TypedCount.MOST) {
            form.refuse(name, "eggday.eggs.wrong", least);
        }
        return eggs;
    }

    private static String number(OptionalInt eggs) {
        return eggs.isPresent() ? Integer.toString(eggs.getAsInt()) : "";
    }

    private static Map<String, Saying> labels() {
        Map<String, Saying> labels = new LinkedHashMap<>();
        labels.put(DAY, Saying.of("eggday.run.day"));
        labels.put(STARTS, Saying.of("eggday.run.starts"));
        labels.put(SUPPLIER, Saying.of("season.supplier"));
        labels.put(CERTIFICATE, Saying.of("season.certificate"));
        labels.put(PERMIT, Saying.of("eggday.run.permit"));
        labels.putAll(TypedUnits.labels());
        labels.put(EGGS, Saying.of("eggday.run.collected"));
        labels.put(TypedCount.METHOD, TypedCount.labels().get(TypedCount.METHOD));
        labels.put(TypedCount.SPREAD, TypedCount.labels().get(TypedCount.SPREAD));
        labels.put(LEFT_OVER, Saying.of("eggday.run.leftOver"));
        labels.put(NOTE, Saying.of("eggday.run.note"));
        return labels;
    }
}
