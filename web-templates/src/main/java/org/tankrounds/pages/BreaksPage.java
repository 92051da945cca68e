package org.tankrounds.pages;

import java.util.List;
import java.util.stream.Stream;

/**
 * The school breaks of a tank, and who looks in on which of their days.
 *
 * @param heading the answer
 * @param saved what became of what was just done here; empty otherwise
 * @param mayPlan whether the reader may change the plan
 * @param mayTakeAlong whether there is a day for a calendar
 * @param usual who often looks in, to choose from
 * @param add the form of a break's days
 */
public record BreaksPage(
        String title, String heading, String place, String code, String saved, List<Plan> plans, boolean mayPlan,
        boolean mayTakeAlong, List<String> usual, List<FormField> add) implements Page {

    /**
     * @param span from when until when
     * @param line what somebody has to know of it; may be empty
     * @param shown goes back with the form, so that nobody overwrites what they have not seen
     * @param others who looks in on all days that are left empty
     * @param clashes what somebody else changed meanwhile; empty almost always
     * @param asks what is asked back once; empty almost always
     * @param answered what was answered to that; empty where nothing was
     */
    public record Plan(String to, String id, String name, String span, String line, String shown, List<Day> days,
            FormField others, List<FormPage.Clash> clashes, List<AskBack> asks, String answered) {

        public String dropTo() {
            return to + "/dropped";
        }
    }

    /** @param state whether somebody looked; empty of days to come */
    public record Day(String date, FormField looker, String state, boolean past, boolean today) {}

    public List<FormField> wrong() {
        return Stream.concat(plans.stream().flatMap(plan -> Stream.concat(
                plan.days().stream().map(Day::looker), Stream.of(plan.others()))), add.stream())
                .filter(FormField::wrong).toList();
    }

    public String classTo() {
        return "/tanks/" + code + "/class";
    }

    public String logTo() {
        return "/tanks/" + code + "/log";
    }

    public String to() {
        return "/tanks/" + code + "/breaks";
    }

    public String calendarTo() {
        return to() + ".ics";
    }
}
