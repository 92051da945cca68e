package org.tankrounds.season;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.tankrounds.web.FormInput;

/** A day and a time of day as typed into a form, on the school's clock. */
public final class TypedMoment {
    public static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

    private TypedMoment() {}

    /**
     * @param time name of the box, which may stay empty
     * @param whereEmpty taken then
     * @return empty where there was no such time; the form says so
     */
    public static Optional<Instant> of(FormInput form, String time, LocalDate day, LocalTime whereEmpty, ZoneId zone) {
        try {
            LocalTime typed = form.text(time).isEmpty() ? whereEmpty : LocalTime.parse(form.text(time));
            LocalDateTime local = day.atTime(typed.truncatedTo(ChronoUnit.MINUTES));
            if (zone.getRules().getValidOffsets(local).isEmpty()) {
                form.refuse(time, "season.time.skipped", CLOCK.format(local));
                return Optional.empty();
            }
            return Optional.of(local.atZone(zone).toInstant());
        } catch (DateTimeException e) {
            form.refuse(time, "season.time.wrong", form.text(time));
            return Optional.empty();
        }
    }
}
