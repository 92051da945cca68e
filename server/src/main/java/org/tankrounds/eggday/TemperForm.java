package org.tankrounds.eggday;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.tankrounds.fish.Stage;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.FormField.Option;
import org.tankrounds.places.Tank;
import org.tankrounds.season.TypedMoment;
import org.tankrounds.transport.Tempering;
import org.tankrounds.transport.Tempering.Pace;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.Range;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Speech;
import org.tankrounds.web.TypedNumber;
import org.tankrounds.words.Saying;

/** The form at the tank: what the water that the eggs came in reads, and the tank's. */
final class TemperForm {
    private static final String COOLER = "cooler_at_tank";
    private static final String TANK = "tank";
    private static final String PH = "tank_ph";
    private static final String PACE = "pace";
    private static final String FROM = "tempering_from";
    static final Map<String, Saying> LABELS = labels();
    private static final Range TANK_C = new Range(0, 35);

    private final Tank tank;
    private final Instant now;
    private final Speech speech;

    TemperForm(Tank tank, Instant now, Speech speech) {
        this.tank = tank;
        this.now = now;
        this.speech = speech;
    }

    Map<String, String> textOf(Optional<EggStop.Tempered> tempered) {
        Map<String, String> text = new LinkedHashMap<>();
        text.put(COOLER, tempered.map(known -> TypedTemperature.text(known.coolerC(), speech)).orElse(""));
        text.put(TANK, tempered.map(known -> TypedTemperature.text(known.tankC(), speech)).orElse(""));
        text.put(PH, tempered.filter(known -> known.ph().isPresent())
                .map(known -> TypedNumber.text(known.ph().getAsDouble(), 2)).orElse(""));
        text.put(PACE, code(tempered.map(EggStop.Tempered::pace).orElse(Pace.QUICK)));
        text.put(FROM, tempered.map(known -> TypedMoment.CLOCK.format(
                LocalDateTime.ofInstant(known.from(), tank.zone()))).orElse(""));
        return text;
    }

    /** Empty where something cannot be taken; the form says so. */
    Optional<EggStop.Tempered> parse(FormInput form) {
        OptionalDouble cooler =
                TypedTemperature.of(form, COOLER, "eggday.temper.cooler.none", CheckForm.COOLER_C, speech);
        OptionalDouble water = TypedTemperature.of(form, TANK, "eggday.temper.tank.none", TANK_C, speech);
        OptionalDouble ph = form.decimal(PH, "eggday.temper.ph");
        if (ph.isPresent() && !Analyte.PH.possible().holds(ph.getAsDouble())) {
            form.refuse(PH, "eggday.temper.ph.outside");
        }
        Optional<Pace> pace = Stream.of(Pace.values()).filter(one -> code(one).equals(form.text(PACE))).findFirst();
        if (pace.isEmpty()) {
            form.refuse(PACE, "eggday.temper.pace.none");
        }
        LocalDateTime local = LocalDateTime.ofInstant(now, tank.zone());
        Optional<Instant> from = TypedMoment.of(form, FROM, local.toLocalDate(), local.toLocalTime(), tank.zone());
        return form.ok() ? Optional.of(new EggStop.Tempered(cooler.getAsDouble(), water.getAsDouble(), ph,
                pace.orElseThrow(), from.orElseThrow())) : Optional.empty();
    }

    List<FormField> boxes(FormInput form) {
        String sign = speech.scale().sign();
        return List.of(
                form.numberBox(COOLER, "eggday.temper.cooler", sign),
                form.numberBox(TANK, "eggday.temper.tank", sign),
                form.optional(form.numberBox(PH, "eggday.temper.ph", "")),
                form.optional(form.textBox(FROM, "eggday.temper.from")).withType("time", "off")
                        .withHint(form.say("eggday.temper.from.hint")),
                form.choice(PACE, "eggday.temper.pace", Stream.of(Pace.QUICK, Pace.SLOW).map(pace -> new Option(
                        code(pace), form.say("eggday.temper.pace." + code(pace),
                                Tempering.minutesPerK(Stage.EGG, pace), oneDegree()))).toList()));
    }

    private String oneDegree() {
        return TypedNumber.text(speech.scale().ofDifference(1), 1) + "\u00a0" + speech.scale().sign();
    }

    private static String code(Pace pace) {
        return pace.name().toLowerCase(Locale.ROOT);
    }

    private static Map<String, Saying> labels() {
        Map<String, Saying> labels = new LinkedHashMap<>();
        labels.put(COOLER, Saying.of("eggday.temper.cooler"));
        labels.put(TANK, Saying.of("eggday.temper.tank"));
        labels.put(PH, Saying.of("eggday.temper.ph"));
        labels.put(PACE, Saying.of("eggday.temper.pace"));
        labels.put(FROM, Saying.of("eggday.temper.from"));
        return labels;
    }
}
