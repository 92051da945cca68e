package org.tankrounds.pages;

import java.util.List;

/** How the chapter's test cards are read. */
public record KitsPage(String title, List<Row> kits) implements Page {

    public record Row(String name, String uses, List<Card> cards, String edit, String copy) {}

    /** @param counts unit and form; empty for pH */
    public record Card(String name, String counts, String steps) {}
}
