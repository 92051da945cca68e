package org.tankrounds.season;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.tankrounds.pages.FormPage.Group;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.TypedNumber;
import org.tankrounds.words.Saying;

/** A season's form. */
final class SeasonForm {
    static final String NAME = "name";
    static final String STARTS = "starts_on";
    static final String ENDS = "ends_on";
    static final String RELEASE = "release_on";
    static final String LENGTH = "release_length_mm";
    static final Map<String, Saying> LABELS = labels();

    private static final int LONGEST_DAYS = 400;
    private static final int SHORTEST_MM = 20;
    private static final int LONGEST_MM = 300;
    private static final int FIRST_YEAR = 2000;
    private static final int LAST_YEAR = 2100;

    private SeasonForm() {}

    static Map<String, String> blank() {
        return text("", "", "", "", "");
    }

    static Map<String, String> textOf(Season.Details season) {
        return text(season.name(), season.startsOn().toString(), season.endsOn().toString(),
                season.releaseOn().map(LocalDate::toString).orElse(""),
                season.releaseLengthMm().isPresent() ? Integer.toString(season.releaseLengthMm().getAsInt()) : "");
    }

    static Optional<Season.Details> parse(FormInput form) {
        String name = form.required(NAME, 60, "season.noName");
        Optional<LocalDate> starts = day(form, STARTS, "season.starts.what", "season.starts.none");
        Optional<LocalDate> ends = day(form, ENDS, "season.ends.what", "season.ends.none");
        if (form.ok() && starts.isPresent() && ends.isPresent()) {
            if (!ends.get().isAfter(starts.get())) {
                form.refuse(ENDS, "season.endsFirst", form.date(starts.get()));
            } else if (ends.get().isAfter(starts.get().plusDays(LONGEST_DAYS))) {
                form.refuse(ENDS, "season.tooLong", LONGEST_DAYS, form.date(starts.get().plusDays(LONGEST_DAYS)));
            }
        }
        Optional<LocalDate> release = form.day(RELEASE, "season.release.what");
        if (release.isPresent() && starts.isPresent() && ends.isPresent()
                && (release.get().isBefore(starts.get()) || release.get().isAfter(ends.get()))) {
            form.refuse(RELEASE, "season.release.outside", form.date(starts.get()), form.date(ends.get()));
        }
        OptionalInt length = length(form);
        return form.ok()
                ? Optional.of(new Season.Details(name, starts.orElseThrow(), ends.orElseThrow(), release, length))
                : Optional.empty();
    }

    static List<Group> groups(FormInput form) {
        return List.of(new Group(form.say("season.group"), "", List.of(
                List.of(form.textBox(NAME, "season.name").withHint(form.say("season.name.hint"))),
                List.of(form.dayBox(STARTS, "season.starts").withHint(form.say("season.starts.hint")),
                        form.dayBox(ENDS, "season.ends").withHint(form.say("season.ends.hint"))),
                List.of(form.optional(form.dayBox(RELEASE, "season.release")).withHint(form.say("season.release.hint")),
                        form.optional(form.numberBox(LENGTH, "season.releaseLength", "mm"))
                                .withHint(form.say("season.releaseLength.hint"))))));
    }

    private static OptionalInt length(FormInput form) {
        if (form.text(LENGTH).isEmpty()) {
            return OptionalInt.empty();
        }
        OptionalInt length = TypedNumber.whole(form.text(LENGTH));
        if (length.isEmpty() || length.getAsInt() < SHORTEST_MM || length.getAsInt() > LONGEST_MM) {
            form.refuse(LENGTH, "season.releaseLength.wrong", SHORTEST_MM, LONGEST_MM);
        }
        return length;
    }

    private static Optional<LocalDate> day(FormInput form, String name, String what, String missing) {
        if (form.text(name).isEmpty()) {
            form.refuse(name, missing);
        }
        Optional<LocalDate> day = form.day(name, what);
        if (day.isPresent() && (day.get().getYear() < FIRST_YEAR || day.get().getYear() > LAST_YEAR)) {
            form.refuse(name, "season.wrongYear", Saying.of(what), FIRST_YEAR, LAST_YEAR);
        }
        return day;
    }

    private static Map<String, String> text(String name, String starts, String ends, String release, String length) {
        Map<String, String> text = new LinkedHashMap<>();
        text.put(NAME, name);
        text.put(STARTS, starts);
        text.put(ENDS, ends);
        text.put(RELEASE, release);
        text.put(LENGTH, length);
        return text;
    }

    private static Map<String, Saying> labels() {
        Map<String, Saying> labels = new LinkedHashMap<>();
        labels.put(NAME, Saying.of("season.name"));
        labels.put(STARTS, Saying.of("season.starts"));
        labels.put(ENDS, Saying.of("season.ends"));
        labels.put(RELEASE, Saying.of("season.release"));
        labels.put(LENGTH, Saying.of("season.releaseLength"));
        return labels;
    }
}
