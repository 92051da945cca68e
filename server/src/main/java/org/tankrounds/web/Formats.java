package org.tankrounds.web;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAccessor;

/** Numbers and times as people say them, on one clock and as of one moment. */
public final class Formats {
    /** A number never stands at a line's end with its unit on the next. */
    public static final String NO_BREAK = "\u00a0";

    /** Within a week a weekday names one day only. */
    private static final int WEEKDAY_IS_PLAIN_DAYS = 6;
    private static final int NOON = 12;
    private static final int EVENING = 17;

    private final ZoneId zone;
    private final ZonedDateTime now;
    private final Speech speech;

    /** In plain English and degrees Celsius. */
    public Formats(ZoneId zone, Instant now) {
        this(zone, now, Speech.PLAIN);
    }

    public Formats(ZoneId zone, Instant now, Speech speech) {
        this.zone = zone;
        this.now = now.atZone(zone);
        this.speech = speech;
    }

    public Instant now() {
        return now.toInstant();
    }

    public Speech speech() {
        return speech;
    }

    /** A temperature on the reader's scale: "11.5 °C", "52.7 °F". */
    public String temperature(double celsius, int decimals) {
        return number(speech.scale().of(celsius), decimals) + NO_BREAK + speech.scale().sign();
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

    /** How many of ten dots are filled for a probability; agrees with {@link #chance}. */
    public static int tenths(double chance) {
        return (int) Math.min(9, Math.floor(chance * 10 + 0.5));
    }

    /** A probability as a natural frequency: "7 in 10". Nothing is ever none or all in ten. */
    public String chance(double chance) {
        if (chance < 0.05) {
            return speech.say("time.chance.low");
        }
        return chance >= 0.95 ? speech.say("time.chance.high") : speech.say("time.chance", tenths(chance));
    }

    /** "7:52" */
    public String clock(Instant time) {
        return written("time.pattern.clock", local(time));
    }

    /** "Wed 25 Nov, 8:15" */
    public String full(Instant time) {
        return written("time.pattern.full", local(time));
    }

    /** "25 November, 8:15" */
    public String dateAndClock(Instant time) {
        return written("time.pattern.dateAndClock", local(time));
    }

    /** "Sat 8:15" */
    public String weekdayAndClock(Instant time) {
        return written("time.pattern.weekdayAndClock", local(time));
    }

    /** "Sat" */
    public String weekday(Instant time) {
        return written("time.pattern.shortWeekday", local(time));
    }

    /** 0 to 23, on this clock. */
    public int hour(Instant time) {
        return local(time).getHour();
    }

    /** From one day on this clock to another: 0 on the same, 1 on the next. */
    public long daysAfter(Instant from, Instant time) {
        return ChronoUnit.DAYS.between(local(from).toLocalDate(), local(time).toLocalDate());
    }

    /** "25 Nov" */
    public String shortDate(Instant time) {
        return written("time.pattern.shortDate", local(time));
    }

    /** "14 November 2026", for what may be long ago. */
    public String longDate(LocalDate day) {
        return written("time.pattern.longDate", day);
    }

    /** "Wed 25 Nov" */
    public String weekdayAndDate(LocalDate day) {
        return written("time.pattern.weekdayAndDate", day);
    }

    /** "Wednesday 25 November 2026" */
    public String weekdayAndLongDate(LocalDate day) {
        return written("time.pattern.weekdayAndLongDate", day);
    }

    /** "25 Nov 2026, 8:15", for what may be long ago. */
    public String dateYearAndClock(Instant time) {
        return written("time.pattern.dateYearAndClock", local(time));
    }

    /** "Wed 25", for a row of a month. */
    public String weekdayAndDay(LocalDate day) {
        return written("time.pattern.weekdayAndDay", day);
    }

    /** "November 2026" */
    public String month(YearMonth month) {
        return written("time.pattern.month", month);
    }

    /** "14 November" */
    public String date(Instant time) {
        return written("time.pattern.date", local(time));
    }

    /** When something was: "today 7:52", "yesterday 14:05", "6 days ago". Ahead: "tomorrow 9:00", "28 Nov 9:00". */
    public String moment(Instant time) {
        long daysAgo = daysAgo(time);
        if (daysAgo == 0) {
            return speech.say("time.todayAt", clock(time));
        }
        if (daysAgo == 1) {
            return speech.say("time.yesterdayAt", clock(time));
        }
        if (daysAgo == -1) {
            return speech.say("time.tomorrowAt", clock(time));
        }
        return daysAgo > 0 ? speech.say("time.daysAgo", daysAgo) : shortDate(time) + " " + clock(time);
    }

    /** On what day somebody looked: "today 7:52", "yesterday 14:05", "Fri 20 Nov". */
    public String dayRead(Instant time) {
        return daysAgo(time) >= 0 && daysAgo(time) <= 1 ? moment(time) : weekday(time) + " " + shortDate(time);
    }

    /** Since when: "7:52", "yesterday", "Friday", "14 November"; goes behind "since". */
    public String since(Instant time) {
        long daysAgo = daysAgo(time);
        if (daysAgo <= 0) {
            return speech.say("time.sinceClock", hour(time), clock(time));
        }
        return daysAgo == 1 ? speech.say("time.yesterday") : day(time);
    }

    /** When something was, within a sentence: "at 7:52", "yesterday", "on Friday", "on 14 November". */
    public String when(Instant time) {
        long daysAgo = daysAgo(time);
        if (daysAgo <= 0) {
            return speech.say("time.atClock", hour(time), clock(time));
        }
        return daysAgo == 1 ? speech.say("time.yesterday") : speech.say("time.onThatDay", day(time));
    }

    /** "Saturday 8:15", with what the language puts between; goes behind "by", "before" and "on". */
    public String dayAndClock(Instant time) {
        return speech.say("time.dayAndClock", hour(time), day(time), clock(time));
    }

    /** By when, no sharper than a forecast is: "tonight", "tomorrow noon", "Saturday morning"; goes behind "by". */
    public String by(Instant time) {
        long ahead = -daysAgo(time);
        int hour = hour(time);
        if (ahead <= 0) {
            return speech.say(hour < NOON ? "time.noon" : hour < EVENING ? "time.thisEvening" : "time.tonight");
        }
        String day = ahead == 1 ? speech.say("time.tomorrow") : day(time);
        return speech.say(hour < NOON ? "time.morningOf" : hour < EVENING ? "time.afternoonOf" : "time.eveningOf", day);
    }

    /** "Friday" within six days either way, else "14 November"; with its article where the language has one. */
    public String day(Instant time) {
        return Math.abs(daysAgo(time)) <= WEEKDAY_IS_PLAIN_DAYS
                ? speech.say("time.onDay", written("time.pattern.weekday", local(time)))
                : speech.say("time.onDay", date(time));
    }

    /** "9 to 13 December", "29 November to 2 December", "9 December". */
    public String window(Instant from, Instant until) {
        LocalDate first = local(from).toLocalDate();
        LocalDate last = local(until).toLocalDate();
        if (!last.isAfter(first)) {
            return written("time.pattern.date", first);
        }
        boolean sameMonth = first.getMonth() == last.getMonth() && first.getYear() == last.getYear();
        return speech.say("time.window",
                sameMonth ? first.getDayOfMonth() : written("time.pattern.date", first),
                written("time.pattern.date", last));
    }

    /** How long something took or lasts: "5 hours", "2 days". */
    public String lasting(double hours) {
        long whole = Math.max(1, Math.round(hours));
        return whole < 36 ? speech.say("time.hours", whole) : speech.say("time.days", Math.round(hours / 24));
    }

    private ZonedDateTime local(Instant time) {
        return time.atZone(zone);
    }

    private String written(String pattern, TemporalAccessor time) {
        return speech.written(pattern, time);
    }

    private long daysAgo(Instant time) {
        return ChronoUnit.DAYS.between(local(time).toLocalDate(), now.toLocalDate());
    }
}
