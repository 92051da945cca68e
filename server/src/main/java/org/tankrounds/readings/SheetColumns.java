package org.tankrounds.readings;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tankrounds.pages.SheetPage.Column;
import org.tankrounds.pages.SheetPage.Step;
import org.tankrounds.places.Kit;
import org.tankrounds.places.KitScale;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Speech;

/**
 * The columns of a sheet of paper, in the order of the class's form. A card's steps stand in every row to be ringed as
 * far as the paper is wide enough; of the longest cards the number is written by hand, and their steps stand on top.
 */
final class SheetColumns {
    /** What the style sheet leaves for the cards between what is written by hand. */
    private static final double FOR_CARDS_MM = 150;
    private static final double BOX_MM = 17;
    private static final double STEP_MM = 4.9;
    private static final double WIDE_STEP_MM = 6;
    private static final int NARROW_CHARACTERS = 3;
    private static final int MOST_ON_TOP = 8;
    private static final String GAP = " · ";

    private final LogBoxes boxes;
    private final Kit kit;
    private final Speech speech;

    SheetColumns(LogBoxes boxes, Kit kit, Speech speech) {
        this.boxes = boxes;
        this.kit = kit;
        this.speech = speech;
    }

    List<Column> columns() {
        Stream<Column> byHand = Stream.concat(Stream.of(Analyte.TEMPERATURE), LogBoxes.HUSBANDRY.stream())
                .map(analyte -> box(analyte, analyte == Analyte.TEMPERATURE ? "box" : "short"));
        return Stream.concat(byHand, cards().values().stream()).toList();
    }

    private Map<Analyte, Column> cards() {
        Map<Analyte, Column> cards = new LinkedHashMap<>();
        boxes.onPaper().forEach(analyte -> cards.put(analyte, kit.scale(analyte)
                .map(scale -> ringed(analyte, scale)).orElseGet(() -> box(analyte, "box"))));
        Optional<Analyte> tooLong = longest(cards);
        while (tooLong.isPresent()) {
            cards.put(tooLong.get(), written(tooLong.get()));
            tooLong = longest(cards);
        }
        return cards;
    }

    /** The card that takes most room, and more than a box, where all of them take too much. */
    private static Optional<Analyte> longest(Map<Analyte, Column> cards) {
        double all = cards.values().stream().mapToDouble(SheetColumns::widthMm).sum();
        return cards.keySet().stream()
                .filter(analyte -> all > FOR_CARDS_MM && widthMm(cards.get(analyte)) > BOX_MM)
                .max(Comparator.comparing(analyte -> widthMm(cards.get(analyte))));
    }

    private static double widthMm(Column column) {
        return column.isBox() ? BOX_MM
                : column.steps().stream().mapToDouble(step -> isWide(step.text()) ? WIDE_STEP_MM : STEP_MM).sum();
    }

    private Column ringed(Analyte analyte, KitScale scale) {
        List<Step> steps = LogBoxes.stepsInWords(scale).stream()
                .map(step -> new Step(step, isWide(step) ? "wide-step" : "step")).toList();
        return new Column(name(analyte), unit(analyte), "", steps);
    }

    private Column written(Analyte analyte) {
        List<String> steps = LogBoxes.stepsInWords(kit.scale(analyte).orElseThrow());
        String onTop = steps.size() <= MOST_ON_TOP ? String.join(GAP, steps)
                : steps.get(0) + GAP + steps.get(1) + " … " + steps.get(steps.size() - 1);
        String about = Stream.of(unit(analyte), onTop).filter(part -> !part.isEmpty())
                .collect(Collectors.joining(": "));
        return new Column(name(analyte), about, "box", List.of());
    }

    private Column box(Analyte analyte, String width) {
        return new Column(name(analyte), unit(analyte), width, List.of());
    }

    private static boolean isWide(String step) {
        return step.length() > NARROW_CHARACTERS;
    }

    private String name(Analyte analyte) {
        return speech.say(Wording.name(analyte));
    }

    private String unit(Analyte analyte) {
        return speech.say(Wording.unit(boxes.form(analyte)));
    }
}
