package org.tankrounds.release;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.tankrounds.pages.FormField;
import org.tankrounds.season.TypedMoment;
import org.tankrounds.stream.StreamGroup;
import org.tankrounds.water.Digits;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Scale;
import org.tankrounds.web.TypedNumber;
import org.tankrounds.words.Saying;

/** The form of a stream check: the water, and a tally of what lives in it. */
final class StreamCheckForm {
    static final String SUBMISSION = "submission_id";
    static final String SCALE = "temperature_scale";
    static final String TEMPERATURE = "temperature";
    private static final String PH = "ph";
    private static final String OXYGEN = "oxygen";
    private static final String DAY = "day";
    private static final String TIME = "time";
    private static final String NOTE = "note";
    private static final String FOUND = "found_";
    static final List<String> NAMES = names();

    private static final double WARMEST_C = 35;
    private static final double MOST_PH = 14;
    private static final double MOST_OXYGEN = 25;
    private static final int MOST_FOUND = 10_000;
    private static final int LONGEST_AGO_YEARS = 20;

    private StreamCheckForm() {}

    static Map<String, String> blank() {
        Map<String, String> text = new LinkedHashMap<>();
        NAMES.forEach(name -> text.put(name, ""));
        return text;
    }

    /** Empty where something cannot be taken; the form says so. */
    static Optional<StreamCheck> parse(FormInput form, int siteId, ZoneId zone, Instant now) {
        OptionalDouble temperatureC = form.celsius(TEMPERATURE, "stream.temperature",
                Scale.ofUnit(form.text(SCALE)), 0, WARMEST_C, Saying.of("stream.temperature.wrong"));
        OptionalDouble ph = form.decimal(PH, "stream.ph", 0, MOST_PH, Saying.of("stream.ph.wrong"));
        OptionalDouble oxygen = form.decimal(OXYGEN, "stream.oxygen", 0, MOST_OXYGEN,
                Saying.of("stream.oxygen.wrong"));
        Map<StreamGroup, Integer> counts = counts(form);
        Optional<Instant> at = at(form, zone, now);
        Optional<String> note = form.optional(NOTE, 500);
        if (form.ok() && temperatureC.isEmpty() && ph.isEmpty() && oxygen.isEmpty() && counts.isEmpty()) {
            form.refuse(TEMPERATURE, "stream.nothing");
        }
        return form.ok() ? Optional.of(new StreamCheck(0, siteId, at.orElseThrow(), kept(temperatureC), kept(ph),
                kept(oxygen), counts, note, Optional.empty())) : Optional.empty();
    }

    static List<FormField> water(FormInput form, Scale scale) {
        return List.of(form.numberBox(TEMPERATURE, "stream.temperature", scale.sign()),
                form.numberBox(PH, "stream.ph", ""), form.numberBox(OXYGEN, "stream.oxygen", "mg/L"));
    }

    static FormField found(FormInput form, StreamGroup group) {
        return form.numberBox(FOUND + group.code(), "stream.group." + group.code(), "");
    }

    static FormField note(FormInput form) {
        return form.optional(form.textBox(NOTE, "stream.note")).withHint(form.say("stream.note.hint"));
    }

    static List<FormField> when(FormInput form) {
        return List.of(form.optional(form.dayBox(DAY, "stream.day")),
                form.optional(form.textBox(TIME, "stream.time")).withType("time", "off")
                        .withHint(form.say("stream.time.hint")));
    }

    /** With as many digits as are stored, so that the same form again says the same. */
    private static OptionalDouble kept(OptionalDouble number) {
        return number.isPresent() ? OptionalDouble.of(Digits.kept(number.getAsDouble())) : number;
    }

    private static Map<StreamGroup, Integer> counts(FormInput form) {
        Map<StreamGroup, Integer> counts = new EnumMap<>(StreamGroup.class);
        for (StreamGroup group : StreamGroup.values()) {
            String text = form.text(FOUND + group.code());
            OptionalInt found = text.isEmpty() ? OptionalInt.of(0) : TypedNumber.whole(text);
            if (found.isEmpty() || found.getAsInt() > MOST_FOUND) {
                form.refuse(FOUND + group.code(), "stream.found.wrong");
            } else if (found.getAsInt() > 0) {
                counts.put(group, found.getAsInt());
            }
        }
        return counts;
    }

    private static Optional<Instant> at(FormInput form, ZoneId zone, Instant now) {
        LocalDate today = now.atZone(zone).toLocalDate();
        Optional<LocalDate> typed = form.day(DAY, "stream.day");
        if (form.wrong(DAY)) {
            return Optional.empty();
        }
        LocalDate day = typed.orElse(today);
        if (day.isBefore(today.minusYears(LONGEST_AGO_YEARS))) {
            form.refuse(DAY, "stream.day.far", LONGEST_AGO_YEARS);
            return Optional.empty();
        }
        if (day.equals(today) && form.text(TIME).isEmpty()) {
            return Optional.of(now);
        }
        Optional<Instant> at = TypedMoment.of(form, TIME, day, LocalTime.NOON, zone);
        if (at.filter(moment -> moment.isAfter(now)).isPresent()) {
            form.refuse(day.isAfter(today) ? DAY : TIME, "stream.day.ahead");
        }
        return at;
    }

    private static List<String> names() {
        List<String> names = new ArrayList<>(List.of(TEMPERATURE, PH, OXYGEN, DAY, TIME, NOTE, SCALE));
        for (StreamGroup group : StreamGroup.values()) {
            names.add(FOUND + group.code());
        }
        return List.copyOf(names);
    }
}
