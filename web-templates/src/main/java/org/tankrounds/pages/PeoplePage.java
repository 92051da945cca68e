package org.tankrounds.pages;

import java.util.List;

/** The chapter's people. */
public record PeoplePage(String title, List<Row> rows) implements Page {
    /** @param state whether they can sign in, in words */
    public record Row(String name, String to, String email, String role, String tanks, String state) {}
}
