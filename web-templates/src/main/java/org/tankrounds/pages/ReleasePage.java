package org.tankrounds.pages;

import java.util.List;

/**
 * All that has to do with releases: sites with what the agency allowed there, and the chapter's rules for the water.
 *
 * @param maySet whether the reader may change sites, approvals and rules
 * @param ahead plans that are still to be carried out, the latest first
 * @param over plans whose day is over, and those called off
 * @param plan where a release is planned; empty for who may not, and while no approval allows one
 * @param rules in a sentence or more
 */
public record ReleasePage(String title, boolean maySet, List<SiteRow> sites, List<PlanRow> ahead, List<PlanRow> over,
        String plan, String rules) implements Page {

    /**
     * @param approval the one that holds, or comes next, in a few words
     * @param fish how many are left of it; empty where there is none
     */
    public record SiteRow(String name, String water, String to, String approval, String fish) {}

    /** @param what how many fish of how many tanks, or that it was called off */
    public record PlanRow(String when, String site, String what, String to) {}
}
