package org.tankrounds.calendar;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tankrounds.fish.DateWindow;
import org.tankrounds.fish.Milestone;
import org.tankrounds.pages.CalendarPage.Bar;
import org.tankrounds.pages.SeasonCalendarPage;
import org.tankrounds.pages.SeasonCalendarPage.Row;
import org.tankrounds.season.Season;
import org.tankrounds.tankmodel.WeeksAhead.Week;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Role;

/** From what is ahead of a season's tanks to the one page that shows them beside each other. */
final class SeasonCalendarPages {
    private static final Duration MARGIN = Duration.ofDays(7);

    private final Season season;
    private final Formats formats;
    private final Role role;

    SeasonCalendarPages(Season season, Formats formats, Role role) {
        this.season = season;
        this.formats = formats;
        this.role = role;
    }

    SeasonCalendarPage page(List<TankAhead> tanks) {
        List<TankAhead> inOrder = tanks.stream().sorted(Comparator.comparing(SeasonCalendarPages::nextAt,
                Comparator.nullsLast(Comparator.naturalOrder()))).toList();
        Timeline line = line(tanks);
        return new SeasonCalendarPage(title(inOrder), say("season.named", season.name()),
                role == Role.COORDINATOR ? "/season/" + season.code() : "",
                inOrder.stream().map(tank -> row(tank, line)).toList(),
                line.months(ZoneOffset.UTC, formats),
                line.holds(formats.now()) ? line.position(formats.now()) : "", note());
    }

    private String note() {
        int lengthMm = season.details().releaseLengthMm().orElse(CalendarReads.USUAL_RELEASE_LENGTH_MM);
        return say(season.details().releaseLengthMm().isPresent() ? "calendar.season.note" : "calendar.season.noLength",
                lengthMm);
    }

    private String title(List<TankAhead> inOrder) {
        return inOrder.stream().filter(tank -> tank.next().isPresent() && tank.hasCome()).findFirst()
                .map(tank -> say("calendar.season.title." + SeenForm.code(tank.next().orElseThrow()),
                        tank.tank().school(), tank.tank().classroom(),
                        window(tank.dates().orElseThrow().of(tank.next().get()), tank)))
                .or(() -> tooFull(inOrder).map(tank -> say("calendar.season.title.full", tank.tank().school(),
                        tank.tank().classroom(), days(tank).date(fullAt(tank).orElseThrow().at()))))
                .orElseGet(() -> say("calendar.season.title", season.name()));
    }

    private static Optional<TankAhead> tooFull(List<TankAhead> tanks) {
        return tanks.stream().filter(tank -> fullAt(tank).isPresent())
                .min(Comparator.comparing(tank -> fullAt(tank).orElseThrow().at()));
    }

    private static Optional<Week> fullAt(TankAhead tank) {
        return tank.weeks().flatMap(weeks -> weeks.firstTooFull());
    }

    /** Null where nothing is ahead. */
    private static Instant nextAt(TankAhead tank) {
        return tank.next().map(milestone -> tank.dates().orElseThrow().of(milestone).expected())
                .or(() -> tank.groups().stream().findFirst().filter(group -> tank.alive() > 0)
                        .map(group -> group.release().window().expected()))
                .orElse(null);
    }

    private Timeline line(List<TankAhead> tanks) {
        Instant from = tanks.stream().flatMap(tank -> tank.lot().stream()).map(lot -> lot.receivedAt())
                .min(Comparator.naturalOrder()).orElse(formats.now()).minus(MARGIN);
        Instant until = tanks.stream().flatMap(SeasonCalendarPages::windows).map(DateWindow::latest)
                .max(Comparator.naturalOrder()).orElse(formats.now()).plus(MARGIN);
        Instant end = season.until(ZoneOffset.UTC);
        return new Timeline(from, until.isAfter(end) ? end : until);
    }

    private static Stream<DateWindow> windows(TankAhead tank) {
        return Stream.concat(tank.dates().stream().flatMap(dates -> Stream.of(dates.hatch(), dates.firstFeeding())),
                tank.groups().stream().map(group -> group.release().window()));
    }

    private Row row(TankAhead tank, Timeline line) {
        List<Bar> bars = new ArrayList<>();
        // Widest first: what is drawn later lies on top, and older fish may be long enough before the newest feed.
        tank.groups().forEach(group -> bars.add(line.bar("release", group.release().window())));
        tank.dates().ifPresent(dates -> {
            bars.add(line.bar("hatch", dates.hatch()));
            bars.add(line.bar("feeding", dates.firstFeeding()));
        });
        String carries = tank.weeks().map(weeks -> weeks.firstTooFull()
                .map(week -> say("calendar.season.fullFrom", days(tank).shortDate(week.at())))
                .orElseGet(() -> say("calendar.season.enough"))).orElse("");
        return new Row(tank.tank().school(), tank.tank().classroom(), "/tanks/" + tank.tank().code() + "/calendar",
                next(tank), release(tank), carries, fullAt(tank).isPresent(), bars, next(tank));
    }

    private String release(TankAhead tank) {
        return tank.groups().stream().map(group -> tank.hasAges()
                ? say("calendar.season.releaseOf", window(group.release().window(), tank),
                        days(tank).date(group.lot().orElseThrow().receivedAt()))
                : window(group.release().window(), tank)).collect(Collectors.joining("; "));
    }

    private String next(TankAhead tank) {
        if (tank.older().isEmpty()) {
            return nextOfNewest(tank);
        }
        boolean isFed = tank.older().stream().allMatch(group -> group.isFeedingAt(tank.asOf()));
        return isFed ? say("calendar.season.olderFeed", nextOfNewest(tank))
                : say("calendar.season.older", nextOfNewest(tank));
    }

    private String nextOfNewest(TankAhead tank) {
        if (tank.isEmptied()) {
            return say("calendar.season.emptied");
        }
        if (tank.lot().isPresent() && !tank.hasCome()) {
            return say("calendar.season.toCome", days(tank).date(tank.lot().get().receivedAt()));
        }
        return tank.next()
                .map(milestone -> say(
                        milestone == Milestone.HATCH ? "calendar.season.hatch" : "calendar.season.feeding",
                        window(tank.dates().orElseThrow().of(milestone), tank)))
                .orElseGet(() -> say(tank.groups().isEmpty() ? "calendar.season.noEggs" : "calendar.season.feeds"));
    }

    private String window(DateWindow window, TankAhead tank) {
        return days(tank).window(window, season.until(tank.tank().zone()));
    }

    private Days days(TankAhead tank) {
        return Days.of(tank, formats);
    }

    private String say(String key, Object... with) {
        return formats.speech().say(key, with);
    }
}
