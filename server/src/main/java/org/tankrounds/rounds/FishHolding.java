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

/** What is taken for true about a tank's fish and their feed. */
final class FishHolding {
    private static final Duration TWO_WEEKS = Duration.ofDays(14);

    private final Formats formats;

    FishHolding(Formats formats) {
        this.formats = formats;
    }

    Fact alive(Forecast forecast, TankInput input) {
        String kind = forecast.stage() == Stage.EGG ? "eggs" : "fish";
        String counted = TankHolding.newest(input, Analyte.DEATHS)
                .map(dead -> "deaths last counted " + formats.dayRead(dead.at())).orElse("no deaths counted");
        return new Fact("Fish", forecast.fishAlive() + " " + kind + " believed alive", input.lot()
                .map(lot -> Formats.count(lot.eggs(), "egg") + " told by the coordinator; " + counted)
                .orElse("assumed: nobody has said how many eggs came; " + counted));
    }

    Fact stage(Development lot, TankInput input) {
        String text = switch (lot.stageAt(formats.now())) {
            case EGG -> "eggs; hatch about " + formats.date(lot.hatchAt());
            case SAC_FRY -> "sac fry; first feeding about " + formats.date(lot.firstFeedingAt());
            case FEEDING -> "feeding since about " + formats.date(lot.firstFeedingAt());
        };
        return new Fact("Stage", text, basis(input));
    }

    private static String basis(TankInput input) {
        if (input.facts().firstFeedingAt().isPresent()) {
            return "first feeding told by the coordinator";
        }
        return "worked out from temperatures read and the eggs' degree-days, "
                + (input.facts().thermalUnitsC().isPresent() ? "told by the coordinator" : TankHolding.ASSUMED);
    }

    /** What was noted of the last two weeks, by day from the first note to now. */
    Fact feed(TankInput input) {
        Instant since = formats.now().minus(TWO_WEEKS);
        List<Observation> noted = input.observations().stream()
                .filter(seen -> seen.analyte() == Analyte.FEED && seen.at().isAfter(since)).toList();
        Optional<Observation> last = TankHolding.newest(input, Analyte.FEED);
        if (noted.isEmpty()) {
            return new Fact("Feed", "amount unknown", last
                    .map(feed -> "last told by the class " + formats.dayRead(feed.at())).orElse(TankHolding.ASSUMED)
                    + "; what tanks of its age show is taken");
        }
        double grams = noted.stream().mapToDouble(Observation::value).sum();
        double days = Math.max(1, Duration.between(noted.get(0).at(), formats.now()).toHours() / 24.0);
        return new Fact("Feed", "about " + Formats.significant(grams / days, 2) + " g a day",
                "told by the class, last " + formats.dayRead(noted.get(noted.size() - 1).at()));
    }
}
