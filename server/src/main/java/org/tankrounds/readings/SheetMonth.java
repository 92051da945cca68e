package org.tankrounds.readings;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tankrounds.pages.SheetPage.OtherMonth;
import org.tankrounds.places.Tank;
import org.tankrounds.web.Formats;
import org.tankrounds.web.RefusedException;
import org.tankrounds.words.Saying;

/**
 * A month on paper.
 *
 * @param today on the school's clock
 */
record SheetMonth(YearMonth month, LocalDate today) {
    static final String MONTH = "month";
    private static final int FIRST_YEAR = 2000;
    private static final int LAST_YEAR = 2100;
    private static final int NO_SUCH_MONTH = 400;

    /** @param asked such as 2026-12; null is the month that it is */
    static SheetMonth of(String asked, Tank tank, Instant now) {
        LocalDate today = LocalDate.ofInstant(now, tank.zone());
        YearMonth month = asked == null ? YearMonth.from(today) : read(asked);
        if (month.getYear() < FIRST_YEAR || month.getYear() > LAST_YEAR) {
            throw noSuchMonth();
        }
        return new SheetMonth(month, today);
    }

    private static YearMonth read(String asked) {
        try {
            return YearMonth.parse(asked);
        } catch (DateTimeException e) {
            throw noSuchMonth();
        }
    }

    private static RefusedException noSuchMonth() {
        return RefusedException.of(NO_SUCH_MONTH, Saying.of("paper.noSuchMonth"));
    }

    List<LocalDate> days() {
        return IntStream.rangeClosed(1, month.lengthOfMonth()).mapToObj(month::atDay).toList();
    }

    static boolean isWeekend(LocalDate day) {
        return Set.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY).contains(day.getDayOfWeek());
    }

    /** The one before and the one after. */
    List<OtherMonth> others(String page, Formats formats) {
        return Stream.of(month.minusMonths(1), month.plusMonths(1))
                .map(other -> new OtherMonth(formats.month(other), page + "?" + MONTH + "=" + other)).toList();
    }
}
