package org.tankrounds.rounds;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tankrounds.belief.Observation;
import org.tankrounds.fish.Development;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.pages.TankPage.Fact;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Speech;

/** What is taken for true about a tank's fish and their feed. */
final class FishHolding {
    private static final Duration TWO_WEEKS = Duration.ofDays(14);

    private final Formats formats;
    private final Speech speech;

    FishHolding(Formats formats) {
        this.formats = formats;
        this.speech = formats.speech();
    }

    Fact alive(Forecast forecast, TankInput input) {
        String alive = forecast.stage() == Stage.EGG ? "tank.held.eggsAlive" : "tank.held.fishAlive";
        String came = input.lot().map(lot -> speech.say("tank.held.eggsTold", lot.eggs()))
                .orElseGet(() -> speech.say("tank.held.eggsNotTold"));
        String counted = TankHolding.newest(input, Analyte.DEATHS)
                .map(dead -> speech.say("tank.held.deathsCounted", formats.dayRead(dead.at())))
                .orElseGet(() -> speech.say("tank.held.noDeathsCounted"));
        return new Fact(speech.say("tank.held.fish"), speech.say(alive, forecast.fishAlive()),
                TankHolding.clauses(List.of(came, counted)));
    }

    Fact stage(Development lot, TankInput input) {
        String text = switch (lot.stageAt(formats.now())) {
            case EGG -> speech.say("tank.held.stage.eggs", formats.date(lot.hatchAt()));
            case SAC_FRY -> speech.say("tank.held.stage.sacFry", formats.date(lot.firstFeedingAt()));
            case FEEDING -> speech.say("tank.held.stage.feeding", formats.date(lot.firstFeedingAt()));
        };
        return new Fact(speech.say("tank.held.stage"), text, speech.say(basis(input)));
    }

    private static String basis(TankInput input) {
        if (input.facts().firstFeedingAt().isPresent()) {
            return "tank.held.stage.told";
        }
        return input.facts().thermalUnitsC().isPresent()
                ? "tank.held.stage.degreeDaysTold" : "tank.held.stage.degreeDaysAssumed";
    }

    /** What was noted of the last two weeks, by day from the first note to now. */
    Fact feed(TankInput input) {
        Instant since = formats.now().minus(TWO_WEEKS);
        List<Observation> noted = input.observations().stream()
                .filter(seen -> seen.analyte() == Analyte.FEED && seen.at().isAfter(since)).toList();
        Optional<Observation> last = TankHolding.newest(input, Analyte.FEED);
        if (noted.isEmpty()) {
            return new Fact(speech.say("tank.held.feed"), speech.say("tank.held.feed.unknown"), last
                    .map(feed -> speech.say("tank.held.feed.longAgo", formats.dayRead(feed.at())))
                    .orElseGet(() -> speech.say("tank.held.feed.assumed")));
        }
        double grams = noted.stream().mapToDouble(Observation::value).sum();
        double days = Math.max(1, Duration.between(noted.get(0).at(), formats.now()).toHours() / 24.0);
        return new Fact(speech.say("tank.held.feed"),
                speech.say("tank.held.feed.grams", Formats.significant(grams / days, 2)),
                speech.say("tank.held.feed.told", formats.dayRead(noted.get(noted.size() - 1).at())));
    }
}
