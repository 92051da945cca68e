package org.tankrounds.breaks;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.tankrounds.pages.FormField;
import org.tankrounds.readings.PersonalText;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Speech;

/** The two forms of a break: its days, and who looks in on each of them. */
final class BreakForm {
    static final String NAME = "name";
    static final String FIRST = "first_day";
    static final String LAST = "last_day";
    /** Who looks in on all days that are left empty. */
    static final String OTHERS = "others";
    static final List<String> DAYS = List.of(NAME, FIRST, LAST);

    private final FormInput form;
    private final Speech speech;

    BreakForm(FormInput form, Speech speech) {
        this.form = form;
        this.speech = speech;
    }

    static Map<String, String> days(Optional<SchoolBreak> suggested) {
        Map<String, String> text = new LinkedHashMap<>();
        text.put(NAME, suggested.map(SchoolBreak::name).orElse(""));
        text.put(FIRST, suggested.map(one -> one.firstDay().toString()).orElse(""));
        text.put(LAST, suggested.map(one -> one.lastDay().toString()).orElse(""));
        return text;
    }

    static Map<String, String> plan(SchoolBreak planned) {
        Map<String, String> text = new LinkedHashMap<>();
        planned.days().forEach(day -> text.put(box(planned, day), planned.looker(day).orElse("")));
        return text;
    }

    static String box(SchoolBreak planned, LocalDate day) {
        return "looker-" + planned.breakId() + "-" + day;
    }

    static String others(SchoolBreak planned) {
        return OTHERS + "-" + planned.breakId();
    }

    List<FormField> boxes() {
        return List.of(form.textBox(NAME, say("name")).withHint(say("name.hint")),
                form.dayBox(FIRST, say("firstDay")).withHint(say("firstDay.hint")),
                form.dayBox(LAST, say("lastDay")).withHint(say("lastDay.hint")));
    }

    FormField looker(SchoolBreak planned, LocalDate day, String label) {
        return form.textBox(box(planned, day), label);
    }

    FormField othersBox(SchoolBreak planned) {
        return form.textBox(others(planned), say("others")).withHint(say("lookerHint"));
    }

    /** Empty where something cannot be taken; then the form says so. */
    Optional<SchoolBreak> readDays(LocalDate today, List<SchoolBreak> before) {
        String name = form.required(NAME, SchoolBreak.LONGEST_TEXT, say("name.missing"));
        Optional<LocalDate> first = day(FIRST, "firstDay");
        Optional<LocalDate> last = day(LAST, "lastDay");
        if (first.isPresent() && last.isPresent()) {
            checkDays(first.get(), last.get(), today, before);
        }
        return form.ok() ? Optional.of(new SchoolBreak(0, name, first.orElseThrow(), last.orElseThrow(), Map.of()))
                : Optional.empty();
    }

    private Optional<LocalDate> day(String name, String what) {
        if (form.text(name).isEmpty()) {
            form.refuse(name, say(what + ".missing"));
        }
        return form.day(name, say(what));
    }

    private void checkDays(LocalDate first, LocalDate last, LocalDate today, List<SchoolBreak> before) {
        if (first.isAfter(today.plusYears(1))) {
            form.refuse(FIRST, say("firstDay.far"));
        } else if (last.isBefore(first)) {
            form.refuse(LAST, say("lastDay.before", first));
        } else if (!last.isBefore(first.plusDays(SchoolBreak.MOST_DAYS))) {
            form.refuse(LAST, say("lastDay.late", SchoolBreak.MOST_DAYS, first.plusDays(SchoolBreak.MOST_DAYS - 1L)));
        } else if (last.isBefore(today)) {
            form.refuse(LAST, say("lastDay.past"));
        }
        before.stream().filter(other -> other.overlaps(first, last)).findFirst().ifPresent(other ->
                form.refuse(FIRST, say("firstDay.taken", other.name(), other.firstDay(), other.lastDay())));
    }

    /** Who looks in by day; what cannot be taken leaves a sentence behind. */
    Map<LocalDate, String> readPlan(SchoolBreak planned, LocalDate today) {
        String others = checked(others(planned));
        Map<LocalDate, String> lookers = new TreeMap<>();
        planned.days().forEach(day -> {
            String typed = checked(box(planned, day));
            String looker = typed.isEmpty() && !day.isBefore(today) ? others : typed;
            if (!looker.isEmpty()) {
                lookers.put(day, looker);
            }
        });
        return lookers;
    }

    private String checked(String name) {
        String text = form.optional(name, SchoolBreak.LONGEST_TEXT).orElse("");
        if (PersonalText.tellsHowToReach(text)) {
            form.refuse(name, say("looker.reach", text));
        }
        return text;
    }

    private String say(String end, Object... with) {
        return speech.say("breaks.form." + end, with);
    }
}
