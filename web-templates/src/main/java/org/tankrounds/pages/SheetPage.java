package org.tankrounds.pages;

import java.util.List;

/**
 * A month of a tank's log to be printed and filled in by hand: one row a day.
 *
 * @param heading "Log sheet, December 2026"
 * @param place school and room
 * @param kit the cards that the steps are from
 * @param tankTo address of the tank's page
 * @param months the one before and the one after
 * @param entryTo where the filled sheet is typed in
 */
public record SheetPage(
        String title, String heading, String place, String month, String kit, String tank, String tankTo,
        List<OtherMonth> months, String pdfTo, String entryTo, List<Column> columns, List<Day> days) implements Page {

    public record OtherMonth(String name, String to) {}

    /**
     * A box, or a card's steps to be ringed.
     *
     * @param about unit, and of a card that is too long to be ringed its steps
     * @param width word for how wide it is, of the style sheet
     */
    public record Column(String name, String about, String width, List<Step> steps) {
        private static final int SHORT_CHARACTERS = 3;

        /** What stays on one line, such as °F, whose sign and letter would else be parted. */
        public boolean isShortAbout() {
            return about.length() <= SHORT_CHARACTERS;
        }

        public boolean isBox() {
            return steps.isEmpty();
        }

        public int span() {
            return Math.max(1, steps.size());
        }
    }

    /** @param width as of a column */
    public record Step(String text, String width) {}

    public record Day(String name, boolean weekend) {}
}
