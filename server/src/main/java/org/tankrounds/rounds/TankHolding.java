package org.tankrounds.rounds;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tankrounds.belief.Observation;
import org.tankrounds.fish.Development;
import org.tankrounds.forecast.Held;
import org.tankrounds.forecast.Ripeness;
import org.tankrounds.pages.TankPage.Fact;
import org.tankrounds.places.Tank;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Speech;

/** What is taken for true about a tank, each with who said so, when it was read, or that nobody said. */
final class TankHolding {
    /** Older than this, what tanks of its age show has taken the readings' place. */
    private static final Duration STILL_TELLS = Duration.ofDays(21);
    private static final double SURE = 0.05;
    private static final String OTHER = "other";

    private final Formats formats;
    private final Speech speech;
    private final FishHolding fish;
    private final WaterHolding water;

    TankHolding(Formats formats) {
        this.formats = formats;
        this.speech = formats.speech();
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
        String holds = formats.temperature(held.setPointC(), 1);
        String text = stopped < SURE ? speech.say("tank.held.chiller.works", holds)
                : speech.say("tank.held.chiller.stopped", formats.chance(stopped), holds);
        String set = input.tank().chillerSetPointC().stream()
                .mapToObj(setPoint -> speech.say("tank.held.chiller.set", formats.temperature(setPoint, 1)))
                .findFirst().orElseGet(() -> speech.say("tank.held.chiller.notSet"));
        String read = newest(input, Analyte.TEMPERATURE)
                .map(reading -> speech.say("tank.held.chiller.read", formats.dayRead(reading.at())))
                .orElseGet(() -> speech.say("tank.held.chiller.notRead"));
        return new Fact(speech.say("tank.held.chiller"), text, clauses(List.of(read, set)));
    }

    private Fact filter(TankInput input, Held held) {
        Tank tank = input.tank();
        List<String> basis = new ArrayList<>();
        basis.add(basisOfFilter(input));
        if (!tank.filterKind().equals(OTHER)) {
            basis.add(speech.say("tank.held.kind." + tank.filterKind()));
        }
        tank.filterStartedOn().map(day -> formats.date(day.atStartOfDay(tank.zone()).toInstant()))
                .ifPresent(day -> basis.add(speech.say("tank.held.filter.fedSince", day)));
        return new Fact(speech.say("tank.held.filter"), ripeness(held.filter()), clauses(basis));
    }

    private String ripeness(Ripeness filter) {
        return speech.say("tank.held.filter." + filter.name().toLowerCase(Locale.ROOT));
    }

    private String basisOfFilter(TankInput input) {
        Optional<Instant> read = newest(input, Analyte.TOTAL_AMMONIA).or(() -> newest(input, Analyte.NITRITE))
                .map(Observation::at).filter(at -> at.isAfter(formats.now().minus(STILL_TELLS)));
        return read.map(at -> speech.say("tank.held.filter.read", formats.dayRead(at)))
                .orElseGet(() -> speech.say("tank.held.filter.notRead"));
    }

    static String clauses(List<String> clauses) {
        return String.join("; ", clauses);
    }

    static Optional<Observation> newest(TankInput input, Analyte analyte) {
        return input.observations().stream().filter(seen -> seen.analyte() == analyte && !seen.doubtful())
                .reduce((before, after) -> after);
    }
}
