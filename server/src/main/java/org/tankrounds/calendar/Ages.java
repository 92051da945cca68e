package org.tankrounds.calendar;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tankrounds.fish.GrowthAhead;
import org.tankrounds.season.FishSample;
import org.tankrounds.season.Lot;

/** Tells the fish of one tank apart by their age, as far as lots, counts and sizes let anybody. */
final class Ages {
    /** Lots that came closer are of one age: no class can tell their fish apart (the project's choice). */
    private static final int CLOSE_DAYS = 7;

    /**
     * @param lot the newest of its eggs
     * @param fish alive of it
     */
    record Age(Lot lot, int fish) {}

    private Ages() {}

    /**
     * The oldest first. The living, less the eggs that came later: whoever died since then is taken as older, and fish
     * that came from another tank as of the first eggs. An age of which nobody can be left is left out; where nobody is
     * alive at all, the newest eggs are told of.
     *
     * @param come lots that have come
     * @param alive by count
     */
    static List<Age> of(List<Lot> come, int alive, ZoneId zone) {
        List<Lot> newestFirst = come.stream()
                .sorted(Comparator.comparing(Lot::receivedAt).thenComparing(Lot::lotId).reversed()).toList();
        List<Age> ages = new ArrayList<>();
        int left = alive;
        int next = 0;
        while (next < newestFirst.size()) {
            Lot newest = newestFirst.get(next);
            LocalDate since = day(newest, zone).minusDays(CLOSE_DAYS);
            int eggs = 0;
            for (; next < newestFirst.size() && !day(newestFirst.get(next), zone).isBefore(since); next++) {
                eggs += newestFirst.get(next).eggs();
            }
            int fish = next == newestFirst.size() ? left : Math.min(eggs, left);
            if (fish > 0 || alive == 0 && ages.isEmpty()) {
                ages.add(0, new Age(newest, fish));
            }
            left -= fish;
        }
        return ages;
    }

    /**
     * Of which age a measured fish is: the one whose size it comes nearest to.
     *
     * @param fry of each age, as nobody had measured it
     * @return its index, −1 where none can have fed by then
     */
    static int nearest(FishSample sample, List<GrowthAhead> fry) {
        int nearest = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < fry.size(); i++) {
            double apart = Math.abs(StrictMath.cbrt(fry.get(i).weightG(sample.measuredAt()))
                    - StrictMath.cbrt(sample.meanWeightG()));
            if (!sample.measuredAt().isBefore(fry.get(i).from().earliest()) && apart < least) {
                nearest = i;
                least = apart;
            }
        }
        return nearest;
    }

    private static LocalDate day(Lot lot, ZoneId zone) {
        return lot.receivedAt().atZone(zone).toLocalDate();
    }
}
