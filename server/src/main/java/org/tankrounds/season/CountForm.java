package org.tankrounds.season;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.tankrounds.fish.Stage;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.FormField.Option;
import org.tankrounds.pages.FormPage.Group;
import org.tankrounds.places.Tank;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.TypedNumber;

/** The form by which one thing is written down of the number of fish in a tank. */
final class CountForm {
    static final String FISH = "fish";
    private static final String TO = "to";
    private static final String STAGE = "stage";
    private static final String PLACE = "place";
    private static final String APPROVAL = "approval";
    private static final String DAY = "day";
    private static final String TIME = "time";
    private static final String NOTE = "note";
    static final List<String> NAMES =
            List.of(FISH, TypedCount.METHOD, TypedCount.SPREAD, TO, STAGE, PLACE, APPROVAL, DAY, TIME, NOTE);

    private final CountKind kind;
    private final Season season;
    private final Tank tank;
    private final List<Tank> others;
    private final Stage stage;
    private final Instant now;

    /**
     * @param others tanks that eggs and fish can be moved to
     * @param stage how far the tank has come by now
     */
    CountForm(CountKind kind, Season season, Tank tank, List<Tank> others, Stage stage, Instant now) {
        this.kind = kind;
        this.season = season;
        this.tank = tank;
        this.others = others;
        this.stage = stage;
        this.now = now;
    }

    Map<String, String> blank() {
        Map<String, String> text = new LinkedHashMap<>();
        NAMES.forEach(name -> text.put(name, ""));
        text.put(TypedCount.METHOD, CountMethod.ONE_BY_ONE.code());
        text.put(DAY, today().toString());
        return text;
    }

    /** Empty where something cannot be taken; the form says so. */
    Optional<CountEntry> parse(FormInput form) {
        TypedCount count = TypedCount.of(form, fish(form));
        Optional<Tank> to = kind == CountKind.MOVED ? to(form) : Optional.empty();
        Optional<Stage> seen = kind == CountKind.MOVED ? stage(form) : Optional.empty();
        Optional<String> place = kind == CountKind.RELEASED || kind == CountKind.THINNED
                ? Optional.of(form.required(PLACE, 120, said("place.none"))).filter(text -> !text.isEmpty())
                : Optional.empty();
        Optional<String> approval = place.isPresent() ? form.optional(APPROVAL, 80) : Optional.empty();
        Optional<Instant> at = day(form).flatMap(day -> at(form, day));
        Optional<String> note = form.optional(NOTE, 500);
        return form.ok() ? Optional.of(new CountEntry(0, kind, at.orElseThrow(), tank.tankId(), to.map(Tank::tankId),
                count.fish(), count.method(), count.spread(), place, approval, note, Optional.empty(),
                seen.map(one -> new MovedAs(one, OptionalDouble.empty()))))
                : Optional.empty();
    }

    List<Group> groups(FormInput form) {
        List<List<FormField>> rows = new ArrayList<>();
        rows.add(List.of(form.numberBox(FISH, said("fish"), "")));
        rows.add(TypedCount.boxes(form));
        if (kind == CountKind.MOVED) {
            List<Option> tanks = new ArrayList<>(List.of(new Option("", form.say("count.to.choose"))));
            others.forEach(other -> tanks.add(new Option(other.code(), other.school() + ", " + other.classroom())));
            rows.add(List.of(form.choice(TO, "count.to", tanks)));
            List<Option> stages = new ArrayList<>(List.of(
                    new Option("", form.say("count.stage.asThere", form.say(said(stage))))));
            Stream.of(Stage.values()).forEach(one -> stages.add(new Option(MovedAs.code(one), form.say(said(one)))));
            rows.add(List.of(form.choice(STAGE, "count.stage", stages).withHint(form.say("count.stage.hint"))));
        }
        if (kind == CountKind.RELEASED || kind == CountKind.THINNED) {
            rows.add(List.of(form.textBox(PLACE, said("place")),
                    form.optional(form.textBox(APPROVAL, "count.approval")).withHint(form.say("count.approval.hint"))));
        }
        rows.add(List.of(form.dayBox(DAY, "count.day"),
                form.optional(form.textBox(TIME, "count.time")).withType("time", "off")
                        .withHint(form.say("count.time.hint", tank.zone().getId().replace('_', ' ')))));
        rows.add(List.of(form.optional(form.textBox(NOTE, "count.note.field"))));
        return List.of(new Group(form.say(said("group")), "", form.say(said("caution")), rows));
    }

    private int fish(FormInput form) {
        OptionalInt fish = TypedNumber.whole(form.required(FISH, 20, "count.fish.none"));
        int least = kind.leaves() ? 1 : 0;
        if (fish.isEmpty() || fish.getAsInt() < least || fish.getAsInt() > TypedCount.MOST) {
            form.refuse(FISH, "count.fish.wrong", least);
        }
        return fish.orElse(0);
    }

    private Optional<Tank> to(FormInput form) {
        Optional<Tank> chosen = others.stream().filter(other -> other.code().equals(form.text(TO))).findFirst();
        if (chosen.isEmpty()) {
            form.refuse(TO, "count.to.none");
        }
        return chosen;
    }

    /** Empty where it is left to what the tank had come to on that day. */
    private static Optional<Stage> stage(FormInput form) {
        Optional<Stage> seen = MovedAs.stageOfCode(form.text(STAGE));
        if (seen.isEmpty() && !form.text(STAGE).isEmpty()) {
            form.refuse(STAGE, "count.stage.unknown");
        }
        return seen;
    }

    private Optional<LocalDate> day(FormInput form) {
        if (form.text(DAY).isEmpty()) {
            form.refuse(DAY, "count.day.none");
        }
        Optional<LocalDate> day = form.day(DAY, "count.day.what");
        if (day.isPresent() && !season.details().holds(day.get())) {
            form.refuse(DAY, "count.day.outside", form.date(season.details().startsOn()),
                    form.date(season.details().endsOn()));
        } else if (day.isPresent() && day.get().isAfter(today())) {
            form.refuse(DAY, "count.day.ahead");
        }
        return day;
    }

    /** What was done today without a time was done by now. */
    private Optional<Instant> at(FormInput form, LocalDate day) {
        ZoneId zone = tank.zone();
        LocalTime whereEmpty = day.equals(today()) ? LocalDateTime.ofInstant(now, zone).toLocalTime() : LocalTime.NOON;
        Optional<Instant> at = TypedMoment.of(form, TIME, day, whereEmpty, zone);
        if (at.filter(moment -> moment.isAfter(now)).isPresent()) {
            form.refuse(TIME, "count.time.ahead");
        }
        return at;
    }

    private LocalDate today() {
        return now.atZone(tank.zone()).toLocalDate();
    }

    private static String said(Stage stage) {
        return "count.stage.moved." + MovedAs.code(stage);
    }

    private String said(String key) {
        return "count.kind." + kind.code() + "." + key;
    }
}
