package org.tankrounds.lab;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.tankrounds.water.Range;

/**
 * A country of classrooms: the span of each trait, and which mechanics hold. The six named ones differ so much that
 * what is good in all of them is not tuned to one; those drawn by number are for training.
 *
 * @param name shown in tables
 * @param spans of every trait
 */
public record World(String name, Map<Trait, Range> spans) {

    /** Nothing out of the way. */
    static final World USUAL = new World("usual", Map.of());
    /** Soft, nearly chloride-free water; pH falls and nitrite bites. */
    static final World SOFT_WATER = new World("soft water", Map.of(
            Trait.ALKALINITY_MG_PER_L, new Range(15, 50), Trait.CHLORIDE_MG_PER_L, new Range(2, 10),
            Trait.CARBON_DIOXIDE_MG_PER_L, new Range(2, 6), Trait.CARBON_DIOXIDE_PER_WASTE, new Range(2, 5),
            Trait.SEED_COD_PER_L, new Range(0.01, 0.4), Trait.PH_NOISE, new Range(0.15, 0.35)));
    /** Hard water of high pH, where a little ammonia is much; big classes, crowded tanks. */
    static final World HARD_WATER = new World("hard water", Map.of(
            Trait.ALKALINITY_MG_PER_L, new Range(120, 260), Trait.CHLORIDE_MG_PER_L, new Range(15, 80),
            Trait.CARBON_DIOXIDE_MG_PER_L, new Range(1.5, 4), Trait.CARBON_DIOXIDE_PER_WASTE, new Range(0, 1),
            Trait.EGGS, new Range(90, 220), Trait.VOLUME_L, new Range(80, 150),
            Trait.CHANGE_EVERY_DAYS, new Range(3, 8), Trait.REACTS, new Range(0.4, 0.9)));
    /** Old chillers on bare glass in warm rooms; filters that come ripe from last year. */
    static final World WARM_ROOMS = new World("warm rooms", Map.of(
            Trait.ROOM_C, new Range(21.5, 24.5), Trait.LOSS_W_PER_K, new Range(8, 18),
            Trait.COOLING_W, new Range(100, 240), Trait.SPRING_K, new Range(2, 6),
            Trait.CHILLER_STOPS_PER_DAY, new Range(0.007, 0.016), Trait.CHILLER_FADES_PER_DAY, new Range(0.003, 0.008),
            Trait.SEED_COD_PER_L, new Range(0.2, 0.8), Trait.REPAIRS, new Range(0.1, 0.4)));
    /** Slow, cold filters and classes that seldom look, read badly and do little. */
    static final World FEW_READINGS = new World("few readings", Map.ofEntries(
            Map.entry(Trait.READS, new Range(0.12, 0.5)), Map.entry(Trait.CARDS, new Range(0.15, 0.5)),
            Map.entry(Trait.EYE, new Range(0.2, 0.4)), Map.entry(Trait.SLIPS, new Range(0.01, 0.03)),
            Map.entry(Trait.SCALE_MIX_UPS, new Range(0.004, 0.02)), Map.entry(Trait.REACTS, new Range(0, 0.2)),
            Map.entry(Trait.FALLS_SILENT_PER_DAY, new Range(0.006, 0.02)),
            Map.entry(Trait.FILTER_SPEED, new Range(0.55, 0.9)), Map.entry(Trait.FACTS_MISSING, new Range(0.2, 0.35)),
            Map.entry(Trait.CHANGE_SKIPPED, new Range(0.25, 0.5)), Map.entry(Trait.FEED_NOTED, new Range(0, 0.3))));
    /** Careful classes: they read daily, act at once and insulate; bad water is rare. */
    static final World CAREFUL = new World("careful", Map.ofEntries(
            Map.entry(Trait.READS, new Range(0.75, 0.97)), Map.entry(Trait.CARDS, new Range(0.4, 0.95)),
            Map.entry(Trait.EYE, new Range(0.05, 0.15)), Map.entry(Trait.PH_NOISE, new Range(0.05, 0.15)),
            Map.entry(Trait.REACTS, new Range(0.5, 0.9)), Map.entry(Trait.REPAIRS, new Range(0.4, 0.8)),
            Map.entry(Trait.LOSS_W_PER_K, new Range(2.5, 5)), Map.entry(Trait.SEED_COD_PER_L, new Range(0.05, 0.6)),
            Map.entry(Trait.FILTER_SPEED, new Range(1, 1.7)), Map.entry(Trait.EGGS, new Range(30, 90)),
            Map.entry(Trait.RATION, new Range(0.004, 0.01)), Map.entry(Trait.OVERFEEDS, new Range(0.002, 0.01))));

    /** The worlds that scores are reported for. */
    public static final List<World> NAMED =
            List.of(USUAL, SOFT_WATER, HARD_WATER, WARM_ROOMS, FEW_READINGS, CAREFUL);

    /** Whatever is not given is as usual. */
    public World {
        Map<Trait, Range> all = new EnumMap<>(Trait.class);
        for (Trait trait : Trait.values()) {
            all.put(trait, spans.getOrDefault(trait, trait.usual()));
        }
        spans = all;
    }

    /** A world by number: every span a random part of the widest, no less than a quarter of it. */
    public static World drawn(int number) {
        Luck luck = Luck.of(number, "world");
        Map<Trait, Range> spans = new EnumMap<>(Trait.class);
        for (Trait trait : Trait.values()) {
            double width = luck.between(0.25, 0.8);
            double from = luck.between(0, 1 - width);
            spans.put(trait, new Range(trait.at(trait.widest(), from), trait.at(trait.widest(), from + width)));
        }
        return new World("drawn " + number, spans);
    }

    /** One tank's traits. */
    Map<Trait, Double> tank(Luck luck) {
        Map<Trait, Double> traits = new EnumMap<>(Trait.class);
        spans.forEach((trait, span) -> traits.put(trait, trait.at(span, luck.uniform())));
        return traits;
    }
}
