package org.tankrounds.pages;

import java.util.List;

/**
 * A release as it is planned: whether it may go ahead, and all that it takes.
 *
 * @param lead when, where and by which approval
 * @param saved what was just done; empty for nothing
 * @param stillThere tanks of which nothing is written down while others are out; empty for none
 * @param over whether its day is past, all of it is out, or it was called off: what was done comes first
 * @param against what forbids it
 * @param open what is not known yet
 * @param dropped whether it was called off
 * @param edit empty for who may not change it
 * @param checksTo where answers are sent
 * @param tempering lines of the timetable; empty where a temperature is missing
 * @param temperingLead what is to be said of it
 * @param apart how far the waters are apart; empty where that is little
 * @param mixSlowly which tanks' water must not be thinned fast, and why, a sentence each
 * @param bring what to take along, a line each
 * @param rules the chapter's, in a sentence
 */
public record ReleasePlanPage(String title, String lead, String siteTo, String site, String saved, String stillThere,
        boolean over, List<Finding> against, List<Finding> open, boolean dropped, String edit, String checksTo,
        List<Check> checks, List<TankRow> tanks, String totals, List<Dated> dates, String temperingLead, String apart,
        List<String> mixSlowly, List<Step> tempering, List<String> bring, List<Dated> duties, String rules, String note)
        implements Page {

    public record Finding(String what, String whatToDo) {}

    /**
     * @param name of its boxes
     * @param was the answer that it opened with
     * @param stale why an earlier answer does not count any more; empty where it does
     */
    public record Check(String name, String what, String was, String by, String stale, List<Choice> choices) {}

    public record Choice(String id, String value, String text, boolean chosen) {}

    /**
     * @param fish how many, and how large
     * @param planned how many, for once it is over
     * @param box how tight it is in the boxes
     * @param air how long oxygen lasts without a pump
     * @param done what was written down at the water
     * @param dayTo where it is written down; empty for who may not
     */
    public record TankRow(String place, String fish, String planned, String boxes, String box, String air,
            List<String> done, String dayTo) {}

    /** A name, or a time, and what goes with it. */
    public record Dated(String when, String what) {}

    public record Step(String minutes, String what, String temperature) {}
}
