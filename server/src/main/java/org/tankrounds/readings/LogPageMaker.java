package org.tankrounds.readings;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.tankrounds.pages.AskBack;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.LogPage;
import org.tankrounds.pages.LogPage.Card;
import org.tankrounds.pages.LogPage.Hidden;
import org.tankrounds.pages.LogPage.Receipt;
import org.tankrounds.pages.LogPage.Step;
import org.tankrounds.places.Kit;
import org.tankrounds.places.KitScale;
import org.tankrounds.places.Tank;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;
import org.tankrounds.web.Speech;

/** Makes the class's form, with what was typed and what is to be said about that. */
final class LogPageMaker {

    /**
     * What there is to say besides the form itself.
     *
     * @param errors sentences by field
     * @param conflict empty unless the form has stored another reading before
     */
    record Message(Map<String, String> errors, List<AskBack> asks, Set<Analyte> confirmed, String conflict,
            Receipt receipt) {
        static final Message NONE = new Message(Map.of(), List.of(), Set.of(), "", Receipt.NONE);

        static Message receipt(Receipt receipt) {
            return new Message(Map.of(), List.of(), Set.of(), "", receipt);
        }

        static Message conflict(String sentence) {
            return new Message(Map.of(), List.of(), Set.of(), sentence, Receipt.NONE);
        }
    }

    private final Tank tank;
    private final Kit kit;
    private final List<Kit> kits;
    private final LogForm form;
    private final Message message;
    private final Speech speech;
    private final LogBoxes boxes;
    private final LogFields fields;

    LogPageMaker(Tank tank, Kit kit, List<Kit> kits, LogForm form, Message message,
            Speech speech) {
        this.tank = tank;
        this.kit = kit;
        this.kits = kits;
        this.form = form;
        this.message = message;
        this.speech = speech;
        this.boxes = new LogBoxes(tank, kit);
        this.fields = new LogFields(form, message.errors(), speech);
    }

    LogPage page() {
        FormField temperature = fields.box(Analyte.TEMPERATURE, boxes.form(Analyte.TEMPERATURE));
        List<FormField> husbandry = LogBoxes.HUSBANDRY.stream()
                .map(analyte -> fields.box(analyte, boxes.form(analyte))).toList();
        List<Card> cards = LogBoxes.ALWAYS.stream().map(this::card).toList();
        List<Card> more = Stream.concat(boxes.more().stream().map(this::card), boxes.typed().stream()
                .map(analyte -> new Card(fields.typedBox(analyte, boxes.form(analyte)), List.of()))).toList();
        FormField measuredAt = fields.measuredAt(speech.say("log.emptyForNow"))
                .withHint(speech.say("log.timeHint"));
        List<FormField> inOrder = Stream.of(Stream.of(temperature), husbandry.stream(), cards.stream().map(Card::field),
                        Stream.of(fields.by(), fields.note()), more.stream().map(Card::field), Stream.of(measuredAt))
                .flatMap(part -> part).toList();
        List<FormField> wrong = inOrder.stream().filter(FormField::wrong).toList();
        return new LogPage(title(wrong), tank.school() + ", " + tank.classroom(), tank.code(),
                "/tanks/" + tank.code(), "/tanks/" + tank.code() + "/log", form.text(LogForm.SUBMISSION),
                LogForm.CURRENT_VERSION, message.receipt(),
                message.conflict(), "/tanks/" + tank.code(), message.asks(),
                hidden(),
                temperature, fields.scales(tank.thermometerUnit()), husbandry, cards, fields.by(), fields.note(), more,
                moreOpen(more, measuredAt), measuredAt, kit.name(), kitChoice(), wrong);
    }

    private List<Hidden> hidden() {
        List<Hidden> answered = fields.kept(message.confirmed());
        return ShownCards.beside(Stream.concat(answered.stream(), OpenedWith.hidden(form).stream()).toList(), kit);
    }

    private String title(List<FormField> wrong) {
        boolean hasError = !wrong.isEmpty() || !message.conflict().isEmpty();
        boolean asks = !hasError && !message.asks().isEmpty();
        return speech.titled(hasError, speech.say(asks ? "log.titleAsking" : "log.title", tank.school()));
    }

    private Card card(Analyte analyte) {
        UnitForm form = boxes.form(analyte);
        FormField box = fields.box(analyte, form);
        Optional<KitScale> scale = kit.scale(analyte);
        if (scale.isEmpty()) {
            return new Card(box, List.of());
        }
        FormField named = analyte != Analyte.PH ? box
                : new FormField(box.name(), box.label(), "", speech.say("log.byCard"), box.value(), box.error(), "text",
                        null, null, false, List.of());
        return new Card(named, steps(analyte, scale.get()));
    }

    /** The first button has the field's own name as its id: that is where the error summary leads. */
    private List<Step> steps(Analyte analyte, KitScale scale) {
        List<Step> steps = new ArrayList<>();
        String chosen = form.text(analyte);
        boolean found = false;
        for (String text : LogBoxes.stepsInWords(scale)) {
            boolean isChosen = text.equals(chosen);
            found |= isChosen;
            String id = steps.isEmpty() ? analyte.code() : analyte.code() + "-" + steps.size();
            steps.add(new Step(id, text, text, isChosen));
        }
        steps.add(new Step(analyte.code() + "-none", "", speech.say("log.notTested"), !found));
        return steps;
    }

    private boolean moreOpen(List<Card> more, FormField measuredAt) {
        return Stream.concat(more.stream().map(Card::field), Stream.of(measuredAt))
                .anyMatch(field -> field.wrong() || !field.value().isBlank())
                || !kit.name().equals(form.text(LogForm.KIT)) && !form.text(LogForm.KIT).isEmpty();
    }

    private FormField kitChoice() {
        List<FormField.Option> options = kits.size() < 2 ? List.of()
                : kits.stream().map(one -> new FormField.Option(one.name(), one.name())).toList();
        return FormField.select(LogForm.OTHER_KIT, speech.say("log.kit"), kit.name(), options);
    }
}
