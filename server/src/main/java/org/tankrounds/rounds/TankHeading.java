package org.tankrounds.rounds;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.Reason;
import org.tankrounds.places.Tank;
import org.tankrounds.web.Formats;

/** A tank's answer in one line: "Room 12: 18 °C by tonight, 9 in 10". */
final class TankHeading {
    private final Formats formats;

    TankHeading(Formats formats) {
        this.formats = formats;
    }

    String of(Tank tank, Optional<TankForecast> row) {
        if (row.isEmpty()) {
            return tank.classroom() + ": its first forecast follows within a minute";
        }
        Forecast forecast = row.get().forecast();
        String what = switch (Tier.of(forecast)) {
            case GO_TODAY -> trouble(forecast) + ", " + Formats.odds(forecast.chance());
            case GO_THIS_WEEK -> forecast.chance() < Tier.THIS_WEEK_CHANCE
                    ? "alkalinity nearly used up"
                    : trouble(forecast) + ", " + Formats.odds(forecast.chance());
            case ASK_FOR_A_READING -> question(forecast);
            case NOTHING_NEEDED -> "nothing needed";
        };
        return tank.classroom() + ": " + what;
    }

    private String trouble(Forecast forecast) {
        Optional<Reason> reason = forecast.reasons().stream()
                .filter(candidate -> candidate.driver().equals(Optional.of(forecast.driver())))
                .findFirst();
        if (forecast.driver() == Driver.DEATHS) {
            return deaths(forecast);
        }
        String name = Levels.inSentence(forecast.driver());
        if (reason.isEmpty() || reason.get().limit().isEmpty()) {
            return name + " may pass its limit";
        }
        double limit = reason.get().limit().getAsDouble();
        if (reason.get().kind() == Reason.Kind.BEYOND_LIMIT) {
            return name + (Levels.harmfulWhenLow(forecast.driver(), limit) ? " below " : " over ")
                    + Levels.limit(forecast.driver(), limit)
                    + (reason.get().hoursToLimit().orElse(1) == 0 ? " now" : " when last read");
        }
        String level = forecast.driver() == Driver.TEMPERATURE
                ? Levels.limit(forecast.driver(), limit)
                : name + " " + Levels.limit(forecast.driver(), limit);
        return reason.get().hoursToLimit().isPresent()
                ? level + " by " + formats.by(ahead(reason.get().hoursToLimit().getAsDouble()))
                : level + " possible within three days";
    }

    private static String question(Forecast forecast) {
        if (Tier.diesUnexplained(forecast)) {
            return deaths(forecast);
        }
        return Tier.awaitsAnother(forecast) ? "a reading to confirm" : silence(forecast);
    }

    private static String deaths(Forecast forecast) {
        return forecast.reasons().stream().filter(reason -> reason.kind() == Reason.Kind.DEATHS).findFirst()
                .map(reason -> reason.count().orElse(0) + " found dead").orElse("deaths");
    }

    private static String silence(Forecast forecast) {
        return forecast.readingAgeHours().isPresent()
                ? "nothing heard for " + Formats.span(forecast.readingAgeHours().getAsDouble())
                : "nobody has read it yet";
    }

    private Instant ahead(double hours) {
        return formats.now().plus(Duration.ofSeconds(Math.round(hours * 3600)));
    }
}
