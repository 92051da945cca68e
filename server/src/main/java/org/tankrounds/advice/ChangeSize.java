package org.tankrounds.advice;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tankrounds.forecast.Deed;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.LookAhead;

/**
 * How much water to change against what is dissolved in it: the least that keeps the level under its limit
 * for a day on three of four courses, and at most half. What comes in has the alkalinity of the tank's
 * source: in a tank that has little left it lifts the pH, and with it the harmful share of the ammonia, and it
 * wakes the filter's first guild, which then makes nitrite faster than the second can take it; then less, or
 * none, is better, and against nitrite it is changed after salt.
 */
final class ChangeSize {

    /** A tank bears this much at once; beyond, change twice (common practice, no source). */
    static final int MOST_PERCENT = 50;
    private static final int LEAST_PERCENT = 10;
    private static final int STEP_PERCENT = 5;
    /** Bring a level to this share of its limit, not onto it. */
    private static final double AIM = 0.9;
    /** A change that leaves more than this of the level is not worth the hauling. */
    private static final double WORTH_IT = 0.95;

    /** A first guild that works faster than so makes nitrite of what ammonia there is (learned on simulated tanks). */
    private static final double MOST_WAKING = 1.3;

    private final LookAhead ahead;
    private final Driver driver;
    private final Deed beside;
    private final OptionalDouble volumeL;

    /** @param beside what makes a change harmless that is not so by itself; nothing where there is no such */
    ChangeSize(LookAhead ahead, Driver driver, Deed beside) {
        this.ahead = ahead;
        this.driver = driver;
        this.beside = beside;
        this.volumeL = ahead.belief().facts().volumeL();
    }

    boolean isCalledFor() {
        return ahead.highU(Deed.NOTHING, driver) > AIM;
    }

    /**
     * The change that helps, or against ammonia a warning where it would harm; empty where none is needed or none
     * helps. Against nitrite none is warned of: it may harm where alkalinity is short, and help where it is not.
     */
    Optional<Proposal> proposal() {
        if (!isCalledFor()) {
            return Optional.empty();
        }
        if (after(MOST_PERCENT) <= AIM) {
            return harmless(leastThatIsEnough());
        }
        int best = best();
        double left = after(best) / ahead.highU(Deed.NOTHING, driver);
        if (left <= WORTH_IT) {
            return harmless(best);
        }
        Optional<Proposal> besideOthers = harmless(MOST_PERCENT).filter(Proposal::leansOnOthers);
        return besideOthers.isPresent() || left <= 1 || driver == Driver.NITRITE ? besideOthers
                : Optional.of(Proposal.of(Act.plain(Act.Kind.LEAVE_WATER, driver)));
    }

    /** So much, or the largest part of it that the model finds no harm in; empty where in all. */
    private Optional<Proposal> harmless(int percent) {
        return IntStream.iterate(percent, size -> size >= LEAST_PERCENT, size -> size - STEP_PERCENT).boxed()
                .flatMap(size -> Stream.of(change(size, Deed.NOTHING), change(size, beside)))
                .filter(this::isHarmless).findFirst();
    }

    /** Fish bear no leap of the pH. After salt a woken filter makes no nitrite that harms. */
    private boolean isHarmless(Proposal change) {
        return ahead.liftsPh(change.deed().orElseThrow()) <= PhAdvice.MOST_LIFT_PH
                && (change.leansOnOthers() || ahead.wakes(change.deed().orElseThrow()) <= MOST_WAKING)
                && change.isHarmless(ahead);
    }

    private int leastThatIsEnough() {
        int percent = LEAST_PERCENT;
        while (after(percent) > AIM) {
            percent += STEP_PERCENT;
        }
        return percent;
    }

    private int best() {
        return after(MOST_PERCENT) <= after(MOST_PERCENT / 2) ? MOST_PERCENT : MOST_PERCENT / 2;
    }

    private double after(int percent) {
        return after(percent, Deed.NOTHING);
    }

    private double after(int percent, Deed others) {
        return ahead.highU(others.and(Deed.waterChange(percent / 100.0)), driver);
    }

    /** Where it does not reach the aim, another is to follow. */
    private Proposal change(int percent, Deed others) {
        return Proposal.waterChange(driver, percent, volumeL,
                after(percent, others) > AIM ? Optional.of(Asked.of(driver)) : Optional.empty()).with(others);
    }
}
