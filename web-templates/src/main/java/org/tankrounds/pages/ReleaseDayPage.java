package org.tankrounds.pages;

import java.util.List;
import java.util.stream.Stream;

/**
 * What is filled in at the water, for one tank of a release; works without a connection.
 *
 * @param scale UCUM code of the scale that the form's temperatures are typed on
 */
public record ReleaseDayPage(Facts facts, String scale, List<FormField> counts, List<FormField> water,
        List<FormField> kept, FormField lengths, FormField note, List<FormField> when) implements Page {

    /**
     * @param planned how many were to go, and by which approval
     * @param verdict that the plan does not say go; empty where it does
     * @param asked entries of the count that the page asks about; empty where it asks nothing
     * @param tempering by how far the temperatures are apart
     */
    public record Facts(String title, String heading, String site, String planTo, String action, String planned,
            String verdict, String submissionId, String asked, String tank, List<Apart> tempering) {}

    public record Apart(String degrees, String minutes) {}

    @Override
    public String title() {
        return facts.title();
    }

    public List<FormField> wrong() {
        return Stream.of(counts, water, List.of(lengths), kept, List.of(note), when).flatMap(List::stream)
                .filter(FormField::wrong).toList();
    }
}
