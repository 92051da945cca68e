package org.tankrounds.forecast;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.DoubleStream;
import org.tankrounds.belief.TankBelief;

/** A forecast together with the courses behind it, so that it can be asked what would come of a deed. */
public final class LookAhead {

    /** So many of the courses are gone through again: enough for what is shown, and quick. */
    private static final int COURSES = 100;
    private static final int COURSES_OF_A_TRIAL = 25;
    private static final int DONE_BY_HOUR = 2;
    private static final double HIGH = 0.75;

    private final Forecast forecast;
    private final TankBelief belief;
    private final Paths course;
    private final Outcome outcome;
    private final Limits limits;
    private final Supplier<LookAhead> withoutChlorine;
    /** Made when first asked for: most tanks need no advice. */
    private Courses shown;
    private Outcome without;
    private Courses tried;
    private LookAhead clean;

    /** @param withoutChlorine the look ahead, had the same tests found none */
    LookAhead(Forecast forecast, TankBelief belief, Paths course, Outcome outcome, Limits limits,
            Supplier<LookAhead> withoutChlorine) {
        this.forecast = forecast;
        this.belief = belief;
        this.course = course;
        this.outcome = outcome;
        this.limits = limits;
        this.withoutChlorine = withoutChlorine;
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

    /** What a person is told beside the forecast. */
    public Outlook outlook() {
        return new Outlook(forecast, Ways.of(outcome, forecast.chance()), Tellings.most(course, outcome),
                Held.of(belief));
    }

    /**
     * What a deed would do, on the courses as experience has weighed them without it: the same futures,
     * another deed. Where experience sees trouble that no course shows, the deed is taken to do nothing about
     * it.
     */
    public Effect effect(Deed deed, Driver driver) {
        return prospect(deed, driver).effect();
    }

    /** The effect of a deed, and what it risks. */
    public Prospect prospect(Deed deed, Driver driver) {
        Paths paths = WhatIf.of(shownCourses(), deed, Forecast.HORIZON_HOURS);
        Outcome with = new Outcome(paths, limits);
        Effect effect = new Effect(driver,
                forecast.chance(), Forecaster.rounded(chance(with), 1e4),
                forecast.exposure(), Forecaster.rounded(exposure(with), 1e3),
                Courses.medianLevel(shown.paths(), driver, Effect.LEVEL_HOURS),
                Courses.medianLevel(paths, driver, Effect.LEVEL_HOURS),
                without.hoursToLimit(), with.hoursToLimit());
        return new Prospect(noBetterThanWithoutChlorine(effect),
                (1 - knownChance()) * without.comeBeyond(with));
    }

    private Courses shownCourses() {
        if (shown == null) {
            shown = Courses.of(belief, course, outcome.picked(), COURSES);
            without = new Outcome(shown.paths(), limits);
        }
        return shown;
    }

    /** Chlorine is beyond on every course, so that they say nothing of what else may go wrong. */
    private Effect noBetterThanWithoutChlorine(Effect effect) {
        return withoutChlorine().map(LookAhead::forecast)
                .map(found -> effect.atLeast(found.chance(), found.exposure())).orElse(effect);
    }

    /** The same tank, had the same tests found no chlorine; empty where they found none. */
    public Optional<LookAhead> withoutChlorine() {
        if (outcome.excess(Driver.CHLORINE) == 0) {
            return Optional.empty();
        }
        if (clean == null) {
            clean = withoutChlorine.get();
        }
        return Optional.of(clean);
    }

    /**
     * The level within a day of the deed that three of four courses stay below, as a share of the limit.
     */
    public double highU(Deed deed, Driver driver) {
        if (tried == null) {
            tried = Courses.of(belief, course, outcome.picked(), COURSES_OF_A_TRIAL);
        }
        Paths paths = WhatIf.of(tried, deed, Effect.LEVEL_HOURS);
        double[] highest = new double[paths.count()];
        for (int h = DONE_BY_HOUR; h <= Effect.LEVEL_HOURS; h++) {
            for (int i = 0; i < highest.length; i++) {
                highest[i] = Math.max(highest[i], paths.u(driver, h, i, limits));
            }
        }
        return high(Arrays.stream(highest));
    }

    /**
     * How many times as fast as before the alkalinity that a deed brings may let the filter's first guild work, on
     * three of four courses at most.
     */
    public double wakes(Deed deed) {
        return high(alkalinities().map(WhatIf.alkalinityChange(belief, deed)::timesAsFast));
    }

    /** By how much the alkalinity that a deed brings may lift the pH at once, on three of four courses at most. */
    public double liftsPh(Deed deed) {
        return high(alkalinities().map(WhatIf.alkalinityChange(belief, deed)::liftsPh));
    }

    /** As each course has it. */
    private DoubleStream alkalinities() {
        return Arrays.stream(shownCourses().alkalinityMgPerL());
    }

    private static double high(DoubleStream values) {
        return Fans.quantile(values.sorted().toArray(), HIGH);
    }

    /** Trouble that only deaths tell of stays as likely as it was. */
    private double chance(Outcome with) {
        double unseen = outcome.unseenChance();
        double known = knownChance();
        return unseen + (1 - unseen)
                * (known * without.stayBeyond(with) + (1 - known) * without.comeBeyond(with));
    }

    private double knownChance() {
        double unseen = outcome.unseenChance();
        return Math.max(0, (forecast.chance() - unseen) / (1 - unseen));
    }

    private double exposure(Outcome with) {
        double before = without.excess() + outcome.unseenExcess();
        double after = with.excess() + outcome.unseenExcess();
        return before > 0 ? forecast.exposure() * after / before
                : forecast.exposure() + after * forecast.fishAlive();
    }
}
