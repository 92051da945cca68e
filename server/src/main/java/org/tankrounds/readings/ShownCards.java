package org.tankrounds.readings;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tankrounds.pages.LogPage.Hidden;
import org.tankrounds.places.Kit;
import org.tankrounds.places.KitScale;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;
import org.tankrounds.words.Saying;

/**
 * What the cards of a form counted when it was shown, as the form itself carries it: {@code nitrite:mg/L as NO2:0 0.1
 * 0.3;ph:…}. A kit may be edited or renamed before a form comes back, perhaps from a device that was without Wi-Fi for
 * weeks; its numbers still mean what stood beside them.
 */
final class ShownCards {
    static final String FIELD = "shown_cards";
    private static final int LONGEST = 6000;
    private static final int MOST_STEPS = 30;
    private static final Pattern STEP = Pattern.compile("\\d{1,7}(\\.\\d{1,6})?");

    private ShownCards() {}

    static String text(Kit kit) {
        return kit.scales().stream().map(ShownCards::text).collect(Collectors.joining(";"));
    }

    private static String text(KitScale scale) {
        String steps = scale.steps().stream().map(step -> BigDecimal.valueOf(step).stripTrailingZeros().toPlainString())
                .collect(Collectors.joining(" "));
        return scale.analyte().code() + ":" + scale.form().spelling() + ":" + steps;
    }

    /** The hidden fields of a form, and what its cards count. */
    static List<Hidden> beside(List<Hidden> kept, Kit kit) {
        return Stream.concat(kept.stream(), Stream.of(new Hidden(FIELD, text(kit)))).toList();
    }

    /** @param text null or blank where the form came from before forms said it */
    static boolean isReadable(String text) {
        return text == null || text.isBlank() || read(text).isPresent();
    }

    /**
     * Of a form whose kit is not known: one from before forms carried their cards says no more of them than its name.
     */
    static void check(LogForm form, GivenReading given, Faults faults) {
        boolean byCards = given.values().stream().anyMatch(value -> hasCard(value.analyte()));
        if (byCards && form.text(FIELD).isBlank() && !form.text(LogForm.KIT).isBlank()) {
            faults.add(LogForm.WHOLE, Saying.of("log.unknownKit", form.text(LogForm.KIT).strip()));
        }
    }

    /** The kit with its cards as they were shown; as it is now where that is not told. */
    static Kit in(Kit kit, String text) {
        return Optional.ofNullable(text).flatMap(ShownCards::read)
                .map(scales -> new Kit(kit.kitId(), kit.name(), scales)).orElse(kit);
    }

    private static Optional<List<KitScale>> read(String text) {
        if (text.isBlank() || text.length() > LONGEST) {
            return Optional.empty();
        }
        List<KitScale> scales = new ArrayList<>();
        for (String card : text.strip().split(";", -1)) {
            Optional<KitScale> scale = card(card.split(":", 3));
            if (scale.isEmpty()) {
                return Optional.empty();
            }
            scales.add(scale.get());
        }
        return Optional.of(scales);
    }

    private static Optional<KitScale> card(String[] parts) {
        Optional<Analyte> analyte = Analyte.ofCode(parts[0]).filter(ShownCards::hasCard);
        if (parts.length < 3 || analyte.isEmpty()) {
            return Optional.empty();
        }
        UnitForm form = UnitForm.parse(parts[1]);
        List<String> steps = List.of(parts[2].split(" "));
        boolean sound = analyte.get().accepts(form) && steps.size() > 1 && steps.size() <= MOST_STEPS
                && steps.stream().allMatch(step -> STEP.matcher(step).matches());
        return sound ? rising(new KitScale(analyte.get(), form, steps.stream().map(Double::valueOf).toList()))
                : Optional.empty();
    }

    private static boolean hasCard(Analyte analyte) {
        return analyte == Analyte.PH || analyte.isDissolved();
    }

    private static Optional<KitScale> rising(KitScale scale) {
        boolean rising = scale.steps().equals(scale.steps().stream().distinct().sorted().toList());
        return rising ? Optional.of(scale) : Optional.empty();
    }
}
