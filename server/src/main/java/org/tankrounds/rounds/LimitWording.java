package org.tankrounds.rounds;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Reason;
import org.tankrounds.web.Formats;

/** Where a series stands to its limit: beyond, on the way, near. */
final class LimitWording {
    private final Formats formats;

    LimitWording(Formats formats) {
        this.formats = formats;
    }

    Phrase beyond(Reason reason) {
        return new Phrase(level(reason) + beyondLimit(reason) + change(reason) + ".", read(reason));
    }

    Phrase headedFor(Reason reason) {
        Driver series = series(reason);
        String rest = "";
        if (reason.limit().isPresent()) {
            String limit = Levels.limit(series, reason.limit().getAsDouble());
            rest = reason.hoursToLimit().isPresent()
                    ? limit + " likely by " + formats.by(ahead(reason.hoursToLimit().getAsDouble())) + "."
                    : limit + " is possible within three days.";
        }
        return new Phrase(level(reason) + change(reason) + ".", rest);
    }

    Phrase near(Reason reason) {
        String limit = reason.limit().isPresent()
                ? ", close to its limit of " + Levels.bareLimit(reason.limit().getAsDouble())
                : "";
        return new Phrase(level(reason) + limit + change(reason) + ".", read(reason));
    }

    private String beyondLimit(Reason reason) {
        if (reason.limit().isEmpty()) {
            return "";
        }
        double limit = reason.limit().getAsDouble();
        String side = Levels.harmfulWhenLow(series(reason), limit) ? ", below its limit of " : ", beyond its limit of ";
        return side + Levels.bareLimit(limit);
    }

    private static String level(Reason reason) {
        Driver series = series(reason);
        return reason.value().isPresent()
                ? Levels.name(series) + " " + Levels.withUnit(series, reason.value().getAsDouble())
                : Levels.name(series);
    }

    /** ", up 3.1 since Friday"; where levels are small, the level before says more: ", up from 0.3 on Friday". */
    private String change(Reason reason) {
        Driver series = series(reason);
        if (reason.change().isEmpty() || !Levels.shows(series, reason.change().getAsDouble())) {
            return "";
        }
        double change = reason.change().getAsDouble();
        String direction = change > 0 ? ", up " : ", down ";
        Optional<Instant> start = start(reason);
        boolean small = series == Driver.UN_IONISED_AMMONIA || series == Driver.NITRITE || series == Driver.CHLORINE;
        if (small && reason.previous().isPresent()) {
            return direction + "from " + Levels.bare(series, reason.previous().getAsDouble())
                    + start.map(this::on).orElse("");
        }
        return direction + Levels.bare(series, Math.abs(change))
                + start.map(time -> " since " + formats.since(time)).orElse("");
    }

    private String on(Instant time) {
        String since = formats.since(time);
        if (since.contains(":")) {
            return " at " + since;
        }
        return "yesterday".equals(since) ? " yesterday" : " on " + since;
    }

    private Optional<Instant> start(Reason reason) {
        if (reason.since().isPresent() || reason.overHours().isEmpty()) {
            return reason.since();
        }
        Instant end = reason.at().orElse(formats.now());
        return Optional.of(end.minusSeconds(Math.round(reason.overHours().getAsDouble() * 3600)));
    }

    private String read(Reason reason) {
        return reason.at().map(at -> "Read " + formats.moment(at) + ".").orElse("");
    }

    private Instant ahead(double hours) {
        return formats.now().plus(Duration.ofSeconds(Math.round(hours * 3600)));
    }

    private static Driver series(Reason reason) {
        return reason.driver().orElse(Driver.TEMPERATURE);
    }
}
