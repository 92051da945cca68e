package org.tankrounds.pages;

import java.util.List;
import java.util.stream.Stream;

/**
 * Counts of a past season, put in from a spreadsheet.
 *
 * @param submissionId so that sending the form twice stores it once
 * @param looked names the sheet that is shown below; empty where there is none
 * @param boxes name and last day
 * @param sheet the box that the sheet is copied into
 * @param text what stands in it
 * @param faults what is wrong with it, by line
 * @param rows what is understood of it; the last is the sum
 * @param notes what was left out of the counting
 */
public record ImportPage(String title, String heading, String submissionId, String looked, List<FormField> boxes,
        FormField sheet, String text, List<String> faults, List<Row> rows, List<String> notes) implements Page {

    public record Row(String place, String received, String dead, String thinned, String released, String alive,
            String unexplained) {}

    public List<FormField> errors() {
        return Stream.concat(boxes.stream(), Stream.of(sheet)).filter(FormField::wrong).toList();
    }
}
