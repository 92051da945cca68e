package org.tankrounds.rounds;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tankrounds.behaviour.Alarm;
import org.tankrounds.behaviour.SeenLately;
import org.tankrounds.breaks.BreakWatch;
import org.tankrounds.fish.Stage;
import org.tankrounds.places.Tank;

/** The tanks in the order in which to act: by what to do, and inside that as the ranking has them. */
record Board(Map<Tier, List<Entry>> tiers) {

    /**
     * A tank.
     *
     * @param forecast empty of one that was just added
     * @param seen what its class saw of the fish lately, where that is worth telling
     * @param away a school break that runs or begins soon, where somebody has to know of it
     */
    record Entry(Tank tank, Optional<TankForecast> forecast, Optional<SeenLately> seen, Optional<BreakWatch> away) {

        /** Of a tank without a forecast nothing is known that would make a sign less grave. */
        Stage stage() {
            return forecast.map(row -> row.forecast().stage()).orElse(Stage.FEEDING);
        }

        /** Its class saw what cannot wait, while the readings do not send anybody there today. */
        boolean isInTrouble() {
            return tier() != Tier.GO_TODAY && cannotWait();
        }

        private boolean cannotWait() {
            return seen.filter(looks -> looks.alarm(stage()) == Alarm.ACT).isPresent();
        }

        /**
         * Fish that are not well while nothing was read to say so, or nobody who came as planned: somebody has to ask.
         */
        Tier tier() {
            Tier tier = forecast.map(row -> Tier.of(row.forecast())).orElse(Tier.ASK_FOR_A_READING);
            boolean missed = away.flatMap(BreakWatch::missed).isPresent();
            return tier == Tier.NOTHING_NEEDED && (seen.isPresent() || missed) ? Tier.ASK_FOR_A_READING : tier;
        }
    }

    private static final Comparator<Entry> AS_RANKED = Comparator
            .comparingDouble((Entry entry) -> entry.forecast().map(row -> row.forecast().exposure()).orElse(0.0))
            .thenComparingDouble(entry -> entry.forecast().map(row -> row.forecast().chance()).orElse(0.0))
            .reversed()
            .thenComparing(entry -> entry.tank().code());

    /**
     * @param looks what stands of those at each tank that was looked at lately
     * @param breaks of each tank the one that runs or begins soon
     */
    static Board of(List<Tank> tanks, Map<Integer, TankForecast> forecasts, Map<Integer, SeenLately> looks,
            Map<Integer, BreakWatch> breaks) {
        Map<Tier, List<Entry>> tiers = new EnumMap<>(Tier.class);
        tanks.stream().map(tank -> entry(tank, Optional.ofNullable(forecasts.get(tank.tankId())), looks, breaks))
                .sorted(AS_RANKED)
                .forEach(entry -> tiers.computeIfAbsent(entry.tier(), tier -> new ArrayList<>()).add(entry));
        return new Board(tiers);
    }

    private static Entry entry(
            Tank tank, Optional<TankForecast> forecast, Map<Integer, SeenLately> looks,
            Map<Integer, BreakWatch> breaks) {
        Stage stage = forecast.map(row -> row.forecast().stage()).orElse(Stage.FEEDING);
        return new Entry(tank, forecast,
                Optional.ofNullable(looks.get(tank.tankId())).filter(seen -> seen.isTold(stage)),
                Optional.ofNullable(breaks.get(tank.tankId())).filter(BreakWatch::isTold));
    }

    List<Entry> of(Tier tier) {
        return tiers.getOrDefault(tier, List.of());
    }

    List<Entry> all() {
        return tiers.values().stream().flatMap(List::stream).toList();
    }

    /** Schools of a tier, each once, the first to act on in front. */
    List<String> schools(Tier tier) {
        return schools(of(tier));
    }

    /** Those whose class saw fish in trouble: a call is quicker than the drive that others may come before. */
    List<String> inTrouble() {
        return schools(all().stream().filter(Entry::cannotWait).toList());
    }

    private static List<String> schools(List<Entry> entries) {
        return entries.stream().map(entry -> entry.tank().school()).distinct().toList();
    }
}
