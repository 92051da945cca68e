package org.tankrounds.forecast;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.tankrounds.belief.TankBelief;

/** A forecast together with the courses behind it, so that it can be asked what would come of a deed. */
public final class LookAhead {

    /** So many of the courses are gone through again: enough for what is shown, and quick. */
    private static final int COURSES = 200;
    private static final int COURSES_OF_A_TRIAL = 50;
    private static final int DONE_BY_HOUR = 2;
    private static final double HIGH = 0.75;

    private final Forecast forecast;
    private final TankBelief belief;
    private final Paths course;
    private final Outcome outcome;
    private final Limits limits;

    LookAhead(Forecast forecast, TankBelief belief, Paths course, Outcome outcome, Limits limits) {
        this.forecast = forecast;
        this.belief = belief;
        this.course = course;
        this.outcome = outcome;
        this.limits = limits;
    }

    public Forecast forecast() {
        return forecast;
    }

    public TankBelief belief() {
        return belief;
    }

    public Limits limits() {
        return limits;
    }

    /**
     * What a deed would do, on the courses as experience has weighed them without it: the same futures, another deed.
     * Where experience sees trouble that no course shows, the deed is taken to do nothing about it.
     */
    public Effect effect(Deed deed, Driver driver) {
        int[] some = some(COURSES);
        Paths coursesWithout = WhatIf.of(course, some, Deed.NOTHING, belief);
        Paths coursesWith = WhatIf.of(course, some, deed, belief);
        Outcome without = new Outcome(coursesWithout, limits);
        Outcome with = new Outcome(coursesWith, limits);
        return new Effect(driver, forecast.chance(), Forecaster.rounded(chance(without, with), 1e4),
                forecast.exposure(), Forecaster.rounded(exposure(without, with), 1e3),
                level(driver, coursesWithout), level(driver, coursesWith),
                without.hoursToLimit(), with.hoursToLimit());
    }

    /**
     * The level within a day of the deed that three of four courses stay below, as a share of the limit.
     */
    public double highU(Deed deed, Driver driver) {
        Paths courses = WhatIf.of(course, some(COURSES_OF_A_TRIAL), deed, belief);
        double[] highest = new double[courses.count()];
        for (int h = DONE_BY_HOUR; h <= Effect.LEVEL_HOURS; h++) {
            for (int i = 0; i < highest.length; i++) {
                highest[i] = Math.max(highest[i], courses.u(driver, h, i, limits));
            }
        }
        Arrays.sort(highest);
        return Fans.quantile(highest, HIGH);
    }

    /** Evenly from the courses as they count. */
    private int[] some(int count) {
        int[] picked = outcome.picked();
        int[] some = new int[Math.min(count, picked.length)];
        Arrays.setAll(some, i -> picked[(int) ((long) i * picked.length / some.length)]);
        return some;
    }

    /** Trouble that only deaths tell of stays as likely as it was. */
    private double chance(Outcome without, Outcome with) {
        double unseen = outcome.unseenChance();
        double known = Math.max(0, (forecast.chance() - unseen) / (1 - unseen));
        return unseen + (1 - unseen)
                * (known * without.stayBeyond(with) + (1 - known) * without.comeBeyond(with));
    }

    private double exposure(Outcome without, Outcome with) {
        double before = without.excess() + outcome.unseenExcess();
        double after = with.excess() + outcome.unseenExcess();
        return before > 0 ? forecast.exposure() * after / before
                : forecast.exposure() + after * forecast.fishAlive();
    }

    private static OptionalDouble level(Driver driver, Paths courses) {
        if (driver.ordinal() >= Driver.CHLORINE.ordinal()) {
            return OptionalDouble.empty();
        }
        double[] sorted = courses.of(driver)[Effect.LEVEL_HOURS].clone();
        Arrays.sort(sorted);
        return OptionalDouble.of(Fans.quantile(sorted, 0.5));
    }
}
