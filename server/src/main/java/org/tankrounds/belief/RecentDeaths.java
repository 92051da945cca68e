package org.tankrounds.belief;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * Deaths of the three days before anything was last heard of the tank.
 *
 * @param isCounted whether anybody counted in that time, be it none
 * @param count fish or eggs found dead
 * @param mostInADay most of them that were found within 24 hours; what a long absence left counts as found then
 * @param alive those left should every count be right, a doubted one too; a number that no lot had is most of it
 * @param overHours from the count before (three days at most) to the newest one
 * @param newest when the newest dead were found
 */
public record RecentDeaths(boolean isCounted, int count, int mostInADay, int alive, double overHours,
        Optional<Instant> newest) {

    /** Deaths further back say little about the water now, h. */
    public static final double WINDOW_HOURS = 72;
    /**
     * For so long they are told while nobody is heard of the tank: over a weekend, and a day (the project's choice).
     */
    static final Duration TOLD = Duration.ofDays(5);
}
