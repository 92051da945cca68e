package org.tankrounds.release;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.tankrounds.pages.FormField.Option;
import org.tankrounds.pages.FormPage.Group;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.TypedNumber;
import org.tankrounds.words.Saying;

/** The form of an approval: what stands on the agency's paper. */
final class ApprovalForm {
    static final String NUMBER = "number";
    private static final String AGENCY = "agency";
    private static final String SPECIES = "species";
    private static final String FIRST = "first_day";
    private static final String LAST = "last_day";
    private static final String MOST = "most_fish";
    private static final String EXPIRES = "expires_on";
    private static final String NOTE = "note";
    static final Map<String, Saying> LABELS = labels();

    private static final int MOST_FISH = 100_000;
    private static final int LONGEST_DAYS = 730;
    private static final LocalDate EARLIEST = LocalDate.of(2000, 1, 1);
    private static final LocalDate LATEST = LocalDate.of(2199, 12, 31);

    private ApprovalForm() {}

    static Map<String, String> blank() {
        Map<String, String> text = new LinkedHashMap<>();
        LABELS.keySet().forEach(name -> text.put(name, ""));
        text.put(SPECIES, Species.RAINBOW_TROUT.code());
        return text;
    }

    static Map<String, String> textOf(Approval.Details approval) {
        Map<String, String> text = blank();
        text.put(NUMBER, approval.number());
        text.put(AGENCY, approval.agency());
        text.put(SPECIES, approval.species().code());
        text.put(FIRST, approval.firstDay().toString());
        text.put(LAST, approval.lastDay().toString());
        text.put(MOST, Integer.toString(approval.mostFish()));
        text.put(EXPIRES, approval.expiresOn().map(LocalDate::toString).orElse(""));
        text.put(NOTE, approval.note().orElse(""));
        return text;
    }

    /** Empty where something cannot be taken; the form says so. */
    static Optional<Approval.Details> parse(FormInput form) {
        String number = form.required(NUMBER, 80, "release.approval.number.none");
        String agency = form.required(AGENCY, 120, "release.approval.agency.none");
        Optional<Species> species = Species.ofCode(form.text(SPECIES));
        if (species.isEmpty()) {
            form.refuse(SPECIES, "release.approval.species.none");
        }
        Optional<LocalDate> first = day(form, FIRST, "release.approval.firstDay", true);
        Optional<LocalDate> last = day(form, LAST, "release.approval.lastDay", true);
        if (first.isPresent() && last.isPresent()) {
            checkDays(form, first.get(), last.get());
        }
        int mostFish = mostFish(form);
        Optional<LocalDate> expiresOn = day(form, EXPIRES, "release.approval.expires", false);
        if (first.isPresent() && expiresOn.filter(first.get()::isAfter).isPresent()) {
            form.refuse(EXPIRES, "release.approval.expires.before", form.date(first.get()));
        }
        Optional<String> note = form.optional(NOTE, 500);
        return form.ok() ? Optional.of(new Approval.Details(number, agency, species.orElseThrow(), first.orElseThrow(),
                last.orElseThrow(), mostFish, expiresOn, note)) : Optional.empty();
    }

    static List<Group> groups(FormInput form) {
        List<Option> species = Arrays.stream(Species.values()).map(one ->
                new Option(one.code(), form.say("release.species." + one.code()))).toList();
        return List.of(
                new Group(form.say("release.approval.group"), "", form.say("release.approval.caution"), List.of(
                        List.of(form.textBox(NUMBER, "release.approval.number")
                                        .withHint(form.say("release.approval.number.hint")),
                                form.textBox(AGENCY, "release.approval.agency")
                                        .withHint(form.say("release.approval.agency.hint"))),
                        List.of(form.optional(form.textBox(NOTE, "release.approval.note"))
                                .withHint(form.say("release.approval.note.hint"))))),
                new Group(form.say("release.approval.what"), "", List.of(
                        List.of(form.choice(SPECIES, "release.approval.species", species),
                                form.numberBox(MOST, "release.approval.mostFish", "")
                                        .withHint(form.say("release.approval.mostFish.hint"))),
                        List.of(form.dayBox(FIRST, "release.approval.firstDay"),
                                form.dayBox(LAST, "release.approval.lastDay")),
                        List.of(form.optional(form.dayBox(EXPIRES, "release.approval.expires"))
                                .withHint(form.say("release.approval.expires.hint"))))));
    }

    private static Optional<LocalDate> day(FormInput form, String name, String what, boolean needed) {
        if (needed && form.text(name).isEmpty()) {
            form.refuse(name, "release.approval.day.none", Saying.of(what));
        }
        Optional<LocalDate> day = form.day(name, what);
        if (day.filter(one -> one.isBefore(EARLIEST) || one.isAfter(LATEST)).isPresent()) {
            form.refuse(name, "release.approval.day.year", EARLIEST.getYear(), LATEST.getYear());
            return Optional.empty();
        }
        return day;
    }

    private static void checkDays(FormInput form, LocalDate first, LocalDate last) {
        if (last.isBefore(first)) {
            form.refuse(LAST, "release.approval.lastDay.before", form.date(first));
        } else if (ChronoUnit.DAYS.between(first, last) > LONGEST_DAYS) {
            form.refuse(LAST, "release.approval.lastDay.far");
        }
    }

    private static int mostFish(FormInput form) {
        OptionalInt fish = TypedNumber.whole(form.required(MOST, 20, "release.approval.mostFish.none"));
        if (fish.isEmpty() || fish.getAsInt() < 1 || fish.getAsInt() > MOST_FISH) {
            form.refuse(MOST, "release.approval.mostFish.wrong");
        }
        return fish.orElse(0);
    }

    private static Map<String, Saying> labels() {
        Map<String, Saying> labels = new LinkedHashMap<>();
        labels.put(NUMBER, Saying.of("release.approval.number"));
        labels.put(AGENCY, Saying.of("release.approval.agency"));
        labels.put(SPECIES, Saying.of("release.approval.species"));
        labels.put(FIRST, Saying.of("release.approval.firstDay"));
        labels.put(LAST, Saying.of("release.approval.lastDay"));
        labels.put(MOST, Saying.of("release.approval.mostFish"));
        labels.put(EXPIRES, Saying.of("release.approval.expires"));
        labels.put(NOTE, Saying.of("release.approval.note"));
        return labels;
    }
}
