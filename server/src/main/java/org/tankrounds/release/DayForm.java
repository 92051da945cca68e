package org.tankrounds.release;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.UUID;
import org.tankrounds.fish.LengthWeight;
import org.tankrounds.pages.FormField;
import org.tankrounds.places.Tank;
import org.tankrounds.season.CountEntry;
import org.tankrounds.season.CountKind;
import org.tankrounds.season.CountMethod;
import org.tankrounds.season.Season;
import org.tankrounds.season.TypedCount;
import org.tankrounds.season.TypedMoment;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Scale;
import org.tankrounds.web.TypedNumber;
import org.tankrounds.words.Saying;

/** The form that is filled in at the water, on a phone: what was released of one tank, and what was seen. */
final class DayForm {
    static final String SUBMISSION = "submission_id";
    /** Answer to the questions whether these are other fish, and of that day; with what was named in them. */
    static final String ASKED = "asked_entries";
    static final String SCALE = "temperature_scale";
    static final String FISH = "fish";
    static final String DAY = "day";
    private static final String TIME = "time";
    private static final String BOX = "box_temperature";
    private static final String STREAM = "stream_temperature";
    private static final String TEMPERED = "tempered_minutes";
    private static final String LENGTHS = "lengths";
    private static final String KEPT = "kept_";
    private static final String NOTE = "note";
    static final List<String> NAMES = names();

    private static final int MOST_FISH = 100_000;
    private static final int LONGEST_TEMPERING = 24 * 60;
    private static final int MOST_LENGTHS = 200;
    private static final double WARMEST_C = 35;
    /** A comma between digits may be a decimal one. */
    private static final String BETWEEN_LENGTHS = "[\\s;]+|,(?!\\d)\\s*";
    /** "44,47" are two lengths to some, and one to others. */
    private static final String TWO_OR_ONE = "\\d+,\\d{2,}";

    /** What is written down: into the count, and beside it. */
    record Typed(CountEntry entry, ReleaseDay day) {}

    private final ReleasePlan plan;
    private final Site site;
    private final Approval approval;
    private final Season season;
    private final Tank tank;
    private final Instant now;

    /** @param now when the form was filled in, by the service's clock */
    DayForm(ReleasePlan plan, Site site, Approval approval, Season season, Tank tank, Instant now) {
        this.plan = plan;
        this.site = site;
        this.approval = approval;
        this.season = season;
        this.tank = tank;
        this.now = now;
    }

    static Map<String, String> blank() {
        Map<String, String> text = new LinkedHashMap<>();
        NAMES.forEach(name -> text.put(name, ""));
        text.put(TypedCount.METHOD, CountMethod.ONE_BY_ONE.code());
        return text;
    }

    /** Empty where something cannot be taken; the form says so. */
    Optional<Typed> parse(FormInput form, UUID submission) {
        TypedCount count = TypedCount.of(form, fish(form));
        Optional<Instant> at = at(form);
        OptionalDouble boxC = celsius(form, BOX, "release.day.box");
        OptionalDouble streamC = celsius(form, STREAM, "release.day.stream");
        OptionalInt tempered = minutes(form);
        List<Double> lengths = lengths(form);
        Map<KeptBack, Integer> kept = kept(form);
        Optional<String> note = form.optional(NOTE, 500);
        if (kept.containsKey(KeptBack.REASON) && note.isEmpty()) {
            form.refuse(NOTE, "release.day.note.why");
        }
        if (!form.ok()) {
            return Optional.empty();
        }
        CountEntry entry = new CountEntry(0, CountKind.RELEASED, at.orElseThrow(), tank.tankId(), Optional.empty(),
                count.fish(), count.method(), count.spread(), Optional.of(site.name()), Optional.of(approval.number()),
                note, Optional.empty());
        return Optional.of(new Typed(entry, new ReleaseDay(plan.planId(), tank.tankId(), submission, entry.at(), boxC,
                streamC, tempered, lengths, kept, note)));
    }

    static List<FormField> counts(FormInput form) {
        List<FormField> fields = new ArrayList<>();
        fields.add(form.numberBox(FISH, "release.day.fish", ""));
        fields.addAll(TypedCount.boxes(form));
        return fields;
    }

    static List<FormField> water(FormInput form, Scale scale) {
        return List.of(form.numberBox(BOX, "release.day.box", scale.sign()),
                form.numberBox(STREAM, "release.day.stream", scale.sign()),
                form.numberBox(TEMPERED, "release.day.tempered", "min"));
    }

    static List<FormField> kept(FormInput form, String unit) {
        List<FormField> fields = new ArrayList<>();
        for (KeptBack why : KeptBack.values()) {
            fields.add(form.numberBox(KEPT + why.code(), "release.kept." + why.code(), unit));
        }
        return fields;
    }

    /** The box to look at first where too many were kept back. */
    static String mostKept(Map<KeptBack, Integer> kept) {
        return kept.entrySet().stream().max(Map.Entry.comparingByValue()).map(most -> KEPT + most.getKey().code())
                .orElse(FISH);
    }

    static FormField lengthsBox(FormInput form) {
        return form.textBox(LENGTHS, "release.day.lengths").withHint(form.say("release.day.lengths.hint"));
    }

    static FormField noteBox(FormInput form) {
        return form.optional(form.textBox(NOTE, "release.day.note"));
    }

    static List<FormField> when(FormInput form) {
        return List.of(form.optional(form.dayBox(DAY, "release.day.day")),
                form.optional(form.textBox(TIME, "release.day.time")).withType("time", "off")
                        .withHint(form.say("release.day.time.hint")));
    }

    private static int fish(FormInput form) {
        OptionalInt fish = TypedNumber.whole(form.text(FISH));
        if (fish.isEmpty() || fish.getAsInt() < 1 || fish.getAsInt() > MOST_FISH) {
            form.refuse(FISH, "release.day.fish.wrong");
        }
        return fish.orElse(0);
    }

    /** Without a day and a time it is when the form was filled in. */
    private Optional<Instant> at(FormInput form) {
        LocalDate today = now.atZone(tank.zone()).toLocalDate();
        Optional<LocalDate> typed = form.day(DAY, "release.day.day");
        if (form.wrong(DAY)) {
            return Optional.empty();
        }
        LocalDate day = typed.orElse(today);
        if (!season.details().holds(day)) {
            form.refuse(DAY, "release.day.outside", form.date(season.details().startsOn()),
                    form.date(season.details().endsOn()));
            return Optional.empty();
        }
        if (day.equals(today) && form.text(TIME).isEmpty()) {
            return Optional.of(now);
        }
        Optional<Instant> at = TypedMoment.of(form, TIME, day, LocalTime.NOON, tank.zone());
        if (at.filter(moment -> moment.isAfter(now)).isPresent()) {
            form.refuse(day.isAfter(today) ? DAY : TIME, "release.day.ahead");
        }
        return at;
    }

    private static OptionalDouble celsius(FormInput form, String name, String what) {
        return form.celsius(name, what, Scale.ofUnit(form.text(SCALE)), 0, WARMEST_C,
                Saying.of("release.day.temperature.wrong", Saying.of(what)));
    }

    private static OptionalInt minutes(FormInput form) {
        if (form.text(TEMPERED).isEmpty()) {
            return OptionalInt.empty();
        }
        OptionalInt minutes = TypedNumber.whole(form.text(TEMPERED));
        if (minutes.isEmpty() || minutes.getAsInt() > LONGEST_TEMPERING) {
            form.refuse(TEMPERED, "release.day.tempered.wrong");
        }
        return minutes;
    }

    private static List<Double> lengths(FormInput form) {
        List<Double> lengths = new ArrayList<>();
        for (String one : form.text(LENGTHS).split(BETWEEN_LENGTHS)) {
            OptionalDouble length = one.matches(TWO_OR_ONE) ? OptionalDouble.empty() : TypedNumber.decimal(one);
            if (length.isPresent() && LengthWeight.LENGTH_MM.holds(length.getAsDouble())) {
                lengths.add(length.getAsDouble());
            } else if (!one.isEmpty()) {
                form.refuse(LENGTHS, "release.day.lengths.wrong", one);
            }
        }
        if (lengths.size() > MOST_LENGTHS) {
            form.refuse(LENGTHS, "release.day.lengths.many", MOST_LENGTHS);
        }
        return lengths;
    }

    private static Map<KeptBack, Integer> kept(FormInput form) {
        Map<KeptBack, Integer> kept = new EnumMap<>(KeptBack.class);
        for (KeptBack why : KeptBack.values()) {
            String text = form.text(KEPT + why.code());
            OptionalInt fish = text.isEmpty() ? OptionalInt.of(0) : TypedNumber.whole(text);
            if (fish.isEmpty() || fish.getAsInt() > MOST_FISH) {
                form.refuse(KEPT + why.code(), "release.kept.wrong");
            } else if (fish.getAsInt() > 0) {
                kept.put(why, fish.getAsInt());
            }
        }
        return kept;
    }

    private static List<String> names() {
        List<String> names = new ArrayList<>(List.of(FISH, TypedCount.METHOD, TypedCount.SPREAD, DAY, TIME, BOX, STREAM,
                TEMPERED, LENGTHS, NOTE, SCALE));
        for (KeptBack why : KeptBack.values()) {
            names.add(KEPT + why.code());
        }
        return List.copyOf(names);
    }
}
