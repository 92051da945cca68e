package org.tankrounds.pages;

import java.util.List;

/**
 * One reading: every version with who, when and why, and a form for correcting it.
 *
 * @param place school and room
 * @param tankTo address of the tank's page
 * @param version newest one that this form was made from
 * @param overtaken a sentence where somebody else has corrected the reading meanwhile; empty otherwise
 * @param versions newest first
 * @param values one box for each analyte
 * @param gone a sentence where no version counts any more; then there is nothing to correct. Empty otherwise
 * @param takingBack whether what is asked is about taking it back
 */
public record ReadingPage(
        String title,
        String heading,
        String place,
        String tankTo,
        String action,
        int version,
        String overtaken,
        List<Version> versions,
        List<AskBack> asks,
        List<LogPage.Hidden> kept,
        List<LogPage.Step> scales,
        List<FormField> values,
        FormField by,
        FormField note,
        FormField measuredAt,
        FormField reason,
        List<FormField> wrong,
        String gone,
        boolean takingBack) implements Page {

    /**
     * @param heading such as "Version 2, the one that holds"
     * @param measured empty, as are the lines, where it only says that the reading was taken back
     * @param lines values as they were written, with their marks
     */
    public record Version(String heading, String who, String reason, String measured, List<String> lines,
            String note) {}
}
