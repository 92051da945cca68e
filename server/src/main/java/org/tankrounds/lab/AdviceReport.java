package org.tankrounds.lab;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** What came of following the advice, in lines to read: world by world, of all, and where an act did worst. */
public final class AdviceReport {

    private static final List<String> LEGEND = List.of(
            "newly: mornings after which a tank went beyond a limit that would have stayed within all, by what was",
            "  done alone (the class doing what it would have done) and of those with the class doing as it saw fit;",
            "more by: mean exposure with less without, fish-hours, over 95 of 100 resamplings of the tanks.", "");

    private AdviceReport() {
    }

    /** @param withWorlds a table of each world too */
    public static List<String> of(List<Followed> all, boolean withWorlds) {
        Map<String, List<Followed>> byWorld = new TreeMap<>();
        all.forEach(one -> byWorld.computeIfAbsent(one.world(), world -> new ArrayList<>()).add(one));
        List<String> lines = new ArrayList<>(LEGEND);
        if (withWorlds) {
            byWorld.forEach((world, followed) -> lines.addAll(table(world, followed)));
        }
        lines.addAll(table("all worlds", all));
        lines.add("worst world of each act, by the mean exposure added");
        for (EffectRow row : EffectRow.of(all)) {
            lines.add(worst(row));
        }
        return lines;
    }

    private static List<String> table(String title, List<Followed> followed) {
        List<String> lines = new ArrayList<>(List.of(title, EffectRow.heading()));
        EffectRow.of(followed).forEach(row -> lines.add(row.toString()));
        lines.add("");
        return lines;
    }

    private static String worst(EffectRow row) {
        Map<String, List<Followed>> byWorld = new TreeMap<>();
        row.followed().forEach(one -> byWorld.computeIfAbsent(one.world(), world -> new ArrayList<>()).add(one));
        return byWorld.entrySet().stream().map(entry -> Map.entry(entry.getKey(),
                        new EffectRow(row.act(), entry.getValue())))
                .max(Comparator.comparingDouble(entry -> added(entry.getValue())))
                .map(entry -> entry.getValue() + "  " + entry.getKey()).orElseThrow();
    }

    private static double added(EffectRow row) {
        return row.exposureWith() - row.exposureWithout();
    }

    /** Every morning on which what was done made it worse, and at which limit. */
    public static List<String> mornings(List<Followed> all) {
        return all.stream().filter(one -> one.isNewlyBeyond() || one.isNewlyBeyondOfItself()
                        || one.exposureRaised() > 0)
                .map(one -> String.format(Locale.ROOT, "%-14s %-24s %s %s→%s/%s %8.1f → %8.1f / %8.1f  %s", one.what(),
                        one.tank(), LabSeason.at(one.hour()), one.without().isBeyond() ? 1 : 0,
                        one.alone().isBeyond() ? 1 : 0, one.with().isBeyond() ? 1 : 0, one.without().exposure(),
                        one.alone().exposure(), one.with().exposure(), one.further())).toList();
    }
}
