package org.tankrounds.rounds;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Optional;
import org.tankrounds.web.Formats;

/**
 * A past moment at which somebody looks at the rounds again.
 *
 * @param asOf the moment; a day alone means its school morning on the chapter's clock
 * @param zone the chapter's clock
 */
record Morning(Instant asOf, ZoneId zone) {
    /** When a coordinator looks before work (common practice, no source). */
    static final LocalTime AT = LocalTime.of(8, 0);
    private static final int FIRST_YEAR = 2000;

    /** There is no such morning. */
    static final class NoSuchMorning extends Exception {
        private final transient Optional<LocalDate> latest;

        /** @param latest that can be chosen, of a morning to come; empty of what is no day */
        private NoSuchMorning(Optional<LocalDate> latest) {
            super(null, null, false, false);
            this.latest = latest;
        }

        /** What to choose instead. */
        String sentence(Formats formats) {
            return latest.map(day -> formats.speech().say("morning.yetToCome", formats.longDate(day)))
                    .orElseGet(() -> formats.speech().say("morning.noDay"));
        }
    }

    /** @param text a day such as 2026-11-20, or a time with its offset */
    static Morning of(String text, ZoneId zone, Instant now) throws NoSuchMorning {
        Instant asOf = parsed(text.strip(), zone);
        if (asOf.isAfter(now)) {
            throw new NoSuchMorning(Optional.of(latest(zone, now).day()));
        }
        return new Morning(asOf, zone);
    }

    /** The newest morning that has been, school day or not. */
    static Morning latest(ZoneId zone, Instant now) {
        Morning today = on(now.atZone(zone).toLocalDate(), zone);
        return today.asOf.isAfter(now) ? on(today.day().minusDays(1), zone) : today;
    }

    private static Instant parsed(String text, ZoneId zone) throws NoSuchMorning {
        try {
            // A plus sign that was not escaped arrives as a space.
            Instant asOf = text.contains("T") ? OffsetDateTime.parse(text.replace(' ', '+')).toInstant()
                    : on(LocalDate.parse(text), zone).asOf;
            if (asOf.atZone(zone).getYear() >= FIRST_YEAR) {
                return asOf;
            }
        } catch (DateTimeException e) {
            // The same sentence says what is allowed.
        }
        throw new NoSuchMorning(Optional.empty());
    }

    static Morning on(LocalDate day, ZoneId zone) {
        return new Morning(day.atTime(AT).atZone(zone).toInstant(), zone);
    }

    LocalDate day() {
        return asOf.atZone(zone).toLocalDate();
    }

    /** The school morning before: Monday to Friday, for holidays are not written down anywhere. */
    Morning before() {
        return step(-1);
    }

    Morning after() {
        return step(1);
    }

    private Morning step(int days) {
        LocalDate day = day().plusDays(days);
        while (day.getDayOfWeek() == DayOfWeek.SATURDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY) {
            day = day.plusDays(days);
        }
        return on(day, zone);
    }
}
