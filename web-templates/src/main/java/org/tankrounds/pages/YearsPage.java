package org.tankrounds.pages;

import java.util.List;

/**
 * A chapter's seasons beside each other.
 *
 * @param saved what was just done; empty for nothing
 * @param columns names of the seasons that are shown, the oldest first
 * @param changes what changed from one to the next, a sentence each
 * @param more that there are older ones; empty where there are none
 * @param sheets all seasons that were put in from a sheet, shown above or not, the newest first
 */
public record YearsPage(String title, String saved, List<String> columns, List<Row> rows, List<String> changes,
        String more, List<Sheet> sheets) implements Page {

    /**
     * @param file as it was put in
     * @param undo where it is taken back
     */
    public record Sheet(String name, String file, String undo) {}

    public record Row(String name, List<String> cells) {}
}
