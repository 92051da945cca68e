package org.tankrounds.season;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tankrounds.pages.FormPage.Group;
import org.tankrounds.web.FormInput;

/** A season's form. */
final class SeasonForm {
    static final String NAME = "name";
    static final String STARTS = "starts_on";
    static final String ENDS = "ends_on";
    static final Map<String, String> LABELS = labels();

    private static final int LONGEST_DAYS = 400;
    private static final int FIRST_YEAR = 2000;
    private static final int LAST_YEAR = 2100;

    private SeasonForm() {}

    static Map<String, String> blank() {
        return text("", "", "");
    }

    static Map<String, String> textOf(Season.Details season) {
        return text(season.name(), season.startsOn().toString(), season.endsOn().toString());
    }

    static Optional<Season.Details> parse(FormInput form) {
        String name = form.required(NAME, 60, "Give the season a name, such as 2026-27.");
        Optional<LocalDate> starts = day(form, STARTS, "The first day");
        Optional<LocalDate> ends = day(form, ENDS, "The last day");
        if (starts.isPresent() && ends.isPresent()) {
            if (!ends.get().isAfter(starts.get())) {
                form.refuse(ENDS, "The last day must come after the first, " + starts.get() + ".");
            } else if (ends.get().isAfter(starts.get().plusDays(LONGEST_DAYS))) {
                form.refuse(ENDS, "A season can have up to " + LONGEST_DAYS + " days; this one would end after "
                        + starts.get().plusDays(LONGEST_DAYS) + ".");
            }
        }
        return form.ok()
                ? Optional.of(new Season.Details(name, starts.orElseThrow(), ends.orElseThrow()))
                : Optional.empty();
    }

    static List<Group> groups(FormInput form) {
        return List.of(new Group("The season", "", List.of(
                List.of(form.textBox(NAME, "Name").withHint("Such as 2026-27.")),
                List.of(form.dayBox(STARTS, "First day").withHint("Before the eggs come: filters start earlier."),
                        form.dayBox(ENDS, "Last day").withHint("After the release.")))));
    }

    private static Optional<LocalDate> day(FormInput form, String name, String what) {
        if (form.text(name).isEmpty()) {
            form.refuse(name, what + " is missing; write it such as 2026-10-12.");
        }
        Optional<LocalDate> day = form.day(name, what);
        if (day.isPresent() && (day.get().getYear() < FIRST_YEAR || day.get().getYear() > LAST_YEAR)) {
            form.refuse(name, what + " can be in the years " + FIRST_YEAR + " to " + LAST_YEAR + ".");
        }
        return day;
    }

    private static Map<String, String> text(String name, String starts, String ends) {
        Map<String, String> text = new LinkedHashMap<>();
        text.put(NAME, name);
        text.put(STARTS, starts);
        text.put(ENDS, ends);
        return text;
    }

    private static Map<String, String> labels() {
        Map<String, String> labels = new LinkedHashMap<>();
        labels.put(NAME, "Name");
        labels.put(STARTS, "First day");
        labels.put(ENDS, "Last day");
        return labels;
    }
}
