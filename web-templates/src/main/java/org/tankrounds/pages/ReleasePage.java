package org.tankrounds.pages;

import java.util.List;

/**
 * All that has to do with releases: sites with what the agency allowed there, and the chapter's rules for the water.
 *
 * @param maySet whether the reader may change sites, approvals and rules
 * @param rules in a sentence or more
 */
public record ReleasePage(String title, boolean maySet, List<SiteRow> sites, String rules) implements Page {

    /**
     * @param approval the one that holds, or comes next, in a few words
     * @param fish how many are left of it; empty where there is none
     */
    public record SiteRow(String name, String water, String to, String approval, String fish) {}
}
