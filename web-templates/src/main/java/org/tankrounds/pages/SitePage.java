package org.tankrounds.pages;

import java.util.List;

/**
 * A release site: what the agency allowed there.
 *
 * @param where water, way there and coordinates
 * @param edit address of its form; empty for who may not change it
 * @param addApproval empty for who may not
 * @param checks looks at the stream, the newest first
 * @param plan where a release is planned; empty for who may not, and while no approval here allows one
 */
public record SitePage(String title, String where, String edit, List<ApprovalRow> approvals, String addApproval,
        String plan, List<CheckRow> checks, String addCheck) implements Page {

    /** @param line what was found, in a few words */
    public record CheckRow(String when, String line, String to) {}

    /**
     * @param fish how many are left of how many
     * @param standing whether it holds today, in words
     * @param edit address of its form; empty for who may not change it
     */
    public record ApprovalRow(String number, String agency, String species, String days, String fish, String standing,
            String note, boolean withdrawn, String edit) {}
}
