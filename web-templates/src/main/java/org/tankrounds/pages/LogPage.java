package org.tankrounds.pages;

import java.util.List;

/**
 * The class's form for one reading, in the order in which a class works.
 *
 * @param place school and room
 * @param tank its code
 * @param tankTo address of the tank's page
 * @param submissionId one for each form shown: sent twice, it stores once
 * @param formVersion which names and meanings its fields have
 * @param receipt what was stored just now; empty where nothing was
 * @param conflict a sentence where this form has stored another reading before; empty otherwise
 * @param kept answers already given, to be sent along
 * @param scales of the thermometer; the chosen one is the class's habit
 * @param husbandry what was done or counted
 * @param cards in the order of the kit; a box where the kit has no card
 * @param more what few classes measure, behind "More"
 * @param moreOpen because something in it is wrong or filled in
 * @param wrong fields with an error, in the order of the page
 */
public record LogPage(
        String title,
        String place,
        String tank,
        String tankTo,
        String action,
        String submissionId,
        int formVersion,
        Receipt receipt,
        String conflict,
        String conflictTo,
        List<AskBack> asks,
        List<Hidden> kept,
        FormField temperature,
        List<Step> scales,
        List<FormField> husbandry,
        List<Card> cards,
        FormField by,
        FormField note,
        List<Card> more,
        boolean moreOpen,
        FormField measuredAt,
        String kit,
        FormField kits,
        List<FormField> wrong) implements Page {

    public record Hidden(String name, String value) {}

    /** @param sentence empty where nothing was stored just now */
    public record Receipt(String sentence, String readingTo) {
        public static final Receipt NONE = new Receipt("", "");

        public boolean given() {
            return !sentence.isEmpty();
        }
    }

    /** One button of a card, or of a choice. */
    public record Step(String id, String value, String text, boolean chosen) {}

    /**
     * A card's colours as buttons, or a box.
     *
     * @param field label, unit, value and error
     * @param steps empty for a box
     */
    public record Card(FormField field, List<Step> steps) {
        public boolean isBox() {
            return steps.isEmpty();
        }
    }
}
