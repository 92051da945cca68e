package org.tankrounds.calendar;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.tankrounds.fish.DateWindow;
import org.tankrounds.fish.Milestone;
import org.tankrounds.season.Lot;
import org.tankrounds.web.FormInput;

/** What a class saw its lot come to, and on which day. */
final class SeenForm {
    static final String MILESTONE = "milestone";
    static final String DAY = "day";
    /** Hidden: the day that was asked about when the form was shown. */
    static final String ASKED = "asked_day";
    static final List<String> NAMES = List.of(MILESTONE, DAY);
    /** Further from its window, a day is asked about once (the project's choice). */
    private static final Duration FAR = Duration.ofDays(7);

    record Seen(Milestone milestone, LocalDate day) {}

    private final TankAhead ahead;

    SeenForm(TankAhead ahead) {
        this.ahead = ahead;
    }

    static Map<String, String> blank() {
        Map<String, String> text = new LinkedHashMap<>();
        NAMES.forEach(name -> text.put(name, ""));
        return text;
    }

    /** In addresses and forms. */
    static String code(Milestone milestone) {
        return milestone.name().toLowerCase(Locale.ROOT);
    }

    /** @param asked the day that was asked about before; null for none */
    Optional<Seen> parse(FormInput form, String asked) {
        Optional<Milestone> milestone = Arrays.stream(Milestone.values())
                .filter(one -> code(one).equals(form.text(MILESTONE))).findFirst();
        if (milestone.isEmpty()) {
            form.refuse(MILESTONE, "calendar.see.noMilestone");
        }
        if (form.text(DAY).isEmpty()) {
            form.refuse(DAY, "calendar.see.noDay");
        }
        Optional<LocalDate> day = form.day(DAY, "calendar.see.day");
        if (form.ok()) {
            check(form, milestone.orElseThrow(), day.orElseThrow(), asked);
        }
        return form.ok() ? Optional.of(new Seen(milestone.orElseThrow(), day.orElseThrow())) : Optional.empty();
    }

    private void check(FormInput form, Milestone milestone, LocalDate day, String asked) {
        Lot lot = ahead.lot().orElseThrow();
        LocalDate came = lot.receivedAt().atZone(ahead.tank().zone()).toLocalDate();
        if (day.isAfter(ahead.asOf().atZone(ahead.tank().zone()).toLocalDate())) {
            form.refuse(DAY, "calendar.see.ahead");
        } else if (day.isBefore(came)) {
            form.refuse(DAY, "calendar.see.beforeEggs", form.date(came));
        } else {
            checkOrder(form, milestone, day, lot);
        }
        DateWindow window = ahead.dates().orElseThrow().of(milestone);
        Instant noon = day.atTime(LocalTime.NOON).atZone(ahead.tank().zone()).toInstant();
        boolean isFar = noon.isBefore(window.earliest().minus(FAR)) || noon.isAfter(window.latest().plus(FAR));
        if (form.ok() && isFar && !day.toString().equals(asked)) {
            form.refuse(DAY, "calendar.see.far", date(form, window.earliest()), date(form, window.latest()));
        }
    }

    private static void checkOrder(FormInput form, Milestone milestone, LocalDate day, Lot lot) {
        for (Milestone other : Milestone.values()) {
            lot.seenOn().of(other).ifPresent(seen -> {
                if (other.compareTo(milestone) < 0 && day.isBefore(seen)) {
                    form.refuse(DAY, "calendar.see.beforeEarlier", form.date(seen));
                } else if (other.compareTo(milestone) > 0 && day.isAfter(seen)) {
                    form.refuse(DAY, "calendar.see.afterLater", form.date(seen));
                }
            });
        }
    }

    private String date(FormInput form, Instant at) {
        return form.date(at.atZone(ahead.tank().zone()).toLocalDate());
    }
}
