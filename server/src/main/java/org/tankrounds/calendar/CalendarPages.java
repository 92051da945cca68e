package org.tankrounds.calendar;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tankrounds.fish.DateWindow;
import org.tankrounds.fish.LotCalendar;
import org.tankrounds.fish.Milestone;
import org.tankrounds.pages.CalendarPage;
import org.tankrounds.pages.CalendarPage.Line;
import org.tankrounds.pages.CalendarPage.Picture;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.FormField.Option;
import org.tankrounds.places.Tank;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Role;

/** From what is ahead of a tank to the words and numbers of its page. */
final class CalendarPages {
    private static final Duration MARGIN = Duration.ofDays(7);

    private final TankAhead ahead;
    private final Formats formats;
    private final DateWording dates;
    private final Days days;

    CalendarPages(TankAhead ahead, Formats formats) {
        this.ahead = ahead;
        this.formats = formats;
        this.dates = new DateWording(formats, ahead);
        this.days = Days.of(ahead, formats);
    }

    static CalendarPage withoutSeason(Tank tank, Formats formats) {
        String title = formats.speech().say("calendar.title.noEggs", tank.classroom());
        return new CalendarPage(title, title, place(tank, formats), tank.code(), "", "",
                formats.speech().say("calendar.noSeason"), List.of(), "", List.of(), "", null, List.of(), "", "", "",
                List.of(), false, List.of(), List.of());
    }

    CalendarPage page(String saved, FormInput form, Role role) {
        RoomWording room = new RoomWording(formats, ahead);
        String title = title();
        boolean isAsking = form.wrong(SeenForm.DAY) && !form.text(SeenForm.DAY).isEmpty();
        return new CalendarPage(formats.speech().titled(!form.ok(), title), title, place(ahead.tank(), formats),
                ahead.tank().code(), seasonTo(role), saved, none(role), dates.older(), dates.of(), dates.list(),
                dates.feedingNote(), picture(), see(form), isAsking ? form.text(SeenForm.DAY) : "", room.lead(),
                room.leave(), room.ways(), ahead.hasAges(), room.weeks(), room.basis());
    }

    private String seasonTo(Role role) {
        return Set.of(Role.ROUNDS).contains(role) ? "/season/" + ahead.season().code() + "/calendar" : "";
    }

    private String title() {
        String room = ahead.tank().classroom();
        if (ahead.isEmptied()) {
            return say("calendar.title.emptied", room);
        }
        if (ahead.lot().isPresent() && !ahead.hasCome()) {
            return say("calendar.title.toCome", room, days.date(ahead.lot().get().receivedAt()));
        }
        Optional<Milestone> next = ahead.next();
        if (next.isPresent()) {
            boolean isHatch = next.get() == Milestone.HATCH;
            return say(ahead.hasAges()
                    ? isHatch ? "calendar.title.newest.hatch" : "calendar.title.newest.feeding"
                    : isHatch ? "calendar.title.hatch" : "calendar.title.feeding", room,
                    dates.window(ahead.dates().orElseThrow().of(next.get())));
        }
        return ahead.growing()
                .map(group -> say("calendar.title.release", room, dates.releaseOf(group),
                        dates.window(group.release().window())))
                .or(() -> ahead.youngest()
                        .map(group -> say("calendar.title.longEnough", room, group.release().lengthMm())))
                .orElseGet(() -> say("calendar.title.noEggs", room));
    }

    private String none(Role role) {
        if (!ahead.groups().isEmpty()) {
            return "";
        }
        return say(role == Role.COORDINATOR ? "calendar.none.add" : "calendar.none");
    }

    private List<FormField> see(FormInput form) {
        if (!ahead.hasCome()) {
            return List.of();
        }
        List<Option> options = new ArrayList<>(List.of(new Option("", say("calendar.see.choose"))));
        Arrays.stream(Milestone.values())
                .filter(milestone -> ahead.lot().orElseThrow().seenOn().of(milestone).isEmpty())
                .forEach(milestone -> options.add(new Option(SeenForm.code(milestone),
                        say("calendar.saw." + SeenForm.code(milestone)))));
        return options.size() == 1 ? List.of()
                : List.of(form.choice(SeenForm.MILESTONE, "calendar.see.what", options),
                        form.dayBox(SeenForm.DAY, "calendar.see.when"));
    }

    private Picture picture() {
        if (ahead.dates().isEmpty()) {
            return null;
        }
        LotCalendar calendar = ahead.dates().get();
        Instant last = ahead.groups().stream().map(group -> group.release().window().latest())
                .max(Comparator.naturalOrder()).orElseThrow();
        Instant end = ahead.season().until(ahead.tank().zone());
        Timeline line = new Timeline(ahead.lot().orElseThrow().receivedAt().minus(MARGIN),
                last.isAfter(end) ? end : last.plus(MARGIN));
        List<Line> lines = new ArrayList<>();
        lines.add(line(line, "calendar.date.hatch", "hatch", calendar.hatch()));
        lines.add(line(line, "calendar.date.first_feeding", "feeding", calendar.firstFeeding()));
        ahead.groups().forEach(group -> lines.add(new Line(dates.releaseOf(group),
                dates.window(group.release().window()), List.of(line.bar("release", group.release().window())))));
        return new Picture(lines, line.months(ahead.tank().zone(), formats),
                line.holds(ahead.asOf()) ? line.position(ahead.asOf()) : "");
    }

    private Line line(Timeline line, String name, String kind, DateWindow window) {
        return new Line(say(name), dates.window(window), List.of(line.bar(kind, window)));
    }

    private static String place(Tank tank, Formats formats) {
        return formats.speech().say("calendar.place", tank.school(), tank.classroom());
    }

    private String say(String key, Object... with) {
        return formats.speech().say(key, with);
    }
}
