package org.tankrounds.rounds;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.tankrounds.behaviour.Alarm;
import org.tankrounds.behaviour.LookWording;
import org.tankrounds.behaviour.SeenLately;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.Reason;
import org.tankrounds.places.Tank;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Speech;

/** A tank's answer in one line: "Room 12: 18 °C by tonight, 9 in 10". */
final class TankHeading {
    private final Formats formats;
    private final Speech speech;
    private final Levels levels;

    TankHeading(Formats formats) {
        this.formats = formats;
        this.speech = formats.speech();
        this.levels = new Levels(speech);
    }

    /** @param seen what stands of what its class saw of the fish lately */
    String of(Tank tank, Optional<TankForecast> row, SeenLately seen) {
        return speech.say("tank.heading", tank.classroom(), inTrouble(row, seen)
                .orElseGet(() -> row.map(held -> what(held.forecast()))
                        .orElseGet(() -> speech.say("tank.heading.first"))));
    }

    /** Gasping fish come before all that only may be; where nothing else is needed, so do those that are not well. */
    private Optional<String> inTrouble(Optional<TankForecast> row, SeenLately seen) {
        Stage stage = row.map(held -> held.forecast().stage()).orElse(Stage.FEEDING);
        Tier tier = row.map(held -> Tier.of(held.forecast())).orElse(Tier.ASK_FOR_A_READING);
        boolean grave = seen.alarm(stage) == Alarm.ACT && tier != Tier.GO_TODAY;
        return grave || seen.isTold(stage) && tier == Tier.NOTHING_NEEDED
                ? Optional.of(speech.say("tank.heading.seen", LookWording.list(seen.gravest(stage), speech.words())))
                : Optional.empty();
    }

    private String what(Forecast forecast) {
        return switch (Tier.of(forecast)) {
            case GO_TODAY -> withChance(forecast);
            case GO_THIS_WEEK -> forecast.chance() < Tier.THIS_WEEK_CHANCE
                    ? speech.say("tank.heading.alkalinity") : withChance(forecast);
            case ASK_FOR_A_READING -> question(forecast);
            case NOTHING_NEEDED -> speech.say("tank.heading.nothing");
        };
    }

    private String withChance(Forecast forecast) {
        return speech.say("tank.heading.withChance", trouble(forecast), formats.chance(forecast.chance()));
    }

    private String trouble(Forecast forecast) {
        Driver driver = forecast.driver();
        if (driver == Driver.DEATHS) {
            return deaths(forecast);
        }
        Optional<Reason> reason = forecast.reasons().stream()
                .filter(candidate -> candidate.driver().equals(Optional.of(driver)))
                .findFirst().filter(first -> first.limit().isPresent());
        return reason.map(first -> toLimit(driver, first, first.limit().getAsDouble()))
                .orElseGet(() -> speech.say("tank.heading.mayPass", levels.inSentence(driver)));
    }

    private String toLimit(Driver driver, Reason reason, double limit) {
        String level = levels.limit(driver, limit);
        if (reason.kind() == Reason.Kind.BEYOND_LIMIT) {
            return speech.say(beyond(Levels.harmfulWhenLow(driver, limit), reason.hoursToLimit().orElse(1) == 0),
                    levels.inSentence(driver), level);
        }
        String named = driver == Driver.TEMPERATURE ? level
                : speech.say("levels.of", levels.inSentence(driver), level);
        return reason.hoursToLimit().isPresent()
                ? speech.say("tank.heading.by", named, formats.by(ahead(reason.hoursToLimit().getAsDouble())))
                : speech.say("tank.heading.possible", named);
    }

    private static String beyond(boolean low, boolean now) {
        if (low) {
            return now ? "tank.heading.belowNow" : "tank.heading.belowLast";
        }
        return now ? "tank.heading.overNow" : "tank.heading.overLast";
    }

    private String question(Forecast forecast) {
        if (Tier.diesUnexplained(forecast)) {
            return deaths(forecast);
        }
        return Tier.awaitsAnother(forecast) ? speech.say("tank.heading.toConfirm") : silence(forecast);
    }

    private String deaths(Forecast forecast) {
        return forecast.reasons().stream().filter(reason -> reason.kind() == Reason.Kind.DEATHS).findFirst()
                .map(reason -> speech.say("tank.heading.dead", reason.count().orElse(0)))
                .orElseGet(() -> levels.inSentence(Driver.DEATHS));
    }

    private String silence(Forecast forecast) {
        return forecast.readingAgeHours().isPresent()
                ? speech.say("tank.heading.silent", formats.lasting(forecast.readingAgeHours().getAsDouble()))
                : speech.say("tank.heading.unread");
    }

    private Instant ahead(double hours) {
        return formats.now().plus(Duration.ofSeconds(Math.round(hours * 3600)));
    }
}
