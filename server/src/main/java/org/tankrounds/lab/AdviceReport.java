package org.tankrounds.lab;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What came of following the advice, to read: world by world, of all, and where an act did worst. */
public final class AdviceReport {

    private static final List<String> LEGEND = List.of(
            "newly: mornings after which a tank went beyond a limit that would have stayed within all; first by",
            "  what was done alone, the class doing what it would have done, then with the class as it saw fit;",
            "more by: mean exposure with less without, fish-hours, in 95 of 100 resamplings of the tanks;",
            "kept: mornings after which a tank stayed within all limits that would have gone beyond one, by what was",
            "  done alone; at most: share newly beyond, the upper end of the exact 95 % (Clopper and Pearson);",
            "slightly: of them those for at most 6 hours, or by at most a tenth of the limit;",
            "further, less far: beyond a limit anyhow, and by what was done alone a tenth more exposure, or less;",
            "poisoned: share of mornings after which a tank went beyond the limit of ammonia or nitrite;",
            "LEAVE_WATER is held against half of the water changed, which stands for what came without it; newly are",
            "  tanks that the change would have kept within", "");

    private AdviceReport() {
    }

    /** @param withWorlds a table of each world too */
    public static List<String> of(List<Followed> all, boolean withWorlds) {
        List<String> lines = new ArrayList<>(LEGEND);
        if (withWorlds) {
            byWorld(all).forEach((world, followed) -> lines.addAll(table(world, followed)));
        }
        lines.addAll(table("all worlds", all));
        lines.addAll(ofItself(all));
        lines.add("worst world of each act, by mean exposure added");
        EffectRow.of(all).forEach(row -> lines.add(worst(row)));
        return lines;
    }

    private static Map<String, List<Followed>> byWorld(Collection<Followed> followed) {
        return followed.stream().collect(Collectors.groupingBy(Followed::world, TreeMap::new, Collectors.toList()));
    }

    private static List<String> table(String title, List<Followed> followed) {
        List<String> lines = new ArrayList<>(List.of(title, EffectRow.heading()));
        EffectRow.of(followed).forEach(row -> lines.add(row.toString()));
        lines.add("");
        return lines;
    }

    private static List<String> ofItself(List<Followed> all) {
        List<String> lines = new ArrayList<>(List.of("all worlds, what was done alone", EffectRow.headingOfItself()));
        EffectRow.of(all).forEach(row -> lines.add(row.ofItself()));
        lines.add("");
        lines.add("each newly beyond by what was done alone: limit, hours, times the limit");
        all.stream().filter(Followed::isDone).filter(Followed::isNewlyBeyondOfItself)
                .forEach(one -> lines.add(one.told()));
        lines.add("");
        return lines;
    }

    private static String worst(EffectRow row) {
        Map<String, List<Followed>> byWorld = byWorld(row.followed());
        return byWorld.keySet().stream()
                .max(Comparator.comparingDouble(world -> added(new EffectRow(row.act(), byWorld.get(world)))))
                .map(world -> new EffectRow(row.act(), byWorld.get(world)) + "  " + world).orElseThrow();
    }

    private static double added(EffectRow row) {
        return row.exposureWith() - row.exposureWithout();
    }

    /** Every morning that came out worse, and at which limits. */
    public static List<String> worse(List<Followed> all) {
        return all.stream().filter(Followed::isWorse).map(Followed::told).toList();
    }
}
