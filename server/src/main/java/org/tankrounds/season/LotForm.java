package org.tankrounds.season;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.tankrounds.pages.FormField.Option;
import org.tankrounds.pages.FormPage.Group;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.TypedNumber;

/** A lot's form, on the school's clock. */
final class LotForm {
    static final String EGGS = "eggs";
    static final String DAY = "received_on";
    static final String TIME = "received_time";
    static final String UNITS = "thermal_units";
    static final String UNITS_IN = "thermal_units_in";
    static final String SUPPLIER = "supplier";
    static final String CERTIFICATE = "certificate";
    static final String FIRST_FEEDING = "first_feeding_on";
    static final Map<String, String> LABELS = labels();

    private static final String CELSIUS_DAYS = "Cel.d";
    private static final String FAHRENHEIT_DAYS = "degF.d";
    private static final double F_DAYS_PER_C_DAY = 1.8;
    private static final double MOST_C_DAYS = 1000;
    private static final int MOST_EGGS = 100_000;
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

    private LotForm() {}

    static Map<String, String> blank() {
        Map<String, String> text = new LinkedHashMap<>();
        LABELS.keySet().forEach(name -> text.put(name, ""));
        text.put(UNITS_IN, CELSIUS_DAYS);
        return text;
    }

    static Map<String, String> textOf(Lot lot, ZoneId zone) {
        LocalDateTime received = LocalDateTime.ofInstant(lot.receivedAt(), zone);
        Map<String, String> text = blank();
        text.put(EGGS, Integer.toString(lot.eggs()));
        text.put(DAY, received.toLocalDate().toString());
        text.put(TIME, CLOCK.format(received));
        text.put(UNITS, lot.thermalUnitsC().isPresent()
                ? TypedNumber.text(lot.thermalUnitsC().getAsDouble(), 1) : "");
        text.put(SUPPLIER, lot.supplier().orElse(""));
        text.put(CERTIFICATE, lot.certificate().orElse(""));
        text.put(FIRST_FEEDING, lot.firstFeedingOn().map(LocalDate::toString).orElse(""));
        return text;
    }

    /** @param today on the school's clock */
    static Optional<LotEdits.Details> parse(FormInput form, Season.Details season, ZoneId zone, LocalDate today) {
        int eggs = eggs(form);
        Optional<LocalDate> day = receivedOn(form, season);
        Optional<Instant> receivedAt = day.flatMap(known -> receivedAt(form, known, zone));
        OptionalDouble units = thermalUnitsC(form);
        Optional<String> supplier = form.optional(SUPPLIER, 120);
        Optional<String> certificate = form.optional(CERTIFICATE, 80);
        Optional<LocalDate> feeding = form.day(FIRST_FEEDING, "The day of first feeding");
        if (feeding.isPresent()) {
            checkFeeding(form, feeding.get(), day, season, today);
        }
        return form.ok()
                ? Optional.of(new LotEdits.Details(
                        eggs, receivedAt.orElseThrow(), units, supplier, certificate, feeding))
                : Optional.empty();
    }

    static List<Group> groups(FormInput form, Season season, ZoneId zone) {
        return List.of(
                new Group("What came", "", List.of(
                        List.of(form.numberBox(EGGS, "Eggs received", "")
                                .withHint("As the supplier counted them.")),
                        List.of(form.dayBox(DAY, "Received on")
                                        .withHint("Within the season, " + season.details().startsOn() + " to "
                                                + season.details().endsOn() + "."),
                                form.textBox(TIME, "Received at").withType("time", "off")
                                        .withHint("School's clock (" + zone.getId().replace('_', ' ') + "). Noon if "
                                                + "empty.")))),
                new Group("How far they had come", "Degree-days: for each day since fertilisation, add the water's "
                        + "degrees above freezing. 20 days at 9 °C make 180 °C-days. The supplier's slip usually says.",
                        List.of(List.of(
                                form.numberBox(UNITS, "Degree-days on arrival (optional)", "")
                                        .withHint("Unknown counts as 180 °C-days."),
                                form.choice(UNITS_IN, "Counted in", List.of(
                                        new Option(CELSIUS_DAYS, "°C-days"),
                                        new Option(FAHRENHEIT_DAYS, "°F-days (degrees above 32)")))),
                        List.of(form.dayBox(FIRST_FEEDING, "First feeding seen on (optional)")
                                .withHint("When most swim up and take food. Until then it is taken at 480 °C-days; "
                                        + "the limits for the water change there.")))),
                new Group("Papers", "", List.of(
                        List.of(form.textBox(SUPPLIER, "Supplier (optional)")),
                        List.of(form.textBox(CERTIFICATE, "Health certificate number (optional)")))));
    }

    private static int eggs(FormInput form) {
        OptionalInt eggs = TypedNumber.whole(form.required(EGGS, 20, "Give the number of eggs."));
        if (eggs.isEmpty() || eggs.getAsInt() < 1 || eggs.getAsInt() > MOST_EGGS) {
            form.refuse(EGGS, "Eggs received are a whole number from 1 to 100,000.");
        }
        return eggs.orElse(0);
    }

    private static Optional<LocalDate> receivedOn(FormInput form, Season.Details season) {
        if (form.text(DAY).isEmpty()) {
            form.refuse(DAY, "Give the day on which the eggs came.");
        }
        Optional<LocalDate> day = form.day(DAY, "The day");
        if (day.isPresent() && !season.holds(day.get())) {
            form.refuse(DAY, "The eggs can have come within the season, from " + season.startsOn() + " to "
                    + season.endsOn() + "; otherwise change the season's days first.");
        }
        return day;
    }

    private static Optional<Instant> receivedAt(FormInput form, LocalDate day, ZoneId zone) {
        try {
            LocalTime time = form.text(TIME).isEmpty() ? LocalTime.NOON : LocalTime.parse(form.text(TIME));
            LocalDateTime local = day.atTime(time.truncatedTo(ChronoUnit.MINUTES));
            if (zone.getRules().getValidOffsets(local).isEmpty()) {
                form.refuse(TIME, "There was no " + CLOCK.format(local) + " on that day: the clocks went forward.");
                return Optional.empty();
            }
            return Optional.of(local.atZone(zone).toInstant());
        } catch (DateTimeException e) {
            form.refuse(TIME, "The time is \"" + form.text(TIME) + "\"; write it such as 14:05, or leave it empty.");
            return Optional.empty();
        }
    }

    private static OptionalDouble thermalUnitsC(FormInput form) {
        String in = form.text(UNITS_IN);
        if (!in.equals(CELSIUS_DAYS) && !in.equals(FAHRENHEIT_DAYS)) {
            form.refuse(UNITS_IN, "Choose °C-days or °F-days.");
        }
        OptionalDouble typed = form.decimal(UNITS, "The number of degree-days");
        if (typed.isEmpty()) {
            return typed;
        }
        double unitsC = typed.getAsDouble() / (in.equals(FAHRENHEIT_DAYS) ? F_DAYS_PER_C_DAY : 1);
        if (!(unitsC >= 0 && unitsC <= MOST_C_DAYS)) {
            form.refuse(UNITS, "Degree-days on arrival can be from 0 to 1000 °C-days, which is 1800 °F-days.");
        }
        return OptionalDouble.of(unitsC);
    }

    private static void checkFeeding(FormInput form, LocalDate feeding, Optional<LocalDate> received,
            Season.Details season, LocalDate today) {
        if (received.isPresent() && feeding.isBefore(received.get())) {
            form.refuse(FIRST_FEEDING, "They cannot have fed before they came, on " + received.get() + ".");
        } else if (feeding.isAfter(today)) {
            form.refuse(FIRST_FEEDING, "That day is still to come; leave it empty until the class has seen them feed.");
        } else if (!season.holds(feeding)) {
            form.refuse(FIRST_FEEDING, "The day of first feeding can be within the season, from " + season.startsOn()
                    + " to " + season.endsOn() + ".");
        }
    }

    private static Map<String, String> labels() {
        Map<String, String> labels = new LinkedHashMap<>();
        labels.put(EGGS, "Eggs received");
        labels.put(DAY, "Received on");
        labels.put(TIME, "Received at");
        labels.put(UNITS, "Degree-days on arrival");
        labels.put(UNITS_IN, "Counted in");
        labels.put(FIRST_FEEDING, "First feeding seen on");
        labels.put(SUPPLIER, "Supplier");
        labels.put(CERTIFICATE, "Health certificate number");
        return labels;
    }
}
