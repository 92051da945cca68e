package org.tankrounds.pages;

import java.util.List;
import java.util.stream.Stream;

/**
 * Adding and editing a person.
 *
 * @param acts what else can be done, each a button of its own
 */
public record PersonPage(
        String title, String heading, String action, String save, FormField name, FormField email, FormField role,
        List<TankChoice> tanks, List<FormPage.Act> acts) implements Page {

    public record TankChoice(String code, String label, boolean ticked) {}

    public List<FormField> errors() {
        return Stream.of(name, email, role).filter(FormField::wrong).toList();
    }
}
