package org.tankrounds.release;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.tankrounds.pages.FormPage.Group;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.TypedNumber;
import org.tankrounds.words.Saying;

/** The form of a chapter's rules for days at the water. */
final class RulesForm {
    private static final String CHILDREN = "children_per_adult";
    private static final String DEEPEST = "deepest_cm";
    private static final String OTHERS = "other_rules";
    static final Map<String, Saying> LABELS = labels();

    private static final int MOST_CHILDREN = 30;
    /** Deeper is no wading for a child, whatever a chapter says. */
    private static final int DEEPEST_CM = 60;

    private RulesForm() {}

    static Map<String, String> textOf(Optional<Rules> rules) {
        Map<String, String> text = new LinkedHashMap<>();
        text.put(CHILDREN, rules.map(known -> Integer.toString(known.childrenPerAdult())).orElse(""));
        text.put(DEEPEST, rules.map(known -> Integer.toString(known.deepestCm())).orElse(""));
        text.put(OTHERS, rules.flatMap(Rules::others).orElse(""));
        return text;
    }

    /** Empty where something cannot be taken; the form says so. */
    static Optional<Rules> parse(FormInput form) {
        int children = whole(form, CHILDREN, 1, MOST_CHILDREN, "release.rules.children.wrong");
        int deepestCm = whole(form, DEEPEST, 0, DEEPEST_CM, "release.rules.deepest.wrong");
        Optional<String> others = form.optional(OTHERS, 500);
        return form.ok() ? Optional.of(new Rules(children, deepestCm, others)) : Optional.empty();
    }

    static List<Group> groups(FormInput form) {
        return List.of(new Group(form.say("release.rules.group"), "", form.say("release.rules.caution"), List.of(
                List.of(form.numberBox(CHILDREN, "release.rules.children", "")
                                .withHint(form.say("release.rules.children.hint")),
                        form.numberBox(DEEPEST, "release.rules.deepest", "cm")
                                .withHint(form.say("release.rules.deepest.hint"))),
                List.of(form.optional(form.textBox(OTHERS, "release.rules.others"))
                        .withHint(form.say("release.rules.others.hint"))))));
    }

    private static int whole(FormInput form, String name, int least, int most, String wrong) {
        OptionalInt number = TypedNumber.whole(form.text(name));
        if (number.isEmpty() || number.getAsInt() < least || number.getAsInt() > most) {
            form.refuse(name, wrong, least, most);
        }
        return number.orElse(0);
    }

    private static Map<String, Saying> labels() {
        Map<String, Saying> labels = new LinkedHashMap<>();
        labels.put(CHILDREN, Saying.of("release.rules.children"));
        labels.put(DEEPEST, Saying.of("release.rules.deepest"));
        labels.put(OTHERS, Saying.of("release.rules.others"));
        return labels;
    }
}
