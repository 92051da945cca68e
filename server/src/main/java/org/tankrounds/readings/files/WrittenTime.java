package org.tankrounds.readings.files;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A date, a time of day or both, as a cell has it: how they are to be taken may depend on the other cells.
 *
 * @param epoch a moment counted in seconds or milliseconds since 1970; then there is nothing else
 */
record WrittenTime(
        Optional<WrittenDate> date, Optional<LocalTime> time, Optional<ZoneOffset> offset, Optional<Instant> epoch) {

    /**
     * Three numbers of a date.
     *
     * @param first the year where {@code yearFirst}, then month and day; else the year is the third
     */
    record WrittenDate(int first, int second, int third, boolean yearFirst) {

        /** Empty where there is no such day. */
        Optional<LocalDate> day(DateOrder order) {
            if (yearFirst) {
                return valid(first, second, third);
            }
            int year = third < 100 ? 2000 + third : third;
            return order == DateOrder.DAY_MONTH ? valid(year, second, first) : valid(year, first, second);
        }

        private static Optional<LocalDate> valid(int year, int month, int day) {
            try {
                return Optional.of(LocalDate.of(year, month, day));
            } catch (DateTimeException e) {
                return Optional.empty();
            }
        }
    }

    private static final String DATE = "(?:(?<year>\\d{4})[-/.](?<month>\\d{1,2})[-/.](?<day>\\d{1,2})"
            + "|(?<first>\\d{1,2})[-/.](?<second>\\d{1,2})[-/.](?<last>\\d{4}|\\d{2})"
            + "|(?<dayOf>\\d{1,2})[-\\s.](?<named>\\p{L}{3,10})\\.?[-\\s,]+(?<namedYear>\\d{4}|\\d{2})"
            + "|(?<named2>\\p{L}{3,10})\\.?\\s(?<dayOf2>\\d{1,2}),?\\s(?<namedYear2>\\d{4}))";
    private static final String TIME = "(?<hour>\\d{1,2}):(?<minute>\\d{2})(?::(?<secs>\\d{2})(?:[.,]\\d{1,9})?)?"
            + "(?:\\s*(?<half>[AaPp])\\.?\\s?[Mm]\\.?)?";
    private static final String OFFSET = "(?:\\s*(?<zone>Z|UTC|GMT|(?:UTC|GMT)?[+-]\\d{2}:?\\d{2}))?";
    private static final Pattern FORM =
            Pattern.compile("(?:" + DATE + ")?(?:(?:[Tt]|,?\\s+|^)" + TIME + OFFSET + ")?");
    private static final Pattern EPOCH = Pattern.compile("(\\d{10})(?:\\.\\d{1,6})?|(\\d{13})");
    private static final Pattern SERIAL = Pattern.compile("\\d{5}(?:[.,]\\d{1,12})?");
    private static final long YEAR_2000 = 946_684_800L;
    private static final LocalDate SERIAL_ZERO = LocalDate.of(1899, 12, 30);
    private static final int LONGEST = 40;
    private static final String MONTHS = "jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec";
    private static final String MESES = "ene|feb|mar|abr|may|jun|jul|ago|sep|oct|nov|dic";

    /** Empty for what is no time. */
    static Optional<WrittenTime> read(String cell) {
        String text = cell.strip();
        if (text.isEmpty() || text.length() > LONGEST) {
            return Optional.empty();
        }
        Matcher epoch = EPOCH.matcher(text);
        if (epoch.matches()) {
            return epoch(epoch);
        }
        Matcher form = FORM.matcher(text);
        return form.matches() ? read(form) : Optional.empty();
    }

    /** Days since the end of 1899, as spreadsheets count them; local time. */
    static Optional<WrittenTime> readSerial(String cell) {
        String text = cell.strip();
        if (!SERIAL.matcher(text).matches()) {
            return Optional.empty();
        }
        BigDecimal days = new BigDecimal(text.replace(',', '.'));
        long seconds = days.remainder(BigDecimal.ONE).multiply(BigDecimal.valueOf(86_400))
                .setScale(0, RoundingMode.HALF_UP).longValue();
        LocalDate day = SERIAL_ZERO.plusDays(days.longValue() + seconds / 86_400);
        return Optional.of(new WrittenTime(
                Optional.of(new WrittenDate(day.getYear(), day.getMonthValue(), day.getDayOfMonth(), true)),
                Optional.of(LocalTime.ofSecondOfDay(seconds % 86_400)), Optional.empty(), Optional.empty()));
    }

    boolean isMoment() {
        return epoch.isPresent() || date.isPresent() && time.isPresent();
    }

    /** The date of this cell with the time of day of another. */
    WrittenTime with(WrittenTime clock) {
        return new WrittenTime(date, clock.time(), clock.offset(), epoch);
    }

    /** The date of this cell at a time of day. */
    WrittenTime at(LocalTime clock) {
        return new WrittenTime(date, Optional.of(clock), offset, epoch);
    }

    private static Optional<WrittenTime> epoch(Matcher epoch) {
        Instant moment = epoch.group(1) == null
                ? Instant.ofEpochMilli(Long.parseLong(epoch.group(2)))
                : Instant.ofEpochSecond(Long.parseLong(epoch.group(1)));
        return moment.getEpochSecond() < YEAR_2000 ? Optional.empty() : Optional.of(
                new WrittenTime(Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(moment)));
    }

    private static Optional<WrittenTime> read(Matcher form) {
        Optional<WrittenDate> date = date(form);
        Optional<LocalTime> time = time(form);
        boolean unreadable = date.isEmpty() && isNamed(form) || time.isEmpty() && form.group("hour") != null;
        return unreadable || date.isEmpty() && time.isEmpty() ? Optional.empty()
                : Optional.of(new WrittenTime(date, time, offset(form.group("zone")), Optional.empty()));
    }

    private static boolean isNamed(Matcher form) {
        return form.group("named") != null || form.group("named2") != null;
    }

    private static Optional<WrittenDate> date(Matcher form) {
        if (form.group("year") != null) {
            return Optional.of(new WrittenDate(number(form, "year"), number(form, "month"), number(form, "day"), true));
        }
        if (form.group("first") != null) {
            return Optional.of(
                    new WrittenDate(number(form, "first"), number(form, "second"), number(form, "last"), false));
        }
        if (form.group("named") != null) {
            return named(form.group("named"), number(form, "dayOf"), number(form, "namedYear"));
        }
        return form.group("named2") == null ? Optional.empty()
                : named(form.group("named2"), number(form, "dayOf2"), number(form, "namedYear2"));
    }

    private static Optional<WrittenDate> named(String month, int day, int year) {
        String start = month.toLowerCase(Locale.ROOT).substring(0, 3);
        for (String names : new String[] {MONTHS, MESES}) {
            int at = ("|" + names).indexOf("|" + start);
            if (at >= 0) {
                return Optional.of(new WrittenDate(year < 100 ? 2000 + year : year, at / 4 + 1, day, true));
            }
        }
        return Optional.empty();
    }

    private static Optional<LocalTime> time(Matcher form) {
        if (form.group("hour") == null) {
            return Optional.empty();
        }
        int hour = number(form, "hour");
        if (form.group("half") != null) {
            if (hour < 1 || hour > 12) {
                return Optional.empty();
            }
            hour = hour % 12 + (form.group("half").equalsIgnoreCase("p") ? 12 : 0);
        }
        int second = form.group("secs") == null ? 0 : number(form, "secs");
        return hour > 23 || number(form, "minute") > 59 || second > 59
                ? Optional.empty() : Optional.of(LocalTime.of(hour, number(form, "minute"), second));
    }

    private static Optional<ZoneOffset> offset(String zone) {
        if (zone == null) {
            return Optional.empty();
        }
        String signed = zone.replaceFirst("UTC|GMT|Z", "");
        try {
            return Optional.of(signed.isEmpty() ? ZoneOffset.UTC : ZoneOffset.of(signed));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static int number(Matcher form, String group) {
        return Integer.parseInt(form.group(group));
    }
}
