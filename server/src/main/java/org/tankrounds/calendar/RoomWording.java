package org.tankrounds.calendar;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tankrounds.fish.Ration;
import org.tankrounds.pages.CalendarPage;
import org.tankrounds.pages.CalendarPage.Way;
import org.tankrounds.tankmodel.Room;
import org.tankrounds.tankmodel.WeeksAhead;
import org.tankrounds.tankmodel.WeeksAhead.Week;
import org.tankrounds.web.Formats;

/** Feed and room by week, and what can be done where there is too little of it, in words. */
final class RoomWording {
    private static final double PERCENT = 100;

    private final Formats formats;
    private final TankAhead ahead;
    private final Optional<WeeksAhead> weeks;

    RoomWording(Formats formats, TankAhead ahead) {
        this.formats = formats;
        this.ahead = ahead;
        this.weeks = ahead.weeks();
    }

    /** Empty where there is nothing that feeds, or will. */
    String lead() {
        return weeks.map(known -> known.firstTooFull()
                .map(week -> say("calendar.room.until." + bound(week), ahead.alive(), formats.date(week.at())))
                .orElseGet(() -> say("calendar.room.enough", ahead.alive(),
                        formats.date(known.until()), percent(known.fullest().orElseThrow().load().fullest()))))
                .orElse("");
    }

    /** Whether they can leave before there is no room. */
    String leave() {
        return weeks.flatMap(WeeksAhead::firstTooFull)
                .filter(week -> ahead.release().orElseThrow().window().expected().isBefore(week.at()))
                .map(week -> say("calendar.room.leave", ahead.release().orElseThrow().lengthMm(),
                        formats.date(ahead.release().orElseThrow().window().expected())))
                .orElse("");
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
        basis.add(say(ahead.growth().orElseThrow().pace().own() ? "calendar.basis.measured"
                : ahead.growth().get().from().seen() && !isFirstFeeding() ? "calendar.basis.measuredOnce"
                : "calendar.basis.guessed"));
        basis.add(until());
        basis.add(say("calendar.basis.space", Formats.number(Room.MOST_G_PER_L, 0), Formats.number(ahead.room().volumeL(), 0)));
        basis.add(say(ahead.tank().filterAreaM2().isPresent() ? "calendar.basis.filter" : "calendar.basis.noFilter",
                Formats.significant(ahead.room().filterAreaM2(), 2)));
        basis.add(say(ahead.habit().known() ? "calendar.basis.changes" : "calendar.basis.noChanges",
                percent(ahead.habit().share()), Formats.significant(ahead.habit().everyDays(), 2),
                Formats.number(Room.MOST_NITRATE_MG_N_PER_L, 0)));
        return basis;
    }

    /** Growth counts from a first feeding that was seen, and not from a measurement. */
    private boolean isFirstFeeding() {
        return ahead.dates().filter(dates -> dates.firstFeeding().equals(ahead.growth().orElseThrow().from())).isPresent();
    }

    private String until() {
        Instant until = weeks.orElseThrow().until();
        boolean isPlanned = ahead.season().details().releaseOn()
                .filter(day -> day.equals(until.atZone(ahead.tank().zone()).toLocalDate())).isPresent();
        boolean isLongEnough = ahead.release().filter(release -> release.window().expected().equals(until)).isPresent();
        return say(isPlanned ? "calendar.basis.planned" : isLongEnough ? "calendar.basis.notPlanned"
                : "calendar.basis.ahead", formats.date(until));
    }

    private Way thin(WeeksAhead known) {
        int most = known.fishWithRoom();
        String how = most == 0 ? say("calendar.way.thin.none")
                : say("calendar.way.thin.how", ahead.alive() - most, formats.date(known.firstTooFull().orElseThrow().at()), most,
                        formats.date(known.until()));
        return new Way(say("calendar.way.thin"), how, say("calendar.way.thin.caution"));
    }

    private Way feedLess(WeeksAhead known) {
        String how = known.lessFeed()
                .map(less -> say("calendar.way.feed.how", percent(less.share()),
                        Formats.number(less.lengthMm(), 0), Formats.number(last(known).lengthMm(), 0)))
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
        return new CalendarPage.Week(formats.shortDate(week.at()), formats.temperature(week.temperatureC(), 1),
                Formats.number(week.lengthMm(), 0), grams(week.weightG()),
                week.ration().map(Ration::gramsPerDay).map(RoomWording::grams)
                        .orElseGet(() -> say("calendar.week.ask")),
                say("classroom.size." + week.feedSize().name().toLowerCase(Locale.ROOT)),
                percent(load.fullest()), say("calendar.bound." + bound(week)), load.fullest() > 1);
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
