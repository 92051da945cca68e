package org.tankrounds.pages;

import java.util.List;
import java.util.stream.Stream;

/**
 * Which tank gets how many eggs when.
 *
 * @param run where the page belongs
 * @param shown goes back with the form, so that nobody overwrites what they have not seen
 */
public record EggStopsPage(
        String title, String heading, FormPage.Link season, FormPage.Link run, String to, String shown, List<Row> rows,
        List<FormPage.Clash> clashes) implements Page {

    /** @param already what the tank has in this season; empty for nothing */
    public record Row(String school, String room, String already, FormField eggs, FormField time) {}

    public List<FormField> wrong() {
        return rows.stream().flatMap(row -> Stream.of(row.eggs(), row.time())).filter(FormField::wrong).toList();
    }
}
