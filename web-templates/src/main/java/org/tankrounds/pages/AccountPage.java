package org.tankrounds.pages;

import java.util.List;
import java.util.stream.Stream;

/** A person's own account. */
public record AccountPage(
        String name, String email, String role, String chapter, FormField current, FormField password, FormField again)
        implements Page {
    @Override
    public String title() {
        return (errors().isEmpty() ? "" : "Error: ") + "Your account";
    }

    public List<FormField> errors() {
        return Stream.of(current, password, again).filter(FormField::wrong).toList();
    }
}
