package org.tankrounds.breaks;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.tankrounds.pages.AskBack;
import org.tankrounds.pages.FormField;
import org.tankrounds.readings.PersonalText;
import org.tankrounds.web.FormInput;
import org.tankrounds.words.Saying;

/** The two forms of a break: its days, and who looks in on each of them. */
final class BreakForm {
    static final String NAME = "name";
    static final String FIRST = "first_day";
    static final String LAST = "last_day";
    /** Who looks in on all days that are left empty. */
    private static final String OTHERS = "others";
    /** Answer to the question about names, with the names asked about. */
    static final String SURE = "sure_lookers";
    static final List<String> DAYS = List.of(NAME, FIRST, LAST);

    private final FormInput form;

    BreakForm(FormInput form) {
        this.form = form;
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
        return List.of(form.textBox(NAME, "breaks.form.name").withHint(form.say("breaks.form.name.hint")),
                form.dayBox(FIRST, "breaks.form.firstDay").withHint(form.say("breaks.form.firstDay.hint")),
                form.dayBox(LAST, "breaks.form.lastDay").withHint(form.say("breaks.form.lastDay.hint")));
    }

    FormField looker(SchoolBreak planned, LocalDate day, String label) {
        return form.textBox(box(planned, day), Saying.asIs(label));
    }

    FormField othersBox(SchoolBreak planned) {
        return form.textBox(others(planned), "breaks.form.others").withHint(form.say("breaks.form.lookerHint"));
    }

    /** Empty where something cannot be taken; then the form says so. */
    Optional<SchoolBreak> readDays(LocalDate today, List<SchoolBreak> before, BreakWording wording) {
        String name = form.required(NAME, SchoolBreak.LONGEST_TEXT, "breaks.form.name.missing");
        Optional<LocalDate> first = day(FIRST, "breaks.form.firstDay", "breaks.form.firstDay.missing");
        Optional<LocalDate> last = day(LAST, "breaks.form.lastDay", "breaks.form.lastDay.missing");
        if (first.isPresent() && last.isPresent()) {
            checkDays(first.get(), last.get(), today, wording);
            checkOthers(first.get(), last.get(), before, wording);
        }
        return form.ok() ? Optional.of(new SchoolBreak(0, name, first.orElseThrow(), last.orElseThrow(), Map.of()))
                : Optional.empty();
    }

    private Optional<LocalDate> day(String name, String what, String missing) {
        if (form.text(name).isEmpty()) {
            form.refuse(name, missing);
        }
        return form.day(name, what);
    }

    private void checkDays(LocalDate first, LocalDate last, LocalDate today, BreakWording wording) {
        if (first.isAfter(today.plusYears(1))) {
            form.refuse(FIRST, "breaks.form.firstDay.far");
        } else if (last.isBefore(first)) {
            form.refuse(LAST, "breaks.form.lastDay.before", wording.day(first));
        } else if (!last.isBefore(first.plusDays(SchoolBreak.MOST_DAYS))) {
            form.refuse(LAST, "breaks.form.lastDay.late",
                    SchoolBreak.MOST_DAYS, wording.day(first.plusDays(SchoolBreak.MOST_DAYS - 1L)));
        } else if (last.isBefore(today)) {
            form.refuse(LAST, "breaks.form.lastDay.past");
        }
    }

    private void checkOthers(LocalDate first, LocalDate last, List<SchoolBreak> before, BreakWording wording) {
        before.stream().filter(other -> other.overlaps(first, last)).findFirst().ifPresent(other -> form.refuse(FIRST,
                "breaks.form.firstDay.taken", other.name(), wording.day(other.firstDay()),
                wording.day(other.lastDay())));
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

    /** What looks like somebody's name, unless it stands in the plan already or the writer said that it stays. */
    Optional<AskBack> askOfNames(SchoolBreak current, Map<LocalDate, String> lookers) {
        Set<String> names = names(lookers);
        names.removeAll(names(current.lookers()));
        String yes = "yes " + String.join(", ", names);
        return names.isEmpty() || form.text(SURE).equals(yes) ? Optional.empty()
                : Optional.of(new AskBack(SURE, form.say("breaks.asks.names", String.join(", ", names)),
                        List.of(new AskBack.Choice(SURE + "-yes", yes, form.say("breaks.asks.keep")))));
    }

    private static Set<String> names(Map<LocalDate, String> lookers) {
        return lookers.values().stream().flatMap(looker -> PersonalText.namesOfWho(looker).stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private String checked(String name) {
        String text = form.optional(name, SchoolBreak.LONGEST_TEXT).orElse("");
        if (PersonalText.tellsHowToReach(text)) {
            form.refuse(name, "breaks.form.looker.reach", text);
        }
        return text;
    }
}
