package org.tankrounds.advice;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.tankrounds.belief.TankBelief;
import org.tankrounds.forecast.Deed;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.LookAhead;

/**
 * How much water to change against what is dissolved in it: the least that keeps the level under its limit
 * for a day on three of four courses, and at most half. What comes in has the alkalinity of the tank's
 * source: in a tank that has gone sour it lifts the pH, and with it the harmful share of the ammonia; then
 * less, or none, is better.
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

    /** With 4 mg/L of carbon dioxide that is 22 mg/L of alkalinity (Plummer and Busenberg 1982). */
    private static final double ENOUGH_ALKALINITY_PH = 7.15;
    private static final double ENOUGH_ALKALINITY_MG_PER_L = 50;
    private static final Duration ALKALINITY_HOLDS = Duration.ofDays(2);

    private final LookAhead ahead;
    private final Driver driver;
    private final OptionalDouble volumeL;

    ChangeSize(LookAhead ahead, Driver driver) {
        this.ahead = ahead;
        this.driver = driver;
        this.volumeL = ahead.belief().facts().volumeL();
    }

    boolean isCalledFor() {
        return ahead.highU(Deed.NOTHING, driver) > AIM;
    }

    /** The change that helps, or a warning where it would harm; empty where none is needed. */
    Optional<Proposal> proposal() {
        if (!isCalledFor() || mayOnlyWake()) {
            return Optional.empty();
        }
        if (after(MOST_PERCENT) <= AIM) {
            return harmless(leastThatIsEnough());
        }
        int best = best();
        double left = after(best) / ahead.highU(Deed.NOTHING, driver);
        if (left > 1) {
            return Optional.of(Proposal.of(Act.plain(Act.Kind.LEAVE_WATER, driver)));
        }
        return left > WORTH_IT ? Optional.empty() : harmless(best);
    }

    /** So much, or the largest part of it that the model finds no harm in; empty where in all. */
    private Optional<Proposal> harmless(int percent) {
        return IntStream.of(percent, percent / 2 / STEP_PERCENT * STEP_PERCENT, LEAST_PERCENT)
                .filter(size -> size >= LEAST_PERCENT && size <= percent).mapToObj(this::change)
                .filter(each -> Worth.isSafe(ahead.prospect(each.deed().orElseThrow(), driver))).findFirst();
    }

    /**
     * Nitrite still under its limit is met with salt where the pH tells of little alkalinity: what fresh
     * water brings of it wakes the filter's first guild, and what it takes out is soon made again.
     */
    private boolean mayOnlyWake() {
        TankBelief belief = ahead.belief();
        return driver == Driver.NITRITE && belief.ph().valueNow() < ENOUGH_ALKALINITY_PH
                && ahead.limits().ofNitrite(belief.nitrite().valueNow(), belief.chlorideMgPerL()) < 1
                && belief.newestAlkalinity().filter(read -> read.value() >= ENOUGH_ALKALINITY_MG_PER_L
                        && read.at().isAfter(belief.asOf().minus(ALKALINITY_HOLDS))).isEmpty();
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
        return ahead.highU(Deed.waterChange(percent / 100.0), driver);
    }

    /** Where it does not reach the aim, another is to follow. */
    private Proposal change(int percent) {
        return Proposal.waterChange(driver, percent, volumeL,
                after(percent) > AIM ? Optional.of(Asked.of(driver)) : Optional.empty());
    }
}
