package org.tankrounds.pages;

import java.util.List;
import java.util.stream.Stream;

/**
 * One egg day: eggs are fetched and driven to schools.
 *
 * @param heading the answer
 * @param season its name
 * @param seasonTo its page; empty for who may not see it
 * @param saved what was just done; empty for nothing
 * @param about from whom, by which papers, how far the eggs have come; a line each
 * @param to the page's own address
 * @param mayPlan whether the reader may change the plan
 * @param doubts what does not fit together, a sentence each
 * @param cooler a caution of the last temperature; empty where it is fine
 * @param checkTo where a temperature is sent
 * @param check the boxes of one
 * @param figures of the balance
 * @param balance what they leave open, in a sentence; empty for nothing
 * @param bring what to bring
 * @param others of the season
 */
public record EggRunPage(
        String title, String heading, String season, String seasonTo, String saved, List<String> about, String to,
        boolean mayPlan, List<String> doubts, List<Stop> stops, String cooler, List<Check> checks, String checkTo,
        List<FormField> check, List<CountPage.Figure> figures, String balance, List<String> bring,
        List<FormPage.Link> others) implements Page {

    /**
     * @param time when it is expected; empty where nobody said
     * @param eggs planned
     * @param state what became of it, in words
     * @param water temperatures at the tank; empty until they were read
     * @param to its page
     * @param move where it is moved to; with its place, so that a second press moves nothing
     */
    public record Stop(int number, String time, String school, String room, String eggs, String state, String water,
            boolean done, String to, String move, boolean first, boolean last) {

        public String place() {
            return school + ", " + room;
        }
    }

    /**
     * @param doubt what is wrong with it; empty where it is fine
     * @param undo where it is taken back; empty where it belongs to a stop
     */
    public record Check(String when, String temperature, String where, String by, String doubt, String undo) {}

    public List<FormField> wrong() {
        return Stream.of(check).flatMap(List::stream).filter(FormField::wrong).toList();
    }

    public String editTo() {
        return to + "/edit";
    }

    public String stopsTo() {
        return to + "/stops";
    }

    public String sheetTo() {
        return to + "/sheet";
    }

    public String pdfTo() {
        return sheetTo() + ".pdf";
    }
}
