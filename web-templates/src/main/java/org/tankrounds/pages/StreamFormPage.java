package org.tankrounds.pages;

import java.util.List;
import java.util.stream.Stream;

/**
 * The sheet of a stream check: its water, and what lives in it, with a sketch of each.
 *
 * @param scale UCUM code of the scale that the temperature is typed on
 */
public record StreamFormPage(String title, String heading, String site, String siteTo, String action,
        String submissionId, String scale, List<FormField> water, List<Part> parts, FormField note,
        List<FormField> when) implements Page {

    public record Part(String name, List<Animal> animals) {}

    /**
     * @param field its hint says how the animal is known
     * @param sketch paths of its picture
     */
    public record Animal(FormField field, List<String> sketch) {}

    public List<FormField> wrong() {
        return Stream.of(water, parts.stream().flatMap(part -> part.animals().stream()).map(Animal::field).toList(),
                        List.of(note), when)
                .flatMap(List::stream).filter(FormField::wrong).toList();
    }
}
