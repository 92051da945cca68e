package org.tankrounds.breaks;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import biweekly.parameter.Related;
import biweekly.property.Trigger;
import biweekly.util.Duration;
import biweekly.util.ICalDate;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.PersonalText;
import org.tankrounds.web.Formats;

/**
 * The days of breaks as a file for calendars (RFC 5545): on each day that somebody has taken an event for the whole
 * day, with a reminder in the morning. Days rather than hours: they need no time zone, and hold wherever the phone is.
 */
final class BreakCalendar {
    private static final int REMINDER_HOUR = 8;

    private final Tank tank;
    private final Formats formats;

    BreakCalendar(Tank tank, Formats formats) {
        this.tank = tank;
        this.formats = formats;
    }

    /** Empty where nobody has taken a day to come: a calendar needs at least one event (RFC 5545 3.6). */
    Optional<String> write(List<BreakWatch> watches) {
        ICalendar calendar = new ICalendar();
        calendar.setProductId("-//Tankrounds//School breaks//EN");
        watches.forEach(watch -> watch.schoolBreak().lookers().forEach((day, looker) -> {
            if (!day.isBefore(watch.today())) {
                calendar.addEvent(event(day, looker));
            }
        }));
        return calendar.getEvents().isEmpty() ? Optional.empty() : Optional.of(CalendarLines.fold(unfolded(calendar)));
    }

    /** The library folds by characters, of which some have several octets. */
    private static String unfolded(ICalendar calendar) {
        StringWriter text = new StringWriter();
        try (ICalWriter writer = new ICalWriter(text, ICalVersion.V2_0)) {
            writer.getVObjectWriter().getFoldedLineWriter().setLineLength(null);
            writer.write(calendar);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private VEvent event(LocalDate day, String looker) {
        VEvent event = new VEvent();
        event.setUid("look-" + tank.code() + "-" + day + "@tankrounds");
        event.setDateTimeStamp(Date.from(formats.now()));
        event.setDateStart(new ICalDate(atMidnight(day), false));
        event.setSummary(what(looker));
        event.setLocation(say("breaks.place", tank.school(), tank.classroom()));
        event.setDescription(say("breaks.event.what"));
        event.addAlarm(VAlarm.display(new Trigger(
                Duration.builder().hours(REMINDER_HOUR).build(), Related.START), what(looker)));
        return event;
    }

    /** The file goes to calendars that the chapter knows nothing of: a duty is told there, and no person. */
    private String what(String looker) {
        return PersonalText.isDuty(looker) ? say("breaks.event", looker) : say("breaks.event.noName");
    }

    /** A date without a time is written in the machine's own zone. */
    private static Date atMidnight(LocalDate day) {
        Instant midnight = day.atStartOfDay(ZoneId.systemDefault()).toInstant();
        return Date.from(midnight);
    }

    private String say(String key, Object... with) {
        return formats.speech().say(key, with);
    }
}
