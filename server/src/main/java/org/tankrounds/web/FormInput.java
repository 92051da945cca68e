package org.tankrounds.web;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jooq.exception.DataAccessException;
import org.tankrounds.db.Duplicates;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.FormField.Option;
import org.tankrounds.words.Words;

/**
 * What a form showed, what was typed into it and what is wrong with that. Text goes in, typed values come out; a
 * value that cannot be taken leaves a sentence behind and everything that was typed stays.
 */
public final class FormInput {
    /** Hidden field: a hash of what the form showed, so that nobody overwrites what they have not seen. */
    public static final String SHOWN = "shown";

    private final Words words;
    private final Map<String, String> typed;
    private final Map<String, String> errors = new LinkedHashMap<>();
    private String shown;

    private FormInput(Words words, Map<String, String> typed, String shown) {
        this.words = words;
        this.typed = typed;
        this.shown = shown;
    }

    /** A form about to be shown. */
    public static FormInput showing(Map<String, String> text) {
        return new FormInput(Words.english(), new LinkedHashMap<>(text), fingerprint(text));
    }

    /** A form sent back. */
    public static FormInput of(Context ctx, Iterable<String> names) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (String name : names) {
            typed.put(name, clean(ctx.formParam(name)));
        }
        return new FormInput(Speech.of(ctx).words(), typed, clean(ctx.formParam(SHOWN)));
    }

    public String text(String name) {
        return typed.getOrDefault(name, "");
    }

    public String required(String name, int longest, String sentence) {
        String text = text(name);
        if (text.isEmpty()) {
            refuse(name, sentence);
        } else {
            refuseLonger(name, longest);
        }
        return text;
    }

    public Optional<String> optional(String name, int longest) {
        refuseLonger(name, longest);
        return Optional.of(text(name)).filter(text -> !text.isEmpty());
    }

    /** Empty where nothing was typed, or where it cannot be taken: then there is an error. */
    public OptionalDouble decimal(String name, String what) {
        String text = text(name);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        OptionalDouble number = TypedNumber.decimal(text);
        if (number.isEmpty()) {
            refuse(name, words.say("frame.form.notANumber", what, text));
        }
        return number;
    }

    public Optional<LocalDate> day(String name, String what) {
        String text = text(name);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException e) {
            refuse(name, words.say("frame.form.notADay", what, text));
            return Optional.empty();
        }
    }

    /** The first sentence about a field is the one that is shown. */
    public void refuse(String name, String sentence) {
        errors.putIfAbsent(name, sentence);
    }

    public boolean wrong(String name) {
        return errors.containsKey(name);
    }

    public boolean ok() {
        return errors.isEmpty();
    }

    /**
     * Writes what the form says.
     *
     * @param uniqueField the field that must differ from every other thing's
     * @param taken the sentence where it does not
     * @return false where it was taken; then nothing is written
     */
    public boolean saves(Runnable write, String uniqueField, String taken) {
        try {
            write.run();
            return true;
        } catch (DataAccessException e) {
            if (!Duplicates.caused(e)) {
                throw e;
            }
            refuse(uniqueField, taken);
            return false;
        }
    }

    /** What the form showed, for the hidden field. */
    public String shown() {
        return shown;
    }

    /**
     * Whether somebody has changed the thing since the form was shown, other than to just what was typed.
     *
     * @param current what the form would show now
     */
    public boolean isStale(Map<String, String> current) {
        return !shown.equals(fingerprint(current)) && !typed.equals(current);
    }

    /** From now on the form has shown what is current: sending it again decides for what was typed. */
    public void haveSeen(Map<String, String> current) {
        shown = fingerprint(current);
    }

    public FormField textBox(String name, String label) {
        return withError(FormField.text(name, label, text(name)));
    }

    public FormField numberBox(String name, String label, String unit) {
        return withError(FormField.number(name, label, unit, text(name)));
    }

    public FormField dayBox(String name, String label) {
        return textBox(name, label).withType("date", "off");
    }

    public FormField choice(String name, String label, List<Option> options) {
        return withError(FormField.select(name, label, text(name), options));
    }

    private FormField withError(FormField field) {
        return field.withError(errors.getOrDefault(field.name(), ""));
    }

    private void refuseLonger(String name, int longest) {
        if (text(name).length() > longest) {
            refuse(name, words.say("frame.form.tooLong", text(name).length(), longest));
        }
    }

    private static String clean(String text) {
        return text == null ? "" : text.replace("\u0000", "").strip();
    }

    private static String fingerprint(Map<String, String> text) {
        StringBuilder all = new StringBuilder();
        text.forEach((name, value) -> all.append(name).append('\u001f').append(value).append('\u001e'));
        return HexFormat.of().formatHex(Secrets.sha256(all.toString().getBytes(StandardCharsets.UTF_8)), 0, 8);
    }
}
