package org.tankrounds.pages;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One box of a form, with what was typed into it and what is wrong with that.
 *
 * @param name also the id that the error summary links to
 * @param unit stands outside the box; the label repeats it, because readers skip it
 * @param error empty where nothing is wrong
 * @param options of a select; empty for a text box
 */
public record FormField(
        String name, String label, String hint, String unit, String value, String error, String type,
        String inputMode, String autocomplete, boolean shortBox, List<Option> options) {

    public record Option(String value, String text) {}

    public static FormField text(String name, String label, String value) {
        return new FormField(name, label, "", "", value, "", "text", null, "off", false, List.of());
    }

    public static FormField number(String name, String label, String unit, String value) {
        return new FormField(name, label, "", unit, value, "", "text", "decimal", "off", true, List.of());
    }

    public static FormField select(String name, String label, String value, List<Option> options) {
        return new FormField(name, label, "", "", value, "", "text", null, null, false, List.copyOf(options));
    }

    public FormField withLabel(String newLabel) {
        return new FormField(name, newLabel, hint, unit, value, error, type, inputMode, autocomplete,
                shortBox, options);
    }

    public FormField withHint(String newHint) {
        return new FormField(name, label, newHint, unit, value, error, type, inputMode, autocomplete,
                shortBox, options);
    }

    public FormField withError(String newError) {
        return new FormField(name, label, hint, unit, value, newError, type, inputMode, autocomplete,
                shortBox, options);
    }

    public FormField withType(String newType, String newAutocomplete) {
        return new FormField(name, label, hint, unit, value, error, newType, inputMode, newAutocomplete,
                shortBox, options);
    }

    public boolean wrong() {
        return !error.isEmpty();
    }

    /** Ids of hint and error, for readers; null where there is neither. */
    public String describedBy() {
        String ids = Stream.of(hint.isEmpty() ? "" : name + "-hint", wrong() ? name + "-error" : "")
                .filter(id -> !id.isEmpty())
                .collect(Collectors.joining(" "));
        return ids.isEmpty() ? null : ids;
    }
}
