package org.tankrounds.pages;

import java.util.List;
import java.util.stream.Stream;

/**
 * Who of the chapter stood before a tank, when, and what was done.
 *
 * @param place school and room
 * @param code the tank's
 * @param saved what was just done; empty for nothing
 * @param mayWrite whether the reader writes visits down
 * @param submissionId so that sending the form twice stores it once
 * @param deedsError stands above the deeds; empty where nothing is wrong
 * @param rows the newest first
 */
public record VisitsPage(String title, String heading, String place, String code, String saved, boolean mayWrite,
        String submissionId, List<Choice> deeds, String deedsError, List<FormField> boxes, List<Row> rows)
        implements Page {

    public record Choice(String id, String value, String text, boolean chosen) {}

    /** @param undo where it is taken back; empty for who may not */
    public record Row(String when, String by, String deeds, String note, String undo) {}

    /** What is to be put right. */
    public List<FormField> errors() {
        Stream<FormField> deedsWrong = deedsError.isEmpty() ? Stream.empty()
                : Stream.of(FormField.text("deeds", "", "").withError(deedsError));
        return Stream.concat(deedsWrong, boxes.stream().filter(FormField::wrong)).toList();
    }
}
