package org.tankrounds.pages;

import java.util.List;
import java.util.stream.Stream;

/** Choosing a password behind a link. */
public record InvitationPage(
        String title, String name, String email, String chapter, String action, FormField password, FormField again)
        implements Page {
    public List<FormField> errors() {
        return Stream.of(password, again).filter(FormField::wrong).toList();
    }
}
