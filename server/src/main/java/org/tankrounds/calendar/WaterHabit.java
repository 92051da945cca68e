package org.tankrounds.calendar;

import static java.time.temporal.ChronoUnit.DAYS;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
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
    private static final WaterHabit USUAL =
            new WaterHabit(Room.USUAL_CHANGE_SHARE, Room.USUAL_CHANGE_EVERY_DAYS, false);

    /**
     * Changes on two days of the last six weeks make a habit. Those of one day are one; and as long as nobody changes
     * any, it fades.
     *
     * @param zone on whose clock days begin
     */
    static WaterHabit of(List<Observation> observations, Instant asOf, ZoneId zone) {
        SortedMap<LocalDate, Double> leftByDay = new TreeMap<>();
        observations.stream()
                .filter(seen -> seen.analyte() == Analyte.WATER_CHANGE && !seen.doubtful() && seen.value() > 0)
                .filter(seen -> seen.at().isAfter(asOf.minus(LATELY)) && !seen.at().isAfter(asOf))
                .forEach(seen -> leftByDay.merge(seen.at().atZone(zone).toLocalDate(),
                        1 - Math.min(1, seen.value() / PERCENT), (one, other) -> one * other));
        int changes = leftByDay.size();
        if (changes < 2) {
            return USUAL;
        }
        LocalDate first = leftByDay.firstKey();
        double between = (double) DAYS.between(first, leftByDay.lastKey()) / (changes - 1);
        double untilNow = (double) DAYS.between(first, asOf.atZone(zone).toLocalDate()) / changes;
        double share = 1 - leftByDay.values().stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        return new WaterHabit(share, Math.max(between, untilNow), true);
    }
}
