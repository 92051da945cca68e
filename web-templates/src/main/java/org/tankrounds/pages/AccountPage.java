package org.tankrounds.pages;

import java.util.List;
import java.util.stream.Stream;

/**
 * A person's own account.
 *
 * @param role coordinator, mentor or teacher
 * @param saved whether language and units were stored just now
 */
public record AccountPage(
        String title, String name, String email, String role, String chapter, boolean saved, FormField language,
        FormField scale, FormField current, FormField password, FormField again) implements Page {

    public List<FormField> errors() {
        return Stream.of(language, scale, current, password, again).filter(FormField::wrong).toList();
    }
}
