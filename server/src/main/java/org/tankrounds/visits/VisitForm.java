package org.tankrounds.visits;

import io.javalin.http.Context;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tankrounds.web.FormInput;

/** The form by which a visit is written down. */
final class VisitForm {
    static final String DEEDS = "deeds";
    static final String DAY = "day";
    static final String TIME = "time";
    static final String NOTE = "note";
    static final List<String> NAMES = List.of(DEEDS, DAY, TIME, NOTE);
    private static final int LONGEST_NOTE = 500;
    private static final int LONGEST_AGO_DAYS = 400;

    private final ZoneId zone;
    private final Instant now;

    VisitForm(ZoneId zone, Instant now) {
        this.zone = zone;
        this.now = now;
    }

    Map<String, String> blank() {
        Map<String, String> text = new LinkedHashMap<>();
        NAMES.forEach(name -> text.put(name, ""));
        text.put(DAY, today().toString());
        return text;
    }

    static List<Deed> deeds(Context ctx) {
        return ctx.formParams(DEEDS).stream().flatMap(code -> Deed.ofCode(code).stream()).distinct().sorted().toList();
    }

    /** Empty where something cannot be taken; the form says so. */
    Optional<Visit> parse(FormInput form, List<Deed> deeds) {
        if (deeds.isEmpty()) {
            form.refuse(DEEDS, "visits.deeds.none");
        }
        if (form.text(DAY).isEmpty()) {
            form.refuse(DAY, "visits.day.none");
        }
        Optional<LocalDate> day = form.day(DAY, "visits.day.what");
        if (day.filter(known -> known.isAfter(today())).isPresent()) {
            form.refuse(DAY, "visits.day.ahead");
        } else if (day.filter(known -> known.isBefore(today().minusDays(LONGEST_AGO_DAYS))).isPresent()) {
            form.refuse(DAY, "visits.day.longAgo");
        }
        Optional<Instant> at = day.flatMap(known -> at(form, known));
        Optional<String> note = form.optional(NOTE, LONGEST_NOTE);
        return form.ok() ? Optional.of(new Visit(0, at.orElseThrow(), deeds, note, "")) : Optional.empty();
    }

    /** Without a time: today's was by now, another day's at noon. */
    private Optional<Instant> at(FormInput form, LocalDate day) {
        LocalTime whereEmpty = day.equals(today()) ? LocalDateTime.ofInstant(now, zone).toLocalTime() : LocalTime.NOON;
        try {
            LocalTime typed = form.text(TIME).isEmpty() ? whereEmpty : LocalTime.parse(form.text(TIME));
            Instant at = day.atTime(typed.truncatedTo(ChronoUnit.MINUTES)).atZone(zone).toInstant();
            if (at.isAfter(now)) {
                form.refuse(TIME, "visits.time.ahead");
            }
            return Optional.of(at);
        } catch (DateTimeException e) {
            form.refuse(TIME, "visits.time.wrong", form.text(TIME));
            return Optional.empty();
        }
    }

    private LocalDate today() {
        return now.atZone(zone).toLocalDate();
    }

    static String id(Deed deed) {
        return Arrays.stream(Deed.values()).findFirst().orElseThrow() == deed ? DEEDS : DEEDS + "-" + deed.code();
    }
}
