package org.tankrounds.pages;

import java.util.List;

/**
 * One tank as its class sees it, in words for children.
 *
 * @param heading the answer
 * @param saved what became of what was just done here; empty otherwise
 * @param trouble what is grave about the fish, in sentences; empty where nothing
 * @param feed null before there are eggs
 * @param warmth null before there are eggs
 * @param nitrogen the way from feed to nitrate, each step with what was measured
 * @param fish what the class saw of its fish last; may be empty
 * @param away who looks in during a school break, or does not; may be empty
 * @param mayAsk whether the reader may ask the class to do something
 * @param ask the box for that; null where the reader may not
 */
public record ClassPage(
        String title, String heading, String place, String code, String saved, String trouble,
        List<Measured> numbers, List<Todo> todo, List<Done> done, Feed feed, Warmth warmth, List<Step> nitrogen,
        String nitrogenNow, TankPage.Season season, String fish, String away, boolean mayAsk, FormField ask)
        implements Page {

    /** @param beyond whether it is past its limit */
    public record Measured(String name, String value, String unit, String meaning, String age, boolean beyond) {}

    /**
     * @param from who asked, and when; empty where it is advice
     * @param doneTo where it is ticked; empty where a reading answers it
     * @param readTo where that reading is put in; empty otherwise
     * @param readText what the link there says
     * @param dropTo where it is taken back by those who ask; empty otherwise
     */
    public record Todo(String act, String how, String caution, String from, String doneTo, String readTo,
            String readText, String dropTo) {}

    /** @param undoTo where a tick by mistake is taken back */
    public record Done(String act, String when, String undoTo) {}

    /** @param amount the answer: "2.4 g of starter feed" */
    public record Feed(String amount, String how, String basis) {}

    /**
     * @param collected "312 degree-days"
     * @param share of the way to first feeding, in per cent
     * @param hatchAt where on that way the hatch lies, in per cent
     */
    public record Warmth(String collected, String share, String hatchAt, List<String> sentences) {}

    public record Step(String name, String story, String measured) {}

    public boolean wrong() {
        return ask != null && ask.wrong();
    }

    public List<FormField> errors() {
        return wrong() ? List.of(ask) : List.of();
    }

    public String tankTo() {
        return "/tanks/" + code;
    }

    public String logTo() {
        return tankTo() + "/log";
    }

    public String fishTo() {
        return tankTo() + "/fish";
    }

    public String breaksTo() {
        return tankTo() + "/breaks";
    }

    public String tasksTo() {
        return tankTo() + "/tasks";
    }
}
