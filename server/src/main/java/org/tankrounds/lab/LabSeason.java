package org.tankrounds.lab;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A season of many tanks in one world.
 *
 * @param mornings hours of the year at which a ranking is asked for, oldest first
 */
public record LabSeason(World world, long seed, List<TankSeason> tanks, List<Integer> mornings) {

    /** How many hours of a year are played. */
    public static final int HOURS = SchoolCalendar.HOURS;
    private static final int HORIZON_HOURS = 72;

    /** Plays a season; its mornings are every n-th school morning that has 72 hours of season behind it. */
    public static LabSeason played(World world, long seed, int tanks, int everyNthMorning) {
        SchoolCalendar calendar = new SchoolCalendar(Luck.of(seed, "calendar of " + world.name()));
        List<TankSeason> seasons = IntStream.range(0, tanks)
                .mapToObj(number -> TankSeason.played(world, seed, number, calendar)).toList();
        return new LabSeason(world, seed, seasons, every(everyNthMorning, calendar.mornings()));
    }

    static List<Integer> every(int nth, List<Integer> all) {
        List<Integer> some = new ArrayList<>();
        for (int i = nth - 1; i < all.size(); i += nth) {
            if (all.get(i) + HORIZON_HOURS <= HOURS) {
                some.add(all.get(i));
            }
        }
        return some;
    }

    /** The moment of an hour of the year. */
    public static Instant at(int hour) {
        return SchoolCalendar.START.plusSeconds(3600L * hour);
    }

    /** The hour of the year of a moment. */
    public static int hourOf(Instant at) {
        return SchoolCalendar.hourOf(at);
    }
}
