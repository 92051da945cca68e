package org.tankrounds.pages;

import java.util.List;

/**
 * The rounds of a past morning, and what then happened.
 *
 * @param title the answer, and whether something is to be put right
 * @param answer what the board said, or why there is none
 * @param lead what its odds speak of and until when; may be empty
 * @param score how the morning did, in one line; may be empty
 * @param day the box for another morning
 * @param before the school morning before it
 * @param after the one after; null where it has yet to come
 */
public record MorningPage(
        String title, String answer, String lead, String score, FormField day, Turn before, Turn after,
        List<Group> groups)
        implements Page {

    /** @param key as of {@link RoundsPage.Group} */
    public record Group(String key, String title, List<Row> rows) {}

    /**
     * @param said the row as it stood
     * @param bring what was to be brought and asked for, in sentences; empty where nothing was
     * @param then what happened, worst first
     * @param rest what bears on that
     * @param beyond whether a later reading was beyond a limit
     */
    public record Row(RoundsPage.Row said, String bring, String then, String rest, boolean beyond) {}

    public record Turn(String text, String to) {}

    public boolean empty() {
        return groups.isEmpty();
    }

    public List<FormField> errors() {
        return day.wrong() ? List.of(day) : List.of();
    }
}
