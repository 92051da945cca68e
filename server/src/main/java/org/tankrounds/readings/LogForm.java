package org.tankrounds.readings;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.tankrounds.readings.GivenReading.GivenValue;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;
import org.tankrounds.web.FieldError;
import org.tankrounds.web.Secrets;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Saying;

/**
 * What was typed into the page of a reading. Field names are the analytes' public names; a value whose unit can be
 * chosen has it in a field of its own. Names of faults are field names here, not JSON pointers.
 */
final class LogForm {
    static final String SUBMISSION = "submission_id";
    static final String KIT = "kit";
    static final String OTHER_KIT = "other_kit";
    static final String MEASURED_AT = "measured_at";
    static final String NOTE = "note";
    static final String BY = "by";
    /** Which names and meanings the form has; a device may send one that it kept long ago. */
    static final String VERSION = "form_version";
    static final int CURRENT_VERSION = 4;
    private static final int OLDEST_VERSION = 1;
    static final String KEPT_AT = "kept_at";
    static final String SENT_AT = "sent_at";
    /** How far the device's clock was ahead of ours when they last met before the reading was kept, ms. */
    static final String CLOCK_AHEAD = "clock_ahead";
    /** What differs between two sendings of the same reading, and says nothing about the tank. */
    private static final Set<String> OF_THE_SENDING = Set.of(
            SUBMISSION, VERSION, KEPT_AT, SENT_AT, CLOCK_AHEAD, "device_zone", "device_offset", "build", OpenedWith.KIT,
            OpenedWith.SCALE);
    static final String UNIT = "_unit";
    /** Box beside a card, for what was read by a meter. */
    static final String TYPED = "_typed";
    /** The button of somebody who looked in and found all well: none dead, and nothing else to tell. */
    static final String ALL_WELL = "all_well";
    /** Answer to "is that right?": {@code yes} or {@code swap}, with the number asked about and a unit. */
    static final String SURE = "sure_";
    private static final String SWAP = "swap";
    static final String WHOLE = "/form";
    private static final int LONGEST_FIELD = 20_000;

    private final Map<String, String> typed;

    LogForm(Map<String, String> typed) {
        this.typed = new TreeMap<>(typed);
    }

    static LogForm of(Context ctx) {
        Map<String, String> typed = new TreeMap<>();
        ctx.formParamMap().forEach((name, values) -> {
            if (!name.equals("form_token") && !values.isEmpty() && name.length() <= 60) {
                typed.put(name, cut(values.get(0)));
            }
        });
        return new LogForm(typed);
    }

    static String cut(String value) {
        return value.length() > LONGEST_FIELD ? value.substring(0, LONGEST_FIELD) : value;
    }

    String text(String name) {
        return typed.getOrDefault(name, "");
    }

    String text(Analyte analyte) {
        return text(analyte.code());
    }

    LogForm with(String name, String value) {
        LogForm changed = new LogForm(typed);
        changed.typed.put(name, value);
        return changed;
    }

    /** What was typed and nothing about how often it was asked. */
    byte[] fingerprint() {
        StringBuilder all = new StringBuilder();
        typed.forEach((name, value) -> {
            if (!OF_THE_SENDING.contains(name) && !name.startsWith(SURE)) {
                all.append(name).append('\u001f').append(value).append('\u001e');
            }
        });
        return Secrets.sha256(all.toString().getBytes(StandardCharsets.UTF_8));
    }

    /** One from before forms had a version says none. */
    void checkVersion(Faults faults) {
        String version = text(VERSION).strip();
        boolean known = version.isEmpty() || version.matches("\\d{1,4}")
                && Integer.parseInt(version) >= OLDEST_VERSION && Integer.parseInt(version) <= CURRENT_VERSION;
        if (!known || !ShownCards.isReadable(text(ShownCards.FIELD))) {
            faults.add(WHOLE, Saying.of("log.unknownVersion"));
        }
    }

    /** @param forms unit and form of each box, unless it can be chosen beside it */
    GivenReading read(Map<Analyte, UnitForm> forms, ZoneId zone, Faults faults) {
        List<GivenValue> values = new ArrayList<>();
        forms.forEach((analyte, form) -> value(analyte, form, faults).ifPresent(values::add));
        return new GivenReading(measuredAt(zone, faults),
                PlainText.check(text(BY), Saying.of("log.theLabel"), ReadingParser.LONGEST_BY, false,
                        sentence -> faults.add(BY, sentence)),
                PlainText.check(text(NOTE), Saying.of("log.theNote"), ReadingParser.LONGEST_NOTE, true,
                        sentence -> faults.add(NOTE, sentence)),
                values);
    }

    private Optional<GivenValue> value(Analyte analyte, UnitForm form, Faults faults) {
        String box = analyte.code() + TYPED;
        if (text(box).isBlank()) {
            return value(analyte, analyte.code(), form, true, faults);
        }
        if (!text(analyte).isBlank()) {
            faults.add(box, Saying.of("log.cardAndTyped", Wording.name(analyte), text(analyte).strip(),
                    text(box).strip()));
            return Optional.empty();
        }
        return value(analyte, box, form, false, faults);
    }

    private Optional<GivenValue> value(Analyte analyte, String box, UnitForm form, boolean byCard, Faults faults) {
        return TypedValue.read(analyte, text(box), sentence -> faults.add(box, sentence))
                .map(typedValue -> {
                    UnitForm meant = typedValue.unit().map(UnitForm::of).orElse(chosen(analyte, form));
                    return new GivenValue(box, analyte, ReadingParser.plain(typedValue.number()), meant.unit(),
                            Optional.of(meant.as()).filter(as -> !as.isEmpty()), Optional.empty(), false, byCard);
                });
    }

    private UnitForm chosen(Analyte analyte, UnitForm usual) {
        UnitForm chosen = UnitForm.of(text(analyte.code() + UNIT));
        return analyte.accepts(chosen) ? chosen : usual;
    }

    /** A look at which all was well counts none dead, unless somebody counted. */
    LogForm looked() {
        return text(ALL_WELL).isEmpty() || !text(Analyte.DEATHS).isBlank() ? this : with(Analyte.DEATHS.code(), "0");
    }

    /** The form as it is meant where the answer to "is that right?" was that the thermometer has the other scale. */
    LogForm settled() {
        String[] answer = text(SURE + Analyte.TEMPERATURE.code()).split(" ");
        if (answer.length != 3 || !answer[0].equals(SWAP)) {
            return this;
        }
        Optional<TypedValue> typedValue = TypedValue.read(Analyte.TEMPERATURE, text(Analyte.TEMPERATURE), fault -> {});
        if (typedValue.isEmpty() || !typedValue.get().number().toPlainString().equals(answer[1])) {
            return this;
        }
        return with(Analyte.TEMPERATURE.code(), answer[1])
                .with(Analyte.TEMPERATURE.code() + UNIT, answer[2])
                .with(SURE + Analyte.TEMPERATURE.code(), "");
    }

    /** The thermometer's other scale. */
    static UnitForm otherScale(String unit) {
        return UnitForm.of(unit.equals("Cel") ? "[degF]" : "Cel");
    }

    /** Analytes of which the writer said "yes, that is right", as long as the value is still the one asked about. */
    Set<Analyte> confirmed(GivenReading given) {
        Set<Analyte> confirmed = EnumSet.noneOf(Analyte.class);
        for (GivenValue value : given.values()) {
            if (text(SURE + value.analyte().code()).equals(answerYes(value.value().toPlainString(), value.unit()))) {
                confirmed.add(value.analyte());
            }
        }
        return confirmed;
    }

    /** Whether the writer said that a time still to come is right, as long as it is still the one asked about. */
    boolean timeConfirmed() {
        return !text(MEASURED_AT).isBlank() && text(SURE + MEASURED_AT).equals(answerYes(text(MEASURED_AT).strip()));
    }

    static String answerYes(String time) {
        return "yes " + time;
    }

    static String answerSwap(String value, String unit) {
        return SWAP + " " + value + " " + unit;
    }

    static String answerYes(String value, String unit) {
        return "yes " + value + " " + unit;
    }

    private Optional<Instant> measuredAt(ZoneId zone, Faults faults) {
        String text = text(MEASURED_AT).strip();
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            LocalDateTime local = LocalDateTime.parse(text.replace(' ', 'T').replaceAll("T(\\d):", "T0$1:"));
            if (zone.getRules().getValidOffsets(local).isEmpty()) {
                faults.add(MEASURED_AT, Saying.of("log.noSuchTime", local.toLocalTime()));
                return Optional.empty();
            }
            // Where the clocks went back, a time comes twice: the earlier one is taken.
            return Optional.of(local.atZone(zone).toInstant().truncatedTo(ChronoUnit.MICROS));
        } catch (DateTimeException e) {
            faults.add(MEASURED_AT, Saying.of("log.noTime"));
            return Optional.empty();
        }
    }

    /** Faults by the field that they stand beside. */
    static Map<String, String> byField(Faults faults, Speech speech) {
        Map<String, String> sentences = new TreeMap<>();
        faults.errors().forEach(error -> sentences.putIfAbsent(field(error.field()),
                speech.say(sentence(error))));
        return sentences;
    }

    private static String field(String at) {
        return switch (at) {
            case "/measuredAt" -> MEASURED_AT;
            case "/values", WHOLE -> Analyte.TEMPERATURE.code();
            default -> at.replaceFirst("/.*", "");
        };
    }

    /** Where a page says it otherwise than the interface for scripts. */
    private static Saying sentence(FieldError error) {
        return switch (error.field()) {
            case "/measuredAt" -> Saying.of("log.impossibleTime");
            case "/values" -> Saying.of("log.empty");
            default -> error.saying();
        };
    }
}
