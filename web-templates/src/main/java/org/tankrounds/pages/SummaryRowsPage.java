package org.tankrounds.pages;

import java.util.List;

/**
 * The rows behind one figure of the summary.
 *
 * @param summary where the summary is
 * @param season its name
 * @param up one step nearer to the figure's sum; null where this is the whole chapter's
 * @param lead of what, and how the rows come to the figure
 * @param column what the numbers are
 * @param total what the rows add up to: the figure
 */
public record SummaryRowsPage(
        String title, String summary, String season, FormPage.Link up, String lead, String column, List<Row> rows,
        String totalName, String total) implements Page {

    /**
     * @param id by which the row can be pointed at; empty for none
     * @param number with its sign
     * @param to what is behind the row; empty for nothing
     */
    public record Row(String id, String when, String what, String detail, String number, String to) {}
}
