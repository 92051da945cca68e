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

/** A kit's form: for each card what its numbers count, and the numbers themselves, typed in a row. */
final class KitForm {
    static final String NAME = "name";
    static final List<Analyte> CARDS = List.of(Analyte.PH, Analyte.TOTAL_AMMONIA, Analyte.NITRITE, Analyte.NITRATE,
            Analyte.DISSOLVED_OXYGEN, Analyte.ALKALINITY, Analyte.HARDNESS, Analyte.CHLORIDE, Analyte.CHLORINE);
    static final Map<String, String> LABELS = labels();

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
        String name = form.required(NAME, 80, "Give the kit a name of your own, such as Box B.");
        List<KitScale> scales = new ArrayList<>();
        for (Analyte analyte : CARDS) {
            if (!form.text(steps(analyte)).isEmpty()) {
                scale(form, analyte).ifPresent(scales::add);
            }
        }
        if (form.ok() && scales.isEmpty()) {
            form.refuse(steps(Analyte.PH), "Type in the steps of at least one card.");
        }
        return form.ok() ? Optional.of(new Kit(kitId, name, scales)) : Optional.empty();
    }

    static List<Group> groups(FormInput form) {
        List<Group> groups = new ArrayList<>();
        groups.add(new Group("The kit", "The classes press these steps when they put a reading in. Copy the numbers "
                + "from your cards, lowest first; the first step counts as \"below half the second\".",
                List.of(List.of(form.textBox(NAME, "Name").withHint("The chapter's own name for it.")))));
        for (Analyte analyte : CARDS) {
            groups.add(new Group(CardNames.of(analyte), "", List.of(row(form, analyte))));
        }
        return groups;
    }

    static String stepsText(KitScale scale) {
        return scale.steps().stream().map(step -> TypedNumber.text(step, 4)).collect(Collectors.joining(", "));
    }

    private static List<FormField> row(FormInput form, Analyte analyte) {
        String card = CardNames.of(analyte);
        FormField steps = form.textBox(steps(analyte), card + ": steps on the card");
        if (!hasChoice(analyte)) {
            return List.of(steps);
        }
        List<Option> options = analyte.accepted().stream()
                .map(accepted -> new Option(accepted.spelling(), CardNames.words(accepted)))
                .toList();
        return List.of(steps, form.choice(form(analyte), card + ": what they count", options));
    }

    private static Optional<KitScale> scale(FormInput form, Analyte analyte) {
        UnitForm counts = hasChoice(analyte) ? UnitForm.parse(form.text(form(analyte))) : analyte.canonical();
        if (!analyte.accepts(counts)) {
            form.refuse(form(analyte), "Choose what the numbers count: " + analyte.acceptedSpelling() + ".");
            return Optional.empty();
        }
        List<Double> steps = new ArrayList<>();
        for (String step : apart(form.text(steps(analyte)))) {
            OptionalDouble number = TypedNumber.decimal(step);
            if (number.isEmpty()) {
                refuseSteps(form, analyte, "\"" + step + "\" is not a number");
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
            refuseSteps(form, analyte, "A card has from 2 to 30 steps");
        } else if (!ascending) {
            refuseSteps(form, analyte, "The steps must rise from each to the next");
        } else if (!analyte.possible().holds(steps.get(0)) || !analyte.possible().holds(steps.get(steps.size() - 1))) {
            refuseSteps(form, analyte, "The steps can be from " + TypedNumber.text(analyte.possible().min(), 0)
                    + " to " + TypedNumber.text(analyte.possible().max(), 0));
        } else {
            return Optional.of(new KitScale(analyte, counts, steps));
        }
        return Optional.empty();
    }

    private static void refuseSteps(FormInput form, Analyte analyte, String what) {
        form.refuse(steps(analyte), CardNames.of(analyte) + ": " + what + "; write them like 0, 0.2, 0.5, 1.");
    }

    private static String steps(Analyte analyte) {
        return analyte.code() + "_steps";
    }

    private static String form(Analyte analyte) {
        return analyte.code() + "_counts";
    }

    private static Map<String, String> labels() {
        Map<String, String> labels = new LinkedHashMap<>();
        labels.put(NAME, "Name");
        for (Analyte analyte : CARDS) {
            labels.put(steps(analyte), CardNames.of(analyte) + ": steps");
            if (hasChoice(analyte)) {
                labels.put(form(analyte), CardNames.of(analyte) + ": what they count");
            }
        }
        return labels;
    }
}
