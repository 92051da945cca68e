package org.tankrounds.places;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.FormField.Option;
import org.tankrounds.pages.FormPage.Group;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.TypedNumber;
import org.tankrounds.words.Saying;

/** A kit's form: for each card what its numbers count, and the numbers themselves, typed in a row. */
final class KitForm {
    static final String NAME = "name";
    static final List<Analyte> CARDS = List.of(Analyte.PH, Analyte.TOTAL_AMMONIA, Analyte.NITRITE, Analyte.NITRATE,
            Analyte.DISSOLVED_OXYGEN, Analyte.ALKALINITY, Analyte.HARDNESS, Analyte.CHLORIDE, Analyte.CHLORINE);
    static final Map<String, Saying> LABELS = labels();

    private static final int FEWEST_STEPS = 2;
    private static final int MOST_STEPS = 30;

    private KitForm() {}

    static Map<String, String> textOf(Kit kit) {
        Map<String, String> text = new LinkedHashMap<>();
        text.put(NAME, kit.name());
        for (Analyte analyte : CARDS) {
            Optional<KitScale> scale = kit.scale(analyte);
            text.put(steps(analyte), scale.map(KitForm::stepsText).orElse(""));
            if (hasChoice(analyte)) {
                text.put(form(analyte), scale.map(KitScale::form).orElse(analyte.canonical()).spelling());
            }
        }
        return text;
    }

    static Optional<Kit> parse(FormInput form, int kitId) {
        String name = form.required(NAME, 80, "places.kit.noName");
        List<KitScale> scales = new ArrayList<>();
        for (Analyte analyte : CARDS) {
            if (!form.text(steps(analyte)).isEmpty()) {
                scale(form, analyte).ifPresent(scales::add);
            }
        }
        if (form.ok() && scales.isEmpty()) {
            form.refuse(steps(Analyte.PH), "places.kit.noSteps");
        }
        return form.ok() ? Optional.of(new Kit(kitId, name, scales)) : Optional.empty();
    }

    static List<Group> groups(FormInput form) {
        List<Group> groups = new ArrayList<>();
        groups.add(new Group(form.say("places.kit.group"), form.say("places.kit.how"),
                List.of(List.of(form.textBox(NAME, "places.kit.name").withHint(form.say("places.kit.name.hint"))))));
        for (Analyte analyte : CARDS) {
            groups.add(new Group(form.say(CardNames.of(analyte)), "", List.of(row(form, analyte))));
        }
        return groups;
    }

    static String stepsText(KitScale scale) {
        return scale.steps().stream().map(step -> TypedNumber.text(step, 4)).collect(Collectors.joining(", "));
    }

    private static List<FormField> row(FormInput form, Analyte analyte) {
        FormField steps = form.textBox(steps(analyte), LABELS.get(steps(analyte)));
        if (!hasChoice(analyte)) {
            return List.of(steps);
        }
        List<Option> options = analyte.accepted().stream()
                .map(accepted -> new Option(accepted.spelling(), form.say(CardNames.counts(accepted))))
                .toList();
        return List.of(steps, form.choice(form(analyte), LABELS.get(form(analyte)), options));
    }

    private static Optional<KitScale> scale(FormInput form, Analyte analyte) {
        UnitForm counts = hasChoice(analyte) ? UnitForm.parse(form.text(form(analyte))) : analyte.canonical();
        if (!analyte.accepts(counts)) {
            form.refuse(form(analyte), "places.kit.noCounts");
            return Optional.empty();
        }
        List<Double> steps = new ArrayList<>();
        for (String step : apart(form.text(steps(analyte)))) {
            OptionalDouble number = TypedNumber.decimal(step);
            if (number.isEmpty()) {
                form.refuse(steps(analyte), "places.kit.notANumber", CardNames.of(analyte), step);
                return Optional.empty();
            }
            steps.add(number.getAsDouble());
        }
        return checked(form, analyte, counts, steps);
    }

    /** Where there is a semicolon, commas are decimal ones. */
    private static String[] apart(String steps) {
        return steps.split(steps.contains(";") ? "\\s*;\\s*" : "\\s*,\\s*|\\s+");
    }

    private static boolean hasChoice(Analyte analyte) {
        return analyte.accepted().size() > 1;
    }

    private static Optional<KitScale> checked(
            FormInput form, Analyte analyte, UnitForm counts, List<Double> steps) {
        boolean ascending = true;
        for (int i = 1; i < steps.size(); i++) {
            ascending &= steps.get(i) > steps.get(i - 1);
        }
        if (steps.size() < FEWEST_STEPS || steps.size() > MOST_STEPS) {
            form.refuse(steps(analyte), "places.kit.stepCount", CardNames.of(analyte));
        } else if (!ascending) {
            form.refuse(steps(analyte), "places.kit.notRising", CardNames.of(analyte));
        } else if (!analyte.possible().holds(steps.get(0)) || !analyte.possible().holds(steps.get(steps.size() - 1))) {
            form.refuse(steps(analyte), "places.kit.impossible", CardNames.of(analyte),
                    TypedNumber.text(analyte.possible().min(), 0), TypedNumber.text(analyte.possible().max(), 0));
        } else {
            return Optional.of(new KitScale(analyte, counts, steps));
        }
        return Optional.empty();
    }

    private static String steps(Analyte analyte) {
        return analyte.code() + "_steps";
    }

    private static String form(Analyte analyte) {
        return analyte.code() + "_counts";
    }

    private static Map<String, Saying> labels() {
        Map<String, Saying> labels = new LinkedHashMap<>();
        labels.put(NAME, Saying.of("places.kit.name"));
        for (Analyte analyte : CARDS) {
            labels.put(steps(analyte), Saying.of("places.kit.stepsOf", CardNames.of(analyte)));
            if (hasChoice(analyte)) {
                labels.put(form(analyte), Saying.of("places.kit.countsOf", CardNames.of(analyte)));
            }
        }
        return labels;
    }
}
