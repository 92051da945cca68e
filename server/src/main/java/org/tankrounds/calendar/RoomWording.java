package org.tankrounds.calendar;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tankrounds.calendar.TankAhead.Group;
import org.tankrounds.fish.Ration;
import org.tankrounds.pages.CalendarPage;
import org.tankrounds.pages.CalendarPage.Fed;
import org.tankrounds.pages.CalendarPage.Way;
import org.tankrounds.tankmodel.Room;
import org.tankrounds.tankmodel.WeeksAhead;
import org.tankrounds.tankmodel.WeeksAhead.Feeding;
import org.tankrounds.tankmodel.WeeksAhead.Week;
import org.tankrounds.web.Formats;

/** Feed and room by week, and what can be done where there is too little of it, in words. */
final class RoomWording {
    private static final double PERCENT = 100;

    private final Formats formats;
    private final TankAhead ahead;
    private final Days days;
    private final Optional<WeeksAhead> weeks;

    RoomWording(Formats formats, TankAhead ahead) {
        this.formats = formats;
        this.ahead = ahead;
        this.days = Days.of(ahead, formats);
        this.weeks = ahead.weeks();
    }

    /** Empty where there is nothing that feeds, or will. */
    String lead() {
        return weeks.map(known -> known.firstTooFull()
                .map(week -> say("calendar.room.until." + bound(week), ahead.alive(), days.date(week.at())))
                .orElseGet(() -> say("calendar.room.enough", ahead.alive(),
                        days.date(known.until()), percent(known.fullest().orElseThrow().load().fullest()))))
                .orElse("");
    }

    /** Whether they can leave before there is no room; or the oldest, where that leaves room for the others. */
    String leave() {
        return weeks.flatMap(WeeksAhead::firstTooFull).map(week -> {
            List<Group> groups = ahead.groups();
            Group oldest = groups.get(0);
            Group youngest = groups.get(groups.size() - 1);
            if (longEnoughAt(youngest).isBefore(week.at())) {
                return say("calendar.room.leave", youngest.release().lengthMm(), days.date(longEnoughAt(youngest)));
            }
            return longEnoughAt(oldest).isBefore(week.at()) && othersHaveRoom()
                    ? say("calendar.room.leaveOldest", oldest.release().lengthMm(), days.date(longEnoughAt(oldest)),
                            eggsOf(oldest))
                    : "";
        }).orElse("");
    }

    private boolean othersHaveRoom() {
        WeeksAhead all = weeks.orElseThrow();
        return WeeksAhead.of(all.cohorts().subList(1, all.cohorts().size()), all.room(), ahead.asOf(), all.until())
                .firstTooFull().isEmpty();
    }

    private static Instant longEnoughAt(Group group) {
        return group.release().window().expected();
    }

    List<Way> ways() {
        return weeks.filter(known -> known.firstTooFull().isPresent())
                .map(known -> List.of(thin(known), feedLess(known), changeMore(known))).orElse(List.of());
    }

    List<CalendarPage.Week> weeks() {
        return weeks.map(known -> known.weeks().stream().map(this::week).toList()).orElse(List.of());
    }

    List<String> basis() {
        if (weeks.isEmpty()) {
            return List.of();
        }
        List<String> basis = new ArrayList<>();
        if (ahead.hasAges()) {
            basis.add(say("calendar.basis.ages"));
        }
        ahead.groups().forEach(group -> basis.add(ahead.hasAges()
                ? say("calendar.basis.ofEggs", eggsOf(group), size(group)) : size(group)));
        basis.add(until());
        basis.add(say("calendar.basis.ration", Formats.number(Ration.RELEASE_TANK_PERCENT, 0)));
        weeks.orElseThrow().weeks().get(0).largest().ration().ifPresent(ration -> basis.add(
                say(ahead.hasAges() ? "calendar.basis.tableOfLargest" : "calendar.basis.table",
                        Formats.number(ration.growthPercent(), 1))));
        basis.add(say("calendar.basis.space", Formats.number(Room.MOST_G_PER_L, 0),
                Formats.number(ahead.room().volumeL(), 0)));
        basis.add(say(ahead.tank().filterAreaM2().isPresent() ? "calendar.basis.filter" : "calendar.basis.noFilter",
                Formats.significant(ahead.room().filterAreaM2(), 2)));
        basis.add(say(ahead.habit().known() ? "calendar.basis.changes" : "calendar.basis.noChanges",
                percent(ahead.habit().share()), Formats.significant(ahead.habit().everyDays(), 2),
                Formats.number(Room.MOST_NITRATE_MG_N_PER_L, 0)));
        return basis;
    }

    private String size(Group group) {
        return say(!group.isMeasured() ? "calendar.basis.guessed"
                : group.growth().pace().own() ? "calendar.basis.measured" : "calendar.basis.measuredOnce");
    }

    private String until() {
        Instant until = weeks.orElseThrow().until();
        boolean isPlanned = ahead.season().details().releaseOn()
                .filter(day -> day.equals(until.atZone(ahead.tank().zone()).toLocalDate())).isPresent();
        boolean isLongEnough = ahead.groups().stream().anyMatch(group -> longEnoughAt(group).equals(until));
        return say(isPlanned ? "calendar.basis.planned" : isLongEnough ? "calendar.basis.notPlanned"
                : "calendar.basis.ahead", days.date(until));
    }

    private Way thin(WeeksAhead known) {
        int most = known.fishWithRoom();
        String how = most == 0 ? say("calendar.way.thin.none")
                : say(ahead.hasAges() ? "calendar.way.thin.oldest" : "calendar.way.thin.how", known.fish() - most,
                        days.date(known.firstTooFull().orElseThrow().at()), most, days.date(known.until()));
        return new Way(say("calendar.way.thin"), how, say("calendar.way.thin.caution"));
    }

    private Way feedLess(WeeksAhead known) {
        String how = known.lessFeed()
                .map(less -> say(ahead.hasAges() ? "calendar.way.feed.oldest" : "calendar.way.feed.how",
                        percent(less.share()), Formats.number(less.lengthMm(), 0),
                        Formats.number(last(known).largest().lengthMm(), 0)))
                .orElseGet(() -> say("calendar.way.feed.no"));
        return new Way(say("calendar.way.feed"), how, "");
    }

    private Way changeMore(WeeksAhead known) {
        String how = known.largerChange()
                .map(share -> say("calendar.way.change.how", percent(share),
                        Formats.significant(ahead.habit().everyDays(), 2)))
                .orElseGet(() -> say("calendar.way.change.no"));
        return new Way(say("calendar.way.change"), how, say("calendar.way.change.caution"));
    }

    private CalendarPage.Week week(Week week) {
        Room.Load load = week.load();
        return new CalendarPage.Week(days.shortDate(week.at()), formats.temperature(week.temperatureC(), 1),
                week.feeding().stream().map(this::fed).toList(),
                percent(load.fullest()), say("calendar.bound." + bound(week)), load.fullest() > 1);
    }

    private Fed fed(Feeding feeding) {
        String eggs = ahead.hasAges()
                ? days.shortDate(ahead.groups().get(feeding.cohort()).lot().orElseThrow().receivedAt()) : "";
        return new Fed(eggs, Formats.number(feeding.lengthMm(), 0), grams(feeding.weightG()),
                feeding.ration().map(Ration::gramsPerDay).map(RoomWording::grams)
                        .orElseGet(() -> say("calendar.week.ask")),
                say("classroom.size." + feeding.feedSize().name().toLowerCase(Locale.ROOT)));
    }

    private String eggsOf(Group group) {
        return days.date(group.lot().orElseThrow().receivedAt());
    }

    private static String bound(Week week) {
        return week.load().bound().name().toLowerCase(Locale.ROOT);
    }

    private static Week last(WeeksAhead known) {
        return known.weeks().get(known.weeks().size() - 1);
    }

    private static String grams(double grams) {
        return Formats.number(grams, grams < 1 ? 2 : 1);
    }

    private static String percent(double share) {
        return Formats.number(PERCENT * share, 0);
    }

    private String say(String key, Object... with) {
        return formats.speech().say(key, with);
    }
}
