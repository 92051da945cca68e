package org.tankrounds.eggday;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.tankrounds.eggday.CoolerCheck.Where;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.FormField.Option;
import org.tankrounds.season.TypedMoment;
import org.tankrounds.water.Range;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Speech;

/** The form by which somebody on the road writes down how warm the cooler is. */
final class CheckForm {
    static final String TEMPERATURE = "cooler";
    private static final String TIME = "cooler_time";
    private static final String WHERE = "cooler_where";
    static final List<String> NAMES = List.of(TEMPERATURE, TIME, WHERE);
    /** What a thermometer in a cooler can show, °C. */
    static final Range COOLER_C = new Range(-5, 40);

    private final EggRun run;
    private final ZoneId zone;
    private final Instant now;

    /** @param zone the chapter's clock */
    CheckForm(EggRun run, ZoneId zone, Instant now) {
        this.run = run;
        this.zone = zone;
        this.now = now;
    }

    static Map<String, String> blank() {
        Map<String, String> text = new LinkedHashMap<>();
        NAMES.forEach(name -> text.put(name, ""));
        text.put(WHERE, Where.ROAD.code());
        return text;
    }

    /** Empty where something cannot be taken; the form says so. */
    Optional<CoolerCheck> parse(FormInput form, Speech speech) {
        OptionalDouble celsius =
                TypedTemperature.of(form, TEMPERATURE, "eggday.check.temperature.none", COOLER_C, speech);
        Optional<Where> where = Where.ofCode(form.text(WHERE));
        if (where.isEmpty()) {
            form.refuse(WHERE, "eggday.check.where.none");
        }
        Optional<Instant> at = at(form);
        return form.ok() ? Optional.of(new CoolerCheck(0, at.orElseThrow(), celsius.getAsDouble(), where.orElseThrow(),
                "")) : Optional.empty();
    }

    static List<FormField> boxes(FormInput form, Speech speech) {
        return List.of(
                form.numberBox(TEMPERATURE, "eggday.check.temperature", speech.scale().sign()),
                form.choice(WHERE, "eggday.check.where", Stream.of(Where.values()).map(where ->
                        new Option(where.code(), form.say("eggday.where." + where.code()))).toList()),
                form.optional(form.textBox(TIME, "eggday.check.time")).withType("time", "off")
                        .withHint(form.say("eggday.check.time.hint")));
    }

    /** What is written down on a later day was read on the day of the run, and says when. */
    private Optional<Instant> at(FormInput form) {
        LocalDate today = now.atZone(zone).toLocalDate();
        boolean later = run.details().day().isBefore(today);
        if (form.text(TIME).isEmpty()) {
            if (later) {
                form.refuse(TIME, "eggday.check.time.none");
            }
            return Optional.of(now);
        }
        Optional<Instant> at =
                TypedMoment.of(form, TIME, later ? run.details().day() : today, LocalTime.NOON, zone);
        if (at.filter(moment -> moment.isAfter(now)).isPresent()) {
            form.refuse(TIME, "count.time.ahead");
        }
        return at;
    }
}
