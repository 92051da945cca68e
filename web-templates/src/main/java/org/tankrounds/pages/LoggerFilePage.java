package org.tankrounds.pages;

import java.util.List;

/**
 * One logger file: how it is understood before it is kept, what became of it after.
 *
 * @param title the heading, and before it that nothing was kept where it was to be
 * @param heading the answer: how much is new, or what is asked
 * @param place school and room
 * @param listTo the tank's files
 * @param lead a sentence below the heading; may be empty
 * @param waiting it is not kept yet
 * @param alert why nothing was kept just now; may be empty
 * @param shown the answers that this page shows the outcome of
 * @param questions to be answered first
 * @param understood what the file says of itself, or somebody said of it
 * @param keep text of the button; empty where there is nothing to keep
 * @param dropTo where it is taken back
 * @param notes what else there is to know, a sentence each
 * @param aside rows and values that are not taken
 * @param asideMore how many more there are than are listed; empty for none
 * @param conflicts values that differ from what is stored
 * @param conflictsMore how many more there are than are listed; empty for none
 * @param conflictChoices what is to become of them
 * @param canBeTakenBack whether there is a button for it
 */
public record LoggerFilePage(
        String title, String heading, String place, String tankTo, String listTo, String here, String lead,
        boolean waiting, String alert, String shown, List<FormField> questions, List<FormField> understood,
        List<Fact> facts, String keep, String dropTo, List<String> notes, FirstRows first, List<Aside> aside,
        String asideMore, List<Conflict> conflicts, String conflictsMore, List<LogPage.Step> conflictChoices,
        boolean canBeTakenBack) implements Page {

    public record Fact(String name, String text) {}

    /** @param names of the columns; may be empty */
    public record FirstRows(List<String> names, List<List<String>> rows) {}

    public record Aside(String line, String cell, String why) {}

    public record Conflict(String when, String stored, String inFile) {}
}
