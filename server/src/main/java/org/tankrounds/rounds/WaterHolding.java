package org.tankrounds.rounds;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tankrounds.belief.Observation;
import org.tankrounds.forecast.Held;
import org.tankrounds.forecast.Limits;
import org.tankrounds.pages.TankPage.Fact;
import org.tankrounds.places.Tank;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Formats;

/** What is taken for true about a tank's water: what is in it, and how often it is changed. */
final class WaterHolding {
    private static final double SELDOM_PER_WEEK = 0.2;

    private final Formats formats;

    WaterHolding(Formats formats) {
        this.formats = formats;
    }

    List<Fact> facts(TankInput input, Optional<Held> held) {
        Tank tank = input.tank();
        List<Fact> facts = new ArrayList<>();
        facts.add(fact("Chloride", TankHolding.newest(input, Analyte.CHLORIDE), tank.chlorideMgPerL(), " mg/L",
                Formats.significant(Limits.CHLORIDE_WHERE_UNKNOWN_MG_PER_L, 2) + " mg/L"));
        facts.add(fact("Alkalinity", TankHolding.newest(input, Analyte.ALKALINITY), tank.alkalinityMgPerL(),
                " mg/L as CaCO₃", "middling"));
        held.ifPresent(known -> facts.add(changes(known)));
        facts.add(new Fact("Volume", Formats.significant(tank.volumeL(), 3) + " L", TankHolding.TOLD));
        tank.disinfectant().filter(kind -> !"none".equals(kind)).ifPresent(kind -> facts.add(
                new Fact("Tap water", "with " + kind.toLowerCase(Locale.ENGLISH), TankHolding.TOLD)));
        return facts;
    }

    /** The newest reading, else what was told of the tap water, else what is assumed. */
    private Fact fact(String name, Optional<Observation> read, OptionalDouble told, String unit, String assumed) {
        if (read.isPresent()) {
            String level = read.get().below() ? "not detected"
                    : Formats.significant(read.get().value(), 2) + unit;
            return new Fact(name, level, "read " + formats.dayRead(read.get().at()));
        }
        return told.isPresent()
                ? new Fact(name, Formats.significant(told.getAsDouble(), 2) + unit,
                        "told of the tap water by the coordinator")
                : new Fact(name, assumed, TankHolding.ASSUMED);
    }

    private static Fact changes(Held held) {
        String basis = "told by the class in the last four weeks";
        if (held.changesPerWeek() < SELDOM_PER_WEEK) {
            return new Fact("Changes", "none to be expected", basis);
        }
        return new Fact("Changes", "about " + Formats.significant(held.changesPerWeek(), 2) + " a week, of "
                + Formats.significant(100 * held.changeShare(), 2) + " %", basis);
    }
}
