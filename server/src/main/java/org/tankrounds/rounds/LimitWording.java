package org.tankrounds.rounds;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Reason;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Speech;

/** Where a series stands to its limit: beyond, on the way, near. */
final class LimitWording {
    private static final double CLOSE_C = 2;
    private static final double CLOSE_PH = 0.7;
    private static final double CLOSE_SHARE = 0.4;

    private final Formats formats;
    private final Speech speech;
    private final Levels levels;

    LimitWording(Formats formats) {
        this.formats = formats;
        this.speech = formats.speech();
        this.levels = new Levels(speech);
    }

    /** Where the newest reading was not beyond, what came before it makes it likely: it says so. */
    Phrase beyond(Reason reason) {
        if (reason.value().isPresent() && reason.limit().isPresent() && !isBeyond(reason, reason.value())) {
            return new Phrase(lead(reason, Optional.empty()), Phrase.joined(belief(reason), read(reason)));
        }
        Optional<String> side = reason.limit().isEmpty() ? Optional.empty()
                : Optional.of(toLimit(low(reason) ? "reasons.belowLimit" : "reasons.beyondLimit", reason));
        return new Phrase(lead(reason, side), read(reason));
    }

    Phrase headedFor(Reason reason) {
        return new Phrase(lead(reason, Optional.empty()), outlook(reason));
    }

    Phrase near(Reason reason) {
        if (reason.limit().isEmpty()) {
            return new Phrase(lead(reason, Optional.empty()), read(reason));
        }
        if (isClose(reason)) {
            return new Phrase(lead(reason, Optional.of(toLimit("reasons.closeToLimit", reason))), read(reason));
        }
        return new Phrase(lead(reason, Optional.empty()), Phrase.joined(notSure(reason), read(reason)));
    }

    /** The series that climbs because nothing cools it. */
    Phrase chillerLooksStopped(Reason reason) {
        return new Phrase(lead(reason, Optional.empty()), stopped(reason));
    }

    private String stopped(Reason reason) {
        if (reason.limit().isEmpty() || reason.hoursToLimit().isEmpty()) {
            return speech.say("reasons.chiller");
        }
        double hours = reason.hoursToLimit().getAsDouble();
        return hours == 0 ? speech.say("reasons.chillerPast", limit(reason))
                : speech.say("reasons.chillerBy", limit(reason), formats.by(ahead(hours)));
    }

    private String outlook(Reason reason) {
        if (reason.limit().isEmpty()) {
            return "";
        }
        return reason.hoursToLimit().isPresent()
                ? speech.say("reasons.likelyPast", limit(reason),
                        formats.by(ahead(reason.hoursToLimit().getAsDouble())))
                : speech.say("reasons.possiblyPast", limit(reason));
    }

    /** The unit was just said; a temperature alone would read as a mere number. */
    private String limit(Reason reason) {
        double limit = reason.limit().getAsDouble();
        return series(reason) == Driver.TEMPERATURE ? levels.limit(Driver.TEMPERATURE, limit)
                : toLimit("reasons.itsLimit", reason);
    }

    private String toLimit(String key, Reason reason) {
        return speech.say(key, levels.bareLimit(series(reason), reason.limit().getAsDouble()));
    }

    private static boolean low(Reason reason) {
        return Levels.harmfulWhenLow(series(reason), reason.limit().getAsDouble());
    }

    private static String safeSide(Reason reason) {
        return low(reason) ? "above" : "below";
    }

    private String belief(Reason reason) {
        if (isBeyond(reason, reason.previous())) {
            return speech.say("reasons.oneIsTooFew." + safeSide(reason), limit(reason));
        }
        return reason.value().getAsDouble() == 0 ? notSure(reason)
                : speech.say("reasons.likelyBeyond", limit(reason));
    }

    private String notSure(Reason reason) {
        return speech.say("reasons.notSure." + safeSide(reason), limit(reason));
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

    /** "Temperature 15.6 °C, close to its limit of 18, up 3.1 since Friday." */
    private String lead(Reason reason, Optional<String> side) {
        List<String> clauses = new ArrayList<>();
        clauses.add(level(reason));
        side.ifPresent(clauses::add);
        change(reason).ifPresent(clauses::add);
        return String.join(", ", clauses) + ".";
    }

    private String level(Reason reason) {
        Driver series = series(reason);
        return reason.value().isPresent()
                ? speech.say("levels.of", levels.name(series), levels.read(series, reason.value().getAsDouble()))
                : levels.name(series);
    }

    /** "up 3.1 since Friday"; where levels are small, the level before says more: "up from 0.3 on Friday". */
    private Optional<String> change(Reason reason) {
        Driver series = series(reason);
        if (reason.change().isEmpty() || !Levels.shows(series, reason.change().getAsDouble())) {
            return Optional.empty();
        }
        double change = reason.change().getAsDouble();
        String key = "reasons.change." + (change > 0 ? "up" : "down");
        Optional<Instant> start = start(reason);
        if (Levels.isSmall(series) && reason.previous().isPresent()) {
            String before = levels.bare(series, reason.previous().getAsDouble());
            return Optional.of(start.map(time -> speech.say(key + "FromOn", before, formats.when(time)))
                    .orElseGet(() -> speech.say(key + "From", before)));
        }
        String by = levels.difference(series, Math.abs(change));
        return Optional.of(start.map(time -> speech.say(key + "Since", by, formats.since(time)))
                .orElseGet(() -> speech.say(key, by)));
    }

    private Optional<Instant> start(Reason reason) {
        if (reason.since().isPresent() || reason.overHours().isEmpty()) {
            return reason.since();
        }
        Instant end = reason.at().orElse(formats.now());
        return Optional.of(end.minusSeconds(Math.round(reason.overHours().getAsDouble() * 3600)));
    }

    private String read(Reason reason) {
        return reason.at().map(at -> speech.say("reasons.read", formats.moment(at))).orElse("");
    }

    private Instant ahead(double hours) {
        return formats.now().plus(Duration.ofSeconds(Math.round(hours * 3600)));
    }

    private static Driver series(Reason reason) {
        return reason.driver().orElse(Driver.TEMPERATURE);
    }
}
