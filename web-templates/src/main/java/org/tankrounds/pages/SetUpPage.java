package org.tankrounds.pages;

import java.util.List;
import java.util.stream.Stream;

/** The first chapter and its coordinator. */
public record SetUpPage(String action, List<FormField> chapter, List<FormField> coordinator) implements Page {
    @Override
    public String title() {
        return (errors().isEmpty() ? "" : "Error: ") + "Set up your chapter";
    }

    public List<FormField> errors() {
        return Stream.concat(chapter.stream(), coordinator.stream()).filter(FormField::wrong).toList();
    }
}
