package org.tankrounds.season;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.tankrounds.fish.Milestone;
import org.tankrounds.pages.FormPage.Group;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.TypedNumber;
import org.tankrounds.words.Saying;

/** A lot's form, on the school's clock. */
final class LotForm {
    static final String EGGS = "eggs";
    static final String DAY = "received_on";
    static final String TIME = "received_time";
    static final String SUPPLIER = "supplier";
    static final String CERTIFICATE = "certificate";
    static final String EYED = "eyed_on";
    static final String HATCHED = "hatched_on";
    static final String FIRST_FEEDING = "first_feeding_on";
    static final Map<String, Saying> LABELS = labels();

    private LotForm() {}

    static Map<String, String> blank() {
        Map<String, String> text = new LinkedHashMap<>();
        LABELS.keySet().forEach(name -> text.put(name, ""));
        text.putAll(TypedUnits.text(OptionalDouble.empty()));
        text.put(TypedCount.METHOD, CountMethod.ONE_BY_ONE.code());
        return text;
    }

    static Map<String, String> textOf(Lot lot, ZoneId zone) {
        LocalDateTime received = LocalDateTime.ofInstant(lot.receivedAt(), zone);
        Map<String, String> text = blank();
        text.put(EGGS, Integer.toString(lot.eggs()));
        text.put(TypedCount.METHOD, lot.method().code());
        text.put(TypedCount.SPREAD, lot.spread() == lot.method().usualSpread(lot.eggs()) ? ""
                : Integer.toString(lot.spread()));
        text.put(DAY, received.toLocalDate().toString());
        text.put(TIME, TypedMoment.CLOCK.format(received));
        text.putAll(TypedUnits.text(lot.thermalUnitsC()));
        text.put(SUPPLIER, lot.supplier().orElse(""));
        text.put(CERTIFICATE, lot.certificate().orElse(""));
        for (Milestone milestone : Milestone.values()) {
            text.put(box(milestone), lot.seenOn().of(milestone).map(LocalDate::toString).orElse(""));
        }
        return text;
    }

    /** @param today on the school's clock */
    static Optional<LotEdits.Details> parse(FormInput form, Season.Details season, ZoneId zone, LocalDate today) {
        TypedCount eggs = TypedCount.of(form, eggs(form));
        Optional<LocalDate> day = receivedOn(form, season);
        Optional<Instant> receivedAt = day.flatMap(known -> TypedMoment.of(form, TIME, known, LocalTime.NOON, zone));
        OptionalDouble units = TypedUnits.of(form);
        Optional<String> supplier = form.optional(SUPPLIER, 120);
        Optional<String> certificate = form.optional(CERTIFICATE, 80);
        SeenOn seen = seenOn(form, day, season, today);
        return form.ok()
                ? Optional.of(new LotEdits.Details(
                        eggs.fish(), receivedAt.orElseThrow(), units, supplier, certificate, seen, eggs.method(),
                        eggs.spread()))
                : Optional.empty();
    }

    static List<Group> groups(FormInput form, Season season, ZoneId zone) {
        return List.of(whatCame(form, season.details(), zone), howFar(form), papers(form));
    }

    private static Group whatCame(FormInput form, Season.Details season, ZoneId zone) {
        return new Group(form.say("season.eggs.what"), "", List.of(
                List.of(form.numberBox(EGGS, "season.eggs", "").withHint(form.say("season.eggs.hint"))),
                TypedCount.boxes(form),
                List.of(form.dayBox(DAY, "season.received").withHint(form.say(
                                "season.received.hint", form.date(season.startsOn()), form.date(season.endsOn()))),
                        form.textBox(TIME, "season.time").withType("time", "off")
                                .withHint(form.say("season.time.hint", zone.getId().replace('_', ' '))))));
    }

    private static Group howFar(FormInput form) {
        return new Group(form.say("season.units.group"), form.say("season.units.note"), List.of(
                TypedUnits.boxes(form),
                List.of(form.optional(form.dayBox(EYED, "season.eyed")),
                        form.optional(form.dayBox(HATCHED, "season.hatched"))),
                List.of(form.optional(form.dayBox(FIRST_FEEDING, "season.feeding"))
                        .withHint(form.say("season.feeding.hint")))));
    }

    private static Group papers(FormInput form) {
        return new Group(form.say("season.papers"), "", List.of(
                List.of(form.optional(form.textBox(SUPPLIER, "season.supplier"))),
                List.of(form.optional(form.textBox(CERTIFICATE, "season.certificate")))));
    }

    private static int eggs(FormInput form) {
        OptionalInt eggs = TypedNumber.whole(form.required(EGGS, 20, "season.eggs.none"));
        if (eggs.isEmpty() || eggs.getAsInt() < 1 || eggs.getAsInt() > TypedCount.MOST) {
            form.refuse(EGGS, "season.eggs.wrong");
        }
        return eggs.orElse(0);
    }

    private static Optional<LocalDate> receivedOn(FormInput form, Season.Details season) {
        if (form.text(DAY).isEmpty()) {
            form.refuse(DAY, "season.received.none");
        }
        Optional<LocalDate> day = form.day(DAY, "season.received.what");
        if (day.isPresent() && !season.holds(day.get())) {
            form.refuse(DAY, "season.received.outside", form.date(season.startsOn()), form.date(season.endsOn()));
        }
        return day;
    }

    private static SeenOn seenOn(
            FormInput form, Optional<LocalDate> received, Season.Details season, LocalDate today) {
        SeenOn seen = SeenOn.NOTHING;
        Optional<LocalDate> before = received;
        for (Milestone milestone : Milestone.values()) {
            Optional<LocalDate> day = form.day(
                    box(milestone), "season.seen.what." + milestone.name().toLowerCase(Locale.ROOT));
            if (day.isPresent()) {
                checkSeen(form, box(milestone), day.get(), before, season, today);
                before = day;
            }
            seen = seen.with(milestone, day);
        }
        return seen;
    }

    /** @param before what has to have been by then: the eggs came, or an earlier milestone */
    private static void checkSeen(FormInput form, String box, LocalDate day, Optional<LocalDate> before,
            Season.Details season, LocalDate today) {
        if (before.isPresent() && day.isBefore(before.get())) {
            form.refuse(box, "season.seen.before", form.date(before.get()));
        } else if (day.isAfter(today)) {
            form.refuse(box, "season.seen.ahead");
        } else if (!season.holds(day)) {
            form.refuse(box, "season.seen.outside", form.date(season.startsOn()), form.date(season.endsOn()));
        }
    }

    static String box(Milestone milestone) {
        return switch (milestone) {
            case EYED -> EYED;
            case HATCH -> HATCHED;
            case FIRST_FEEDING -> FIRST_FEEDING;
        };
    }

    private static Map<String, Saying> labels() {
        Map<String, Saying> labels = new LinkedHashMap<>();
        labels.put(EGGS, Saying.of("season.eggs"));
        labels.put(TypedCount.METHOD, TypedCount.labels().get(TypedCount.METHOD));
        labels.put(TypedCount.SPREAD, TypedCount.labels().get(TypedCount.SPREAD));
        labels.put(DAY, Saying.of("season.received"));
        labels.put(TIME, Saying.of("season.time"));
        labels.putAll(TypedUnits.labels());
        labels.put(EYED, Saying.of("season.eyed"));
        labels.put(HATCHED, Saying.of("season.hatched"));
        labels.put(FIRST_FEEDING, Saying.of("season.feeding"));
        labels.put(SUPPLIER, Saying.of("season.supplier"));
        labels.put(CERTIFICATE, Saying.of("season.certificate"));
        return labels;
    }
}
