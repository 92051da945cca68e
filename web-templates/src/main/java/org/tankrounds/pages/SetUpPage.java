package org.tankrounds.pages;

import java.util.List;
import java.util.stream.Stream;

/** The first chapter and its coordinator. */
public record SetUpPage(String title, String action, List<FormField> chapter, List<FormField> coordinator)
        implements Page {
    public List<FormField> errors() {
        return Stream.concat(chapter.stream(), coordinator.stream()).filter(FormField::wrong).toList();
    }
}
