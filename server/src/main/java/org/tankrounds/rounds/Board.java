package org.tankrounds.rounds;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tankrounds.places.Tank;

/** The tanks in the order in which to act: by what to do, and inside that as the ranking has them. */
record Board(Map<Tier, List<Entry>> tiers) {

    /** A tank and its forecast, which a tank that was just added does not have yet. */
    record Entry(Tank tank, Optional<TankForecast> forecast) {

        Tier tier() {
            return forecast.map(row -> Tier.of(row.forecast())).orElse(Tier.ASK_FOR_A_READING);
        }
    }

    private static final Comparator<Entry> AS_RANKED = Comparator
            .comparingDouble((Entry entry) -> entry.forecast().map(row -> row.forecast().exposure()).orElse(0.0))
            .thenComparingDouble(entry -> entry.forecast().map(row -> row.forecast().chance()).orElse(0.0))
            .reversed()
            .thenComparing(entry -> entry.tank().code());

    static Board of(List<Tank> tanks, Map<Integer, TankForecast> forecasts) {
        Map<Tier, List<Entry>> tiers = new EnumMap<>(Tier.class);
        tanks.stream().map(tank -> new Entry(tank, Optional.ofNullable(forecasts.get(tank.tankId()))))
                .sorted(AS_RANKED)
                .forEach(entry -> tiers.computeIfAbsent(entry.tier(), tier -> new ArrayList<>()).add(entry));
        return new Board(tiers);
    }

    List<Entry> of(Tier tier) {
        return tiers.getOrDefault(tier, List.of());
    }

    List<Entry> all() {
        return tiers.values().stream().flatMap(List::stream).toList();
    }

    /** Schools of a tier, each once, the first to act on in front. */
    List<String> schools(Tier tier) {
        return of(tier).stream().map(entry -> entry.tank().school()).distinct().toList();
    }
}
