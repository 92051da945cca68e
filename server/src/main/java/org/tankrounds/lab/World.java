package org.tankrounds.lab;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tankrounds.lab.Mechanics.Acidity;
import org.tankrounds.lab.Mechanics.Heat;
import org.tankrounds.lab.Mechanics.Kinetics;
import org.tankrounds.lab.Mechanics.Thermostat;
import org.tankrounds.lab.Mechanics.Visits;
import org.tankrounds.water.Range;

/**
 * A country of classrooms: the span of each trait, and which mechanics hold. The six named ones differ so much that
 * what is good in all of them is not tuned to one; those drawn by number are for training.
 *
 * @param name shown in tables
 * @param spans of every trait
 * @param mechanics what the water, the chillers and the classes go by
 */
public record World(String name, Map<Trait, Range> spans, Mechanics mechanics) {

    /** Nothing out of the way. */
    static final World USUAL = usual("usual");
    /** Soft, nearly chloride-free water; pH falls and nitrite bites. */
    static final World SOFT_WATER = usual("soft water")
            .with(Trait.ALKALINITY_MG_PER_L, 15, 50)
            .with(Trait.CHLORIDE_MG_PER_L, 2, 10)
            .with(Trait.CARBON_DIOXIDE_MG_PER_L, 2, 6)
            .with(Trait.CARBON_DIOXIDE_PER_WASTE, 2, 5)
            .with(Trait.SEED_COD_PER_L, 0.01, 0.4)
            .with(Trait.PH_NOISE, 0.15, 0.35);
    /** Hard water of high pH, where a little ammonia is much; big classes, crowded tanks. */
    static final World HARD_WATER = usual("hard water")
            .with(Trait.ALKALINITY_MG_PER_L, 120, 260)
            .with(Trait.CHLORIDE_MG_PER_L, 15, 80)
            .with(Trait.CARBON_DIOXIDE_MG_PER_L, 1.5, 4)
            .with(Trait.CARBON_DIOXIDE_PER_WASTE, 0, 1)
            .with(Trait.EGGS, 90, 220)
            .with(Trait.VOLUME_L, 80, 150)
            .with(Trait.CHANGE_EVERY_DAYS, 3, 8)
            .with(Trait.REACTS, 0.4, 0.9)
            .under(new Mechanics(Kinetics.PROPORTIONAL, Acidity.DRIFTING, Heat.ONE_LUMP, Thermostat.GRADUAL,
                    Visits.SAME_WEEKDAYS));
    /** Old chillers on bare glass in warm rooms; filters that come ripe from last year. */
    static final World WARM_ROOMS = usual("warm rooms")
            .with(Trait.ROOM_C, 21.5, 24.5)
            .with(Trait.LOSS_W_PER_K, 8, 18)
            .with(Trait.COOLING_W, 100, 240)
            .with(Trait.SPRING_K, 2, 6)
            .with(Trait.CHILLER_STOPS_PER_DAY, 0.007, 0.016)
            .with(Trait.CHILLER_FADES_PER_DAY, 0.003, 0.008)
            .with(Trait.SEED_COD_PER_L, 0.2, 0.8)
            .with(Trait.REPAIRS, 0.1, 0.4)
            .under(new Mechanics(Kinetics.GROWING, Acidity.CARBONATE, Heat.TWO_LUMPS, Thermostat.ON_OFF,
                    Visits.ANY_DAY));
    /** Slow, cold filters and classes that seldom look, read badly and do little. */
    static final World FEW_READINGS = usual("few readings")
            .with(Trait.READS, 0.12, 0.5)
            .with(Trait.CARDS, 0.15, 0.5)
            .with(Trait.EYE, 0.2, 0.4)
            .with(Trait.SLIPS, 0.01, 0.03)
            .with(Trait.SCALE_MIX_UPS, 0.004, 0.02)
            .with(Trait.REACTS, 0, 0.2)
            .with(Trait.FALLS_SILENT_PER_DAY, 0.006, 0.02)
            .with(Trait.FILTER_SPEED, 0.55, 0.9)
            .with(Trait.FACTS_MISSING, 0.2, 0.35)
            .with(Trait.CHANGE_SKIPPED, 0.25, 0.5)
            .with(Trait.FEED_NOTED, 0, 0.3)
            .with(Trait.KIT_LACKS, 0, 0.3)
            .with(Trait.STEP_UNKNOWN, 0.2, 0.6)
            .under(new Mechanics(Kinetics.CAPPED, Acidity.DRIFTING, Heat.ONE_LUMP, Thermostat.GRADUAL,
                    Visits.WHEN_WORRIED));
    /** Careful classes: they read daily, act at once and insulate; bad water is rare. */
    static final World CAREFUL = usual("careful")
            .with(Trait.READS, 0.75, 0.97)
            .with(Trait.CARDS, 0.4, 0.95)
            .with(Trait.EYE, 0.05, 0.15)
            .with(Trait.PH_NOISE, 0.05, 0.15)
            .with(Trait.REACTS, 0.5, 0.9)
            .with(Trait.REPAIRS, 0.4, 0.8)
            .with(Trait.LOSS_W_PER_K, 2.5, 5)
            .with(Trait.SEED_COD_PER_L, 0.05, 0.6)
            .with(Trait.FILTER_SPEED, 1, 1.7)
            .with(Trait.EGGS, 30, 90)
            .with(Trait.RATION, 0.004, 0.01)
            .with(Trait.OVERFEEDS, 0.002, 0.01);

    /** The worlds that scores are reported for. */
    public static final List<World> NAMED =
            List.of(USUAL, SOFT_WATER, HARD_WATER, WARM_ROOMS, FEW_READINGS, CAREFUL);

    private static final Set<Trait> MORE_WITH_CARE = EnumSet.of(Trait.READS, Trait.CARDS, Trait.REACTS, Trait.REPAIRS,
            Trait.NOTICED_PER_DAY, Trait.SEED_COD_PER_L, Trait.FILTER_ROOM_COD_PER_L, Trait.DEATHS_NOTED,
            Trait.CHANGES_NOTED);
    private static final Set<Trait> LESS_WITH_CARE = EnumSet.of(Trait.EGGS, Trait.RATION, Trait.OVERFEEDS,
            Trait.LOSS_W_PER_K, Trait.CHILLER_STOPS_PER_DAY, Trait.CHILLER_FADES_PER_DAY, Trait.MIS_SET_PER_DAY,
            Trait.FILTER_HURT_PER_DAY, Trait.CHANGE_EVERY_DAYS, Trait.CHANGE_SKIPPED, Trait.SLIPS,
            Trait.SCALE_MIX_UPS, Trait.FALLS_SILENT_PER_DAY);

    private static World usual(String name) {
        Map<Trait, Range> spans = new EnumMap<>(Trait.class);
        for (Trait trait : Trait.values()) {
            spans.put(trait, trait.usual());
        }
        return new World(name, spans, Mechanics.USUAL);
    }

    private World with(Trait trait, double from, double to) {
        Map<Trait, Range> changed = new EnumMap<>(spans);
        changed.put(trait, new Range(from, to));
        return new World(name, changed, mechanics);
    }

    private World under(Mechanics other) {
        return new World(name, spans, other);
    }

    /**
     * A world by number: its mechanics by chance, every span a random part of what lies between the usual and the
     * widest, no less than a quarter of it. How strange it may be, and how much care is taken, are traits of a whole
     * country: where care is great, all that comes of it leans the same way.
     */
    public static World drawn(int number) {
        Luck luck = Luck.of(number, "world");
        double care = luck.uniform();
        double strangeness = luck.uniform();
        Map<Trait, Range> spans = new EnumMap<>(Trait.class);
        for (Trait trait : Trait.values()) {
            Range possible = trait.between(strangeness);
            double width = luck.between(0.25, 0.8);
            double from = (1 - width) * leaning(trait, care, luck.uniform());
            spans.put(trait, new Range(trait.at(possible, from), trait.at(possible, from + width)));
        }
        return new World("drawn " + number, spans, Mechanics.drawn(luck));
    }

    private static double leaning(Trait trait, double care, double chance) {
        if (MORE_WITH_CARE.contains(trait)) {
            return (care + chance) / 2;
        }
        return LESS_WITH_CARE.contains(trait) ? (1 - care + chance) / 2 : chance;
    }

    /** One tank's traits. */
    Map<Trait, Double> tank(Luck luck) {
        Map<Trait, Double> traits = new EnumMap<>(Trait.class);
        spans.forEach((trait, span) -> traits.put(trait, trait.at(span, luck.uniform())));
        return traits;
    }
}
