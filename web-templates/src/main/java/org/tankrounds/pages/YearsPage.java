package org.tankrounds.pages;

import java.util.List;

/**
 * A chapter's seasons beside each other.
 *
 * @param saved what was just done; empty for nothing
 * @param columns the seasons, the oldest first
 * @param changes what changed from one to the next, a sentence each
 * @param more that there are older ones; empty where there are none
 */
public record YearsPage(String title, String saved, List<Column> columns, List<Row> rows, List<String> changes,
        String more) implements Page {

    /**
     * @param file of one that was put in from a sheet: as it was; empty of others
     * @param undo where it is taken back; empty of others
     */
    public record Column(String name, String file, String undo) {}

    public record Row(String name, List<String> cells) {}
}
