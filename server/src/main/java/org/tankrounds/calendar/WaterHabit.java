package org.tankrounds.calendar;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.tankrounds.belief.Observation;
import org.tankrounds.tankmodel.Room;
import org.tankrounds.water.Analyte;

/**
 * How much water a class changes, and how often.
 *
 * @param share of the water at a time, 0 to 1
 * @param known whether its own notes say so; else it is what is usual
 */
record WaterHabit(double share, double everyDays, boolean known) {
    private static final Duration LATELY = Duration.ofDays(42);
    private static final double PERCENT = 100;
    private static final double SECONDS_PER_DAY = 86_400;
    private static final WaterHabit USUAL =
            new WaterHabit(Room.USUAL_CHANGE_SHARE, Room.USUAL_CHANGE_EVERY_DAYS, false);

    /** Two changes of the last six weeks make a habit. */
    static WaterHabit of(List<Observation> observations, Instant asOf) {
        List<Observation> changes = observations.stream()
                .filter(seen -> seen.analyte() == Analyte.WATER_CHANGE && !seen.doubtful() && seen.value() > 0)
                .filter(seen -> seen.at().isAfter(asOf.minus(LATELY)) && !seen.at().isAfter(asOf)).toList();
        if (changes.size() < 2) {
            return USUAL;
        }
        double days = Duration.between(changes.get(0).at(), changes.get(changes.size() - 1).at()).toSeconds()
                / SECONDS_PER_DAY;
        double each = days / (changes.size() - 1);
        double share = changes.stream().mapToDouble(Observation::value).average().orElseThrow() / PERCENT;
        return each > 0 ? new WaterHabit(Math.min(1, share), each, true) : USUAL;
    }
}
