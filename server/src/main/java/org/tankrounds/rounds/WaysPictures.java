package org.tankrounds.rounds;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.SeriesForecast;
import org.tankrounds.forecast.Way;
import org.tankrounds.forecast.Ways;
import org.tankrounds.pages.WaysPicture;
import org.tankrounds.pages.WaysPicture.Column;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Speech;

/** Lays twenty ways out as dots under the days on which they go beyond a limit. */
final class WaysPictures {
    private static final String MAIN = "main";
    private static final String OTHER = "other";
    private static final String WITHIN = "within";

    private final Formats formats;
    private final Speech speech;
    private final SpreadWording wording;

    WaysPictures(Formats formats) {
        this.formats = formats;
        this.speech = formats.speech();
        this.wording = new SpreadWording(formats);
    }

    WaysPicture draw(Forecast forecast, Ways ways) {
        return new WaysPicture(wording.answer(forecast, ways),
                leading(forecast, ways).map(series -> wording.levels(forecast, series)).orElse(""),
                wording.signs(ways), columns(forecast, ways));
    }

    /** The series of the limit that is passed first on most of the ways, where it is drawn. */
    private static Optional<SeriesForecast> leading(Forecast forecast, Ways ways) {
        return SpreadWording.limits(ways).stream().findFirst().flatMap(limit -> forecast.series().stream()
                .filter(series -> series.series() == limit).findFirst())
                .or(() -> RoundsPages.leading(forecast));
    }

    private List<Column> columns(Forecast forecast, Ways ways) {
        List<Driver> limits = SpreadWording.limits(ways);
        List<Column> columns = new ArrayList<>();
        add(columns, "ways.now", "ways.column.now", kinds(ways, limits, way -> hours(way) == 0));
        for (int day = 0; day <= lastDay(forecast); day++) {
            columns.add(day(forecast, ways, limits, day));
        }
        add(columns, "ways.column.anyDay", "ways.column.unseen",
                kinds(ways, limits, way -> way.afterHours().isEmpty()));
        columns.add(new Column(speech.say("ways.column.within"), speech.say("ways.column.stays"),
                Collections.nCopies(ways.within(), WITHIN)));
        return columns;
    }

    private Column day(Forecast forecast, Ways ways, List<Driver> limits, int day) {
        List<String> kinds = kinds(ways, limits,
                way -> hours(way) > 0 && formats.daysAfter(forecast.asOf(), at(forecast, way)) == day);
        Instant end = at(forecast, Forecast.HORIZON_HOURS);
        if (day == 0) {
            return new Column(speech.say("ways.today"), speech.say("ways.column.today"), kinds);
        }
        if (day < lastDay(forecast)) {
            Instant then = forecast.asOf().plus(Duration.ofDays(day));
            return new Column(formats.weekday(then), speech.say("ways.column.on", formats.day(then)), kinds);
        }
        return new Column(formats.weekday(end),
                speech.say("ways.column.until", formats.day(end), formats.clock(end)), kinds);
    }

    private long lastDay(Forecast forecast) {
        return formats.daysAfter(forecast.asOf(), at(forecast, Forecast.HORIZON_HOURS));
    }

    private void add(List<Column> columns, String label, String words, List<String> kinds) {
        if (!kinds.isEmpty()) {
            columns.add(new Column(speech.say(label), speech.say(words), kinds));
        }
    }

    private static List<String> kinds(
            Ways ways, List<Driver> limits, Predicate<Way> wanted) {
        return ways.beyond().stream().filter(wanted)
                .map(way -> way.limit().isEmpty() || way.limit().get() == limits.get(0) ? MAIN : OTHER).toList();
    }

    private static int hours(Way way) {
        return way.afterHours().orElse(-1);
    }

    private static Instant at(Forecast forecast, Way way) {
        return at(forecast, hours(way));
    }

    private static Instant at(Forecast forecast, int hours) {
        return forecast.asOf().plus(Duration.ofHours(hours));
    }
}
