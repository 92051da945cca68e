package org.tankrounds.lab;

import java.util.Map;

/** The classroom's air: warmer by day and in spring, set back at night and at weekends, and wandering. */
final class Room {

    private static final int OPENS = 6;
    private static final int CLOSES = 18;
    private static final int WARMS_FROM = 9;
    private static final double RETURNS_PER_HOUR = 0.02;

    private final Map<Trait, Double> traits;
    private final Luck luck;
    private double wanderedK;

    Room(Map<Trait, Double> traits, Luck luck) {
        this.traits = traits;
        this.luck = luck;
    }

    /** The same room, with other luck. */
    Room(Room other, Luck luck) {
        this(other.traits, luck);
        wanderedK = other.wanderedK;
    }

    private double of(Trait trait) {
        return traits.get(trait);
    }

    /** In an hour, to be asked once for each. */
    double temperatureC(int hour, SchoolCalendar calendar) {
        int clock = calendar.hourOfDay(hour);
        boolean isUnheated = clock < OPENS || clock >= CLOSES || calendar.isWeekend(hour);
        wanderedK += of(Trait.ROOM_WANDERS_K) * luck.about("room").normal() - RETURNS_PER_HOUR * wanderedK;
        return of(Trait.ROOM_C) + wanderedK + of(Trait.SPRING_K) * calendar.spring(hour)
                + of(Trait.ROOM_BY_DAY_K) * StrictMath.sin((clock - WARMS_FROM) / 24.0 * 2 * Math.PI)
                - (isUnheated ? of(Trait.SET_BACK_K) : 0);
    }
}
