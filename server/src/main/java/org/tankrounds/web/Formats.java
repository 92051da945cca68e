package org.tankrounds.web;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** Numbers and times as people say them, on one clock and as of one moment. */
public final class Formats {
    /** A number never stands at a line's end with its unit on the next. */
    public static final String NO_BREAK = "\u00a0";

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("H:mm", Locale.ENGLISH);
    private static final DateTimeFormatter WEEKDAY_AND_CLOCK = DateTimeFormatter.ofPattern("EEE H:mm", Locale.ENGLISH);
    private static final DateTimeFormatter SHORT_WEEKDAY = DateTimeFormatter.ofPattern("EEE", Locale.ENGLISH);
    private static final DateTimeFormatter WEEKDAY = DateTimeFormatter.ofPattern("EEEE", Locale.ENGLISH);
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter SHORT_DATE = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter FULL_DATE = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter FULL = DateTimeFormatter.ofPattern("EEE d MMM, H:mm", Locale.ENGLISH);
    /** Within a week a weekday names one day only. */
    private static final int WEEKDAY_IS_PLAIN_DAYS = 6;
    private static final int NOON = 12;
    private static final int EVENING = 17;

    private final ZoneId zone;
    private final ZonedDateTime now;

    public Formats(ZoneId zone, Instant now) {
        this.zone = zone;
        this.now = now.atZone(zone);
    }

    public Instant now() {
        return now.toInstant();
    }

    /** With so many decimals, a true minus sign and no "-0.0". */
    public static String number(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        String text = rounded.abs().toPlainString();
        return rounded.signum() < 0 ? "−" + text : text;
    }

    /** With so many digits that count, in plain notation and without trailing zeros: 0.011, 0.3, 12. */
    public static String significant(double value, int digits) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(digits, RoundingMode.HALF_UP));
        if (rounded.signum() == 0) {
            return "0";
        }
        String text = rounded.abs().stripTrailingZeros().toPlainString();
        return rounded.signum() < 0 ? "−" + text : text;
    }

    /** "1 fish", "3 days": the noun must take a plain s. */
    public static String count(long number, String noun) {
        return number + " " + noun + (number == 1 ? "" : "s");
    }

    /** A probability as a natural frequency: "7 in 10". Nothing is ever none or all in ten. */
    public static String odds(double chance) {
        if (chance < 0.05) {
            return "under 1 in 10";
        }
        return chance >= 0.95 ? "over 9 in 10" : tenths(chance) + " in 10";
    }

    /** How many of ten dots are filled for a probability; agrees with {@link #odds}. */
    public static int tenths(double chance) {
        return (int) Math.min(9, Math.floor(chance * 10 + 0.5));
    }

    /** "7:52" */
    public String clock(Instant time) {
        return CLOCK.format(time.atZone(zone));
    }

    /** "Wed 25 Nov, 8:15" */
    public String full(Instant time) {
        return FULL.format(time.atZone(zone));
    }

    /** "Sat 8:15" */
    public String weekdayAndClock(Instant time) {
        return WEEKDAY_AND_CLOCK.format(time.atZone(zone));
    }

    /** "Sat" */
    public String weekday(Instant time) {
        return SHORT_WEEKDAY.format(time.atZone(zone));
    }

    /** 0 to 23, on this clock. */
    public int hour(Instant time) {
        return time.atZone(zone).getHour();
    }

    /** From one day on this clock to another: 0 on the same, 1 on the next. */
    public long daysAfter(Instant from, Instant time) {
        return ChronoUnit.DAYS.between(from.atZone(zone).toLocalDate(), time.atZone(zone).toLocalDate());
    }

    /** "25 Nov" */
    public String shortDate(Instant time) {
        return SHORT_DATE.format(time.atZone(zone));
    }

    /** "14 November 2026", for what may be long ago. */
    public static String fullDate(LocalDate day) {
        return FULL_DATE.format(day);
    }

    /** "14 November" */
    public String date(Instant time) {
        return DATE.format(time.atZone(zone));
    }

    /** When something was: "today 7:52", "yesterday 14:05", "6 days ago". Ahead: "tomorrow 9:00", "28 Nov 9:00". */
    public String moment(Instant time) {
        long daysAgo = daysAgo(time);
        if (daysAgo == 0) {
            return "today " + clock(time);
        }
        if (daysAgo == 1) {
            return "yesterday " + clock(time);
        }
        if (daysAgo == -1) {
            return "tomorrow " + clock(time);
        }
        return daysAgo > 0 ? daysAgo + " days ago" : shortDate(time) + " " + clock(time);
    }

    /** On what day somebody looked: "today 7:52", "yesterday 14:05", "Fri 20 Nov". */
    public String dayRead(Instant time) {
        return daysAgo(time) >= 0 && daysAgo(time) <= 1 ? moment(time) : weekday(time) + " " + shortDate(time);
    }

    /** Since when: "7:52", "yesterday", "Friday", "14 November"; goes behind "since". */
    public String since(Instant time) {
        long daysAgo = daysAgo(time);
        if (daysAgo <= 0) {
            return clock(time);
        }
        return daysAgo == 1 ? "yesterday" : day(time);
    }

    /** By when, no sharper than a forecast is: "tonight", "tomorrow noon", "Saturday morning"; goes behind "by". */
    public String by(Instant time) {
        int hour = time.atZone(zone).getHour();
        long ahead = -daysAgo(time);
        if (ahead <= 0) {
            return hour < NOON ? "noon" : hour < EVENING ? "this evening" : "tonight";
        }
        String day = ahead == 1 ? "tomorrow" : day(time);
        return day + " " + (hour < NOON ? "morning" : hour < EVENING ? "afternoon" : "evening");
    }

    /** "Friday" within six days either way, else "14 November". */
    public String day(Instant time) {
        ZonedDateTime local = time.atZone(zone);
        return Math.abs(daysAgo(time)) <= WEEKDAY_IS_PLAIN_DAYS ? WEEKDAY.format(local) : DATE.format(local);
    }

    /** "9 to 13 December", "29 November to 2 December", "9 December". */
    public String window(Instant from, Instant until) {
        LocalDate first = from.atZone(zone).toLocalDate();
        LocalDate last = until.atZone(zone).toLocalDate();
        if (!last.isAfter(first)) {
            return DATE.format(first);
        }
        boolean sameMonth = first.getMonth() == last.getMonth() && first.getYear() == last.getYear();
        return (sameMonth ? Integer.toString(first.getDayOfMonth()) : DATE.format(first)) + " to " + DATE.format(last);
    }

    /** How long something took or lasts: "5 hours", "2 days". */
    public static String span(double hours) {
        long whole = Math.max(1, Math.round(hours));
        return whole < 36 ? count(whole, "hour") : count(Math.round(hours / 24), "day");
    }

    private long daysAgo(Instant time) {
        return ChronoUnit.DAYS.between(time.atZone(zone).toLocalDate(), now.toLocalDate());
    }
}
