package org.tankrounds.rounds;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tankrounds.belief.Observation;
import org.tankrounds.fish.Development;
import org.tankrounds.forecast.Held;
import org.tankrounds.forecast.Ripeness;
import org.tankrounds.pages.TankPage.Fact;
import org.tankrounds.places.Tank;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Formats;

/** What is taken for true about a tank, each with who said so, when it was read, or that nobody said. */
final class TankHolding {
    static final String ASSUMED = "assumed: nobody has said";
    static final String TOLD = "told by the coordinator";
    /** Older than this, what tanks of its age show has taken the readings' place. */
    private static final Duration STILL_TELLS = Duration.ofDays(21);
    private static final double SURE = 0.05;

    private final Formats formats;
    private final FishHolding fish;
    private final WaterHolding water;

    TankHolding(Formats formats) {
        this.formats = formats;
        this.fish = new FishHolding(formats);
        this.water = new WaterHolding(formats);
    }

    List<Fact> facts(TankInput input, Optional<TankForecast> row, Optional<Development> development) {
        List<Fact> facts = new ArrayList<>();
        Optional<Held> held = row.flatMap(TankForecast::held);
        held.ifPresent(known -> facts.add(chiller(input, known)));
        held.ifPresent(known -> facts.add(filter(input, known)));
        row.ifPresent(forecast -> facts.add(fish.alive(forecast.forecast(), input)));
        development.ifPresent(lot -> facts.add(fish.stage(lot, input)));
        facts.add(fish.feed(input));
        facts.addAll(water.facts(input, held));
        return facts;
    }

    private Fact chiller(TankInput input, Held held) {
        double stopped = held.stoppedChance();
        String holds = "holds " + Formats.number(held.setPointC(), 1) + " °C when it runs";
        String text = stopped < SURE ? "working, " + holds
                : "stopped or too weak, " + Formats.odds(stopped) + "; " + holds;
        String set = input.tank().chillerSetPointC().stream()
                .mapToObj(setPoint -> "set to " + Formats.number(setPoint, 1) + " °C, " + TOLD).findFirst()
                .orElse("set-point " + ASSUMED);
        String read = newest(input, Analyte.TEMPERATURE)
                .map(reading -> "from temperatures, last read " + formats.dayRead(reading.at()))
                .orElse("assumed: no temperature read");
        return new Fact("Chiller", text, read + "; " + set);
    }

    private Fact filter(TankInput input, Held held) {
        return new Fact("Filter", ripeness(held.filter()), basisOfFilter(input) + kind(input.tank()));
    }

    private static String ripeness(Ripeness filter) {
        return switch (filter) {
            case UNFED -> "little to live on before the fish feed";
            case BEHIND -> "behind the feed: ammonia is not kept down";
            case HALF_RIPE -> "half ripe: ammonia is kept down, nitrite not yet";
            case RIPE -> "keeps up with the feed";
        };
    }

    private String basisOfFilter(TankInput input) {
        Optional<Instant> read = newest(input, Analyte.TOTAL_AMMONIA).or(() -> newest(input, Analyte.NITRITE))
                .map(Observation::at).filter(at -> at.isAfter(formats.now().minus(STILL_TELLS)));
        return read.map(at -> "from ammonia and nitrite, last read " + formats.dayRead(at))
                .orElse("assumed from the fish's age: ammonia not read lately");
    }

    private String kind(Tank tank) {
        String kind = tank.filterKind().equals("other") ? "" : "; " + tank.filterKind().replace('_', ' ');
        return kind + tank.filterStartedOn().map(day -> "; fed since "
                + formats.date(day.atStartOfDay(tank.zone()).toInstant()) + ", " + TOLD).orElse("");
    }

    static Optional<Observation> newest(TankInput input, Analyte analyte) {
        return input.observations().stream().filter(seen -> seen.analyte() == analyte && !seen.doubtful())
                .reduce((before, after) -> after);
    }
}
