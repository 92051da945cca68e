package org.tankrounds.rounds;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Reason;
import org.tankrounds.web.Formats;

/** Where a series stands to its limit: beyond, on the way, near. */
final class LimitWording {
    private static final double CLOSE_C = 2;
    private static final double CLOSE_PH = 0.7;
    private static final double CLOSE_SHARE = 0.4;

    private final Formats formats;

    LimitWording(Formats formats) {
        this.formats = formats;
    }

    /** Where the newest reading was not beyond, what came before it makes it likely: it says so. */
    Phrase beyond(Reason reason) {
        if (reason.value().isPresent() && reason.limit().isPresent() && !isBeyond(reason, reason.value())) {
            return new Phrase(level(reason) + change(reason) + ".", belief(reason) + read(reason));
        }
        return new Phrase(level(reason) + beyondLimit(reason) + change(reason) + ".", read(reason).strip());
    }

    Phrase headedFor(Reason reason) {
        return new Phrase(level(reason) + change(reason) + ".", outlook(reason));
    }

    Phrase near(Reason reason) {
        if (reason.limit().isEmpty()) {
            return new Phrase(level(reason) + change(reason) + ".", read(reason).strip());
        }
        if (isClose(reason)) {
            return new Phrase(level(reason) + ", close to its limit of "
                    + Levels.bareLimit(reason.limit().getAsDouble()) + change(reason) + ".", read(reason).strip());
        }
        return new Phrase(level(reason) + change(reason) + ".",
                "Not certain to stay " + (low(reason) ? "above " : "below ") + limit(reason) + "." + read(reason));
    }

    /** The series that climbs because nothing cools it. */
    Phrase chillerLooksStopped(Reason reason) {
        String rest = "As if the chiller had stopped";
        if (reason.limit().isPresent() && reason.hoursToLimit().isPresent()) {
            double hours = reason.hoursToLimit().getAsDouble();
            rest += hours == 0 ? "; past " + limit(reason) : "; " + limit(reason) + " by " + formats.by(ahead(hours));
        }
        return new Phrase(level(reason) + change(reason) + ".", rest + ".");
    }

    private String outlook(Reason reason) {
        if (reason.limit().isEmpty()) {
            return "";
        }
        return reason.hoursToLimit().isPresent()
                ? "Likely past " + limit(reason) + " by " + formats.by(ahead(reason.hoursToLimit().getAsDouble())) + "."
                : "Past " + limit(reason) + " is possible within three days.";
    }

    /** The unit was just said; a temperature alone would read as a mere number. */
    private static String limit(Reason reason) {
        double limit = reason.limit().getAsDouble();
        return series(reason) == Driver.TEMPERATURE
                ? Levels.limit(Driver.TEMPERATURE, limit)
                : "its limit of " + Levels.bareLimit(limit);
    }

    private static boolean low(Reason reason) {
        return Levels.harmfulWhenLow(series(reason), reason.limit().getAsDouble());
    }

    private static String belief(Reason reason) {
        String side = low(reason) ? "above " : "below ";
        if (isBeyond(reason, reason.previous())) {
            return "It was beyond before; one reading is too few to be sure that it is " + side + limit(reason)
                    + " again.";
        }
        return reason.value().getAsDouble() == 0 ? "Not certain to stay " + side + limit(reason) + "."
                : "Likely beyond " + limit(reason) + " by now.";
    }

    private static boolean isBeyond(Reason reason, OptionalDouble level) {
        double limit = reason.limit().getAsDouble();
        return level.isPresent() && (low(reason) ? level.getAsDouble() < limit : level.getAsDouble() > limit);
    }

    private static boolean isClose(Reason reason) {
        if (reason.value().isEmpty()) {
            return false;
        }
        double value = reason.value().getAsDouble();
        double limit = reason.limit().getAsDouble();
        return switch (series(reason)) {
            case TEMPERATURE -> Math.abs(value - limit) <= CLOSE_C;
            case PH -> Math.abs(value - limit) <= CLOSE_PH;
            default -> Math.abs(value - limit) <= CLOSE_SHARE * limit;
        };
    }

    private String beyondLimit(Reason reason) {
        if (reason.limit().isEmpty()) {
            return "";
        }
        String side = low(reason) ? ", below its limit of " : ", beyond its limit of ";
        return side + Levels.bareLimit(reason.limit().getAsDouble());
    }

    private static String level(Reason reason) {
        Driver series = series(reason);
        return reason.value().isPresent()
                ? Levels.name(series) + " " + Levels.read(series, reason.value().getAsDouble())
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
        if (Levels.isSmall(series) && reason.previous().isPresent()) {
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
        return reason.at().map(at -> " Read " + formats.moment(at) + ".").orElse("");
    }

    private Instant ahead(double hours) {
        return formats.now().plus(Duration.ofSeconds(Math.round(hours * 3600)));
    }

    private static Driver series(Reason reason) {
        return reason.driver().orElse(Driver.TEMPERATURE);
    }
}
