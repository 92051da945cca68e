package org.tankrounds.rounds;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tankrounds.belief.Observation;
import org.tankrounds.forecast.Held;
import org.tankrounds.forecast.Limits;
import org.tankrounds.pages.TankPage.Fact;
import org.tankrounds.places.Tank;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Speech;

/** What is taken for true about a tank's water: what is in it, and how often it is changed. */
final class WaterHolding {
    private static final double SELDOM_PER_WEEK = 0.2;

    private static final String UNTREATED = "none";

    private final Formats formats;
    private final Speech speech;
    private final Levels levels;

    WaterHolding(Formats formats) {
        this.formats = formats;
        this.speech = formats.speech();
        this.levels = new Levels(speech);
    }

    List<Fact> facts(TankInput input, Optional<Held> held) {
        Tank tank = input.tank();
        List<Fact> facts = new ArrayList<>();
        facts.add(fact("tank.held.chloride", Analyte.CHLORIDE, input, tank.chlorideMgPerL(),
                level(Analyte.CHLORIDE, Limits.CHLORIDE_WHERE_UNKNOWN_MG_PER_L)));
        facts.add(fact("tank.held.alkalinity", Analyte.ALKALINITY, input, tank.alkalinityMgPerL(),
                speech.say("tank.held.alkalinity.middling")));
        held.ifPresent(known -> facts.add(changes(known)));
        facts.add(new Fact(speech.say("tank.held.volume"),
                Formats.significant(tank.volumeL(), 3) + Formats.NO_BREAK + "L", speech.say("tank.held.told")));
        tank.disinfectant().filter(kind -> !kind.equals(UNTREATED)).ifPresent(kind -> facts.add(
                new Fact(speech.say("tank.held.tap"), speech.say("tank.held.tap." + kind),
                        speech.say("tank.held.told"))));
        return facts;
    }

    /** The newest reading, else what was told of the tap water, else what is assumed. */
    private Fact fact(String key, Analyte analyte, TankInput input, OptionalDouble told, String assumed) {
        String name = speech.say(key);
        Optional<Observation> read = TankHolding.newest(input, analyte);
        if (read.isPresent()) {
            return new Fact(name, read.get().below() ? levels.notDetected() : level(analyte, read.get().value()),
                    speech.say("tank.held.read", formats.dayRead(read.get().at())));
        }
        return told.isPresent() ? new Fact(name, level(analyte, told.getAsDouble()), speech.say("tank.held.tapTold"))
                : new Fact(name, assumed, speech.say("tank.held.assumed"));
    }

    private String level(Analyte analyte, double level) {
        return levels.withUnit(analyte.code(), level);
    }

    private Fact changes(Held held) {
        String text = held.changesPerWeek() < SELDOM_PER_WEEK ? speech.say("tank.held.changes.none")
                : speech.say("tank.held.changes.aWeek", Formats.significant(held.changesPerWeek(), 2),
                        Formats.significant(100 * held.changeShare(), 2));
        return new Fact(speech.say("tank.held.changes"), text, speech.say("tank.held.changes.told"));
    }
}
