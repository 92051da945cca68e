package org.tankrounds.calendar;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.tankrounds.calendar.TankAhead.Group;
import org.tankrounds.fish.DateWindow;
import org.tankrounds.fish.Development;
import org.tankrounds.fish.HatchModel;
import org.tankrounds.fish.Milestone;
import org.tankrounds.pages.CalendarPage.Date;
import org.tankrounds.season.Lot;
import org.tankrounds.web.Formats;

/** When a lot comes to what, and how that is known, in words. */
final class DateWording {
    /** Where 480 °C-days and swim-up by the model fall on the same day; in cooler water swim-up is later. */
    private static final double COUNTS_MEET_C = 14;
    /** The example that is told. */
    private static final double COOL_C = 5;

    private final Formats formats;
    private final TankAhead ahead;
    private final Days days;

    DateWording(Formats formats, TankAhead ahead) {
        this.formats = formats;
        this.ahead = ahead;
        this.days = Days.of(ahead, formats);
    }

    List<Date> list() {
        List<Date> list = new ArrayList<>();
        ahead.lot().ifPresent(lot -> {
            list.add(new Date(say("calendar.date.eggs"), days.date(lot.receivedAt()), eggs(lot), ""));
            for (Milestone milestone : Milestone.values()) {
                list.add(date(milestone, lot));
            }
        });
        ahead.groups().forEach(group -> list.add(new Date(releaseOf(group), window(group.release().window()),
                release(group), "")));
        return list;
    }

    /** Whose dates they are, where there are fish of other eggs too; else empty. */
    String of() {
        return ahead.lot().filter(lot -> ahead.hasAges())
                .map(lot -> say("calendar.dates.of", lot.eggs(), days.date(lot.receivedAt()))).orElse("");
    }

    /** What older fish are in the tank, and since when they feed. */
    List<String> older() {
        return ahead.older().stream().map(group -> {
            DateWindow feeding = group.dates().orElseThrow().firstFeeding();
            String key = feeding.seen() ? "calendar.older.seen"
                    : group.isFeedingAt(ahead.asOf()) ? "calendar.older.about" : "calendar.older.toFeed";
            return say(key, group.fish(), eggsOf(group), group.isFeedingAt(ahead.asOf())
                    ? days.date(feeding.expected()) : window(feeding));
        }).toList();
    }

    /** "50 mm long", and of which eggs where there are several. */
    String releaseOf(Group group) {
        return ahead.hasAges() ? say("calendar.date.releaseOf", group.release().lengthMm(), eggsOf(group))
                : say("calendar.date.release", group.release().lengthMm());
    }

    /** The day on which a group's eggs came. */
    String eggsOf(Group group) {
        return days.date(group.lot().orElseThrow().receivedAt());
    }

    /**
     * Between which two ways of counting the window of first feeding lies, and how far they are apart where it is cold;
     * empty where the class has seen it, or where no eggs have come.
     */
    String feedingNote() {
        return ahead.lot().filter(lot -> lot.seenOn().of(Milestone.FIRST_FEEDING).isEmpty())
                .map(lot -> say("calendar.basis.twoCounts", Math.round(Development.FIRST_FEEDING_C_DAYS),
                        formats.temperature(COUNTS_MEET_C, 0), formats.temperature(COOL_C, 0),
                        Math.round(Development.FIRST_FEEDING_C_DAYS / COOL_C),
                        Math.round(HatchModel.daysToSwimUp(COOL_C))))
                .orElse("");
    }

    /** "9 to 13 December", "from 9 December" of what may last beyond the season. */
    String window(DateWindow window) {
        return days.window(window, ahead.season().until(ahead.tank().zone()));
    }

    private String eggs(Lot lot) {
        return lot.thermalUnitsC().isPresent()
                ? say("calendar.basis.units", lot.eggs(), Math.round(lot.thermalUnitsC().getAsDouble()))
                : say("calendar.basis.noUnits", lot.eggs());
    }

    private Date date(Milestone milestone, Lot lot) {
        String name = say("calendar.date." + SeenForm.code(milestone));
        DateWindow window = ahead.dates().orElseThrow().of(milestone);
        Optional<LocalDate> seen = lot.seenOn().of(milestone);
        if (seen.isPresent()) {
            return new Date(name, days.date(window.expected()), say("calendar.basis.seen"),
                    "/tanks/" + ahead.tank().code() + "/calendar/" + SeenForm.code(milestone) + "/withdrawn");
        }
        if (!window.latest().isAfter(lot.receivedAt())) {
            return new Date(name, say("calendar.before"), say("calendar.basis.before"), "");
        }
        return new Date(name, window(window), basis(milestone, window, lot), "");
    }

    private String basis(Milestone milestone, DateWindow window, Lot lot) {
        boolean isSeenPast = isPassedBy(milestone);
        if (window.isPastAt(ahead.asOf()) && !isSeenPast) {
            return say("calendar.basis.late." + SeenForm.code(milestone));
        }
        boolean counts = milestone == Milestone.FIRST_FEEDING && lot.seenOn().hatchedOn().isPresent();
        return counts ? say("calendar.basis.fromHatch")
                : say("calendar.basis.warmth." + SeenForm.code(isSeenPast ? Milestone.HATCH : milestone));
    }

    /** Whether they have come, or should have, to what is later in their life. */
    private boolean isPassedBy(Milestone milestone) {
        return Arrays.stream(Milestone.values()).filter(other -> other.compareTo(milestone) > 0)
                .anyMatch(other -> ahead.dates().orElseThrow().of(other).isPastAt(ahead.asOf()));
    }

    private String release(Group group) {
        String pace = group.growth().pace().own() ? say("calendar.basis.ownPace") : say("calendar.basis.anyPace");
        return group.release().isTold() ? pace : say("calendar.basis.noLength", pace);
    }

    private String say(String key, Object... with) {
        return formats.speech().say(key, with);
    }
}
