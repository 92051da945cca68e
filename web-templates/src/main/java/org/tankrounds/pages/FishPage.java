package org.tankrounds.pages;

import java.util.List;

/**
 * How the fish of a tank are: what the class sees of them, and how long and heavy they are.
 *
 * @param saved what became of what was just put in; empty otherwise
 * @param advice what to do about it now; empty where nothing
 * @param submissionId so that sending a form twice stores it once
 * @param hatched whether there are fish to look at yet
 * @param lookError stands above the behaviours; empty where nothing is wrong
 * @param measures how many, how long, how heavy
 * @param askedLength the length that is asked about now; sent again, it is taken
 * @param past what was seen and measured before, the newest first
 * @param tellsCondition whether condition is told of what was measured
 */
public record FishPage(
        String title, String place, String code, String saved, String advice, String submissionId, boolean hatched,
        List<Group> groups, String lookError, List<FormField> measures, String askedLength, List<Past> past,
        boolean tellsCondition) implements Page {

    /** One behaviour with the ways it can be. */
    public record Group(String name, String label, List<Way> ways) {}

    public record Way(String id, String value, String text, boolean chosen) {}

    /** @param undoTo where it is taken back */
    public record Past(String when, String words, String undoTo) {}

    public List<FormField> wrong() {
        return measures.stream().filter(FormField::wrong).toList();
    }

    public String classTo() {
        return "/tanks/" + code + "/class";
    }

    public String fileTo() {
        return "/tanks/" + code + "/fish.csv";
    }

    public String looksTo() {
        return "/tanks/" + code + "/fish/looks";
    }

    public String samplesTo() {
        return "/tanks/" + code + "/fish/samples";
    }
}
