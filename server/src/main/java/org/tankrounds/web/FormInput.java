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
import org.tankrounds.words.Saying;

/**
 * What a form showed, what was typed into it and what is wrong with that. Text goes in, typed values come out; a
 * value that cannot be taken leaves a sentence behind and everything that was typed stays. Labels and sentences are
 * given as keys of messages and said to whoever fills the form in.
 */
public final class FormInput {
    /** Hidden field: a hash of what the form showed, so that nobody overwrites what they have not seen. */
    public static final String SHOWN = "shown";

    private final Speech speech;
    private final Map<String, String> typed;
    private final Map<String, String> errors = new LinkedHashMap<>();
    private String shown;
    private boolean overtaken;

    private FormInput(Speech speech, Map<String, String> typed, String shown) {
        this.speech = speech;
        this.typed = typed;
        this.shown = shown;
    }

    /** A form about to be shown. */
    public static FormInput showing(Context ctx, Map<String, String> text) {
        return showing(Speech.of(ctx), text);
    }

    public static FormInput showing(Speech speech, Map<String, String> text) {
        return new FormInput(speech, new LinkedHashMap<>(text), fingerprint(text));
    }

    /** A form sent back. */
    public static FormInput of(Context ctx, Iterable<String> names) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (String name : names) {
            typed.put(name, clean(ctx.formParam(name)));
        }
        return new FormInput(Speech.of(ctx), typed, clean(ctx.formParam(SHOWN)));
    }

    public String say(String key, Object... with) {
        return speech.say(key, with);
    }

    public String say(Saying saying) {
        return speech.say(saying);
    }

    /** "25 Nov 2026" */
    public String date(LocalDate day) {
        return speech.written("time.pattern.dateAndYear", day);
    }

    /** A page's title, which says first where there is something to put right. */
    public String titled(String title) {
        return speech.titled(!ok() || overtaken, title);
    }

    public String text(String name) {
        return typed.getOrDefault(name, "");
    }

    public String required(String name, int longest, String key) {
        String text = text(name);
        if (text.isEmpty()) {
            refuse(name, key);
        } else {
            refuseLonger(name, longest);
        }
        return text;
    }

    public Optional<String> optional(String name, int longest) {
        refuseLonger(name, longest);
        return Optional.of(text(name)).filter(text -> !text.isEmpty());
    }

    /**
     * Empty where nothing was typed, or where it cannot be taken: then there is an error.
     *
     * @param what key of what the number is called at the start of a sentence
     */
    public OptionalDouble decimal(String name, String what) {
        String text = text(name);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        OptionalDouble number = TypedNumber.decimal(text);
        if (number.isEmpty()) {
            refuse(name, "frame.form.notANumber", say(what), text);
        }
        return number;
    }

    /**
     * As {@link #decimal(String, String)}; one that is less or more is refused, and stands nonetheless.
     *
     * @param wrong what is said then
     */
    public OptionalDouble decimal(String name, String what, double least, double most, Saying wrong) {
        OptionalDouble number = decimal(name, what);
        if (number.isPresent() && !(number.getAsDouble() >= least && number.getAsDouble() <= most)) {
            refuse(name, wrong);
        }
        return number;
    }

    /** As {@link #decimal(String, String, double, double, Saying)}, a temperature as it is typed on a scale, °C. */
    public OptionalDouble celsius(String name, String what, Scale scale, double leastC, double mostC, Saying wrong) {
        OptionalDouble typed = decimal(name, what, scale.of(leastC), scale.of(mostC), wrong);
        return typed.isPresent() ? OptionalDouble.of(scale.toCelsius(typed.getAsDouble())) : typed;
    }

    public Optional<LocalDate> day(String name, String what) {
        String text = text(name);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException e) {
            refuse(name, "frame.form.notADay", say(what), text);
            return Optional.empty();
        }
    }

    /** The first sentence about a field is the one that is shown. */
    public void refuse(String name, String key, Object... with) {
        refuse(name, Saying.of(key, with));
    }

    public void refuse(String name, Saying saying) {
        errors.putIfAbsent(name, speech.say(saying));
    }

    public boolean wrong(String name) {
        return errors.containsKey(name);
    }

    public boolean ok() {
        return errors.isEmpty();
    }

    /** What is to be put right, each sentence once. */
    public List<String> faults() {
        return errors.values().stream().distinct().toList();
    }

    /**
     * Writes what the form says.
     *
     * @param uniqueField the field that must differ from every other thing's
     * @param taken what is said where it does not
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
        overtaken = true;
    }

    public FormField textBox(String name, String label) {
        return textBox(name, Saying.of(label));
    }

    public FormField textBox(String name, Saying label) {
        return withError(FormField.text(name, say(label), text(name)));
    }

    public FormField numberBox(String name, String label, String unit) {
        return withError(FormField.number(name, say(label), unit, text(name)));
    }

    public FormField dayBox(String name, String label) {
        return textBox(name, label).withType("date", "off");
    }

    public FormField choice(String name, String label, List<Option> options) {
        return choice(name, Saying.of(label), options);
    }

    public FormField choice(String name, Saying label, List<Option> options) {
        return withError(FormField.select(name, say(label), text(name), options));
    }

    /** A field that says that it may stay empty. */
    public FormField optional(FormField field) {
        return field.withLabel(say("frame.form.optional", field.label()));
    }

    private FormField withError(FormField field) {
        return field.withError(errors.getOrDefault(field.name(), ""));
    }

    private void refuseLonger(String name, int longest) {
        if (text(name).length() > longest) {
            refuse(name, "frame.form.tooLong", text(name).length(), longest);
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
