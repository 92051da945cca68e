package org.tankrounds.pages;

import java.util.List;

/**
 * A tank's logger files: one to be sent, and those that were.
 *
 * @param place school and room
 * @param here where the form is sent
 * @param file the box of the form, with what was wrong with the file before
 */
public record LoggerFilesPage(
        String title, String place, String tankTo, String here, FormField file, List<Row> files) implements Page {

    /** @param state what became of it, in words */
    public record Row(String name, String to, String sent, String state) {}

    public List<FormField> wrong() {
        return file.wrong() ? List.of(file) : List.of();
    }
}
