package org.tankrounds.forecast;

import java.util.OptionalDouble;

/**
 * What a deed is expected to do: the same futures without it and with it.
 *
 * @param driver the limit it is against
 * @param chanceWithout probability of two hours or more beyond any limit within 72 hours, as forecast
 * @param chanceWith the same with the deed done
 * @param exposureWithout expected fish-hours beyond, each weighted by how far, as forecast
 * @param exposureWith the same with the deed done
 * @param levelWithout median of the driver's series {@value #LEVEL_HOURS} hours from now, in its unit; empty
 *     for
 *     chlorine
 * @param levelWith the same with the deed done
 * @param hoursToLimitWithout median hours until a limit is met; empty when the odds are against it
 * @param hoursToLimitWith the same with the deed done
 */
public record Effect(
        Driver driver, double chanceWithout, double chanceWith, double exposureWithout, double exposureWith,
        OptionalDouble levelWithout, OptionalDouble levelWith,
        OptionalDouble hoursToLimitWithout, OptionalDouble hoursToLimitWith) {

    /** At this hour the levels are compared. */
    public static final int LEVEL_HOURS = 24;

    /** Odds are told in tenths. */
    private static final double HARDLY_CHANCE = 0.05;
    private static final double HARDLY_TIMES = 1.1;
    /** Less than any page tells apart, and than a hundred courses can. */
    private static final double SAME_CHANCE = 0.0005;
    private static final double SAME_SHARE_OF_EXPOSURE = 0.001;
    /** Of so little, nobody would leave what may help (the project's choice). */
    private static final double HARMLESS_CHANCE = 0.005;
    private static final double HARMLESS_SHARE_OF_EXPOSURE = 0.02;

    /**
     * The same as far as it can be trusted.
     *
     * @param chance share of the fall in chance
     * @param exposure power of the ratio of exposures
     */
    public Effect tempered(double chance, double exposure) {
        double left = exposureWithout > 0
                ? exposureWithout * StrictMath.pow(exposureWith / exposureWithout, exposure) : exposureWith;
        return new Effect(driver, chanceWithout, chanceWithout - chance * (chanceWithout - chanceWith),
                exposureWithout, left, levelWithout, levelWith, hoursToLimitWithout, hoursToLimitWith);
    }

    /** Of leaving it: with and without the other way round. */
    public Effect undone() {
        return new Effect(driver, chanceWith, chanceWithout, exposureWith, exposureWithout,
                levelWith, levelWithout, hoursToLimitWith, hoursToLimitWithout);
    }

    /** The same with no more chance and exposure left than another deed leaves. */
    public Effect noWorseThan(Effect other) {
        return new Effect(driver, chanceWithout, Math.min(chanceWith, other.chanceWith),
                exposureWithout, Math.min(exposureWith, other.exposureWith),
                levelWithout, levelWith, hoursToLimitWithout, hoursToLimitWith);
    }

    /** More chance or more exposure than another deed leaves, by more than rounding. */
    public boolean isWorseThan(Effect other) {
        return chanceWith > other.chanceWith + SAME_CHANCE
                || exposureWith > other.exposureWith + SAME_SHARE_OF_EXPOSURE * exposureWithout;
    }

    /** Hardly more chance and exposure left than another deed leaves. */
    public boolean keepsMostOf(Effect other) {
        return chanceWith <= other.chanceWith + HARDLY_CHANCE && exposureWith <= HARDLY_TIMES * other.exposureWith;
    }

    /** The same with no less chance and exposure left than that, up to what there was without the deed. */
    Effect atLeast(double chance, double exposure) {
        return new Effect(driver, chanceWithout, Math.max(chanceWith, Math.min(chance, chanceWithout)),
                exposureWithout, Math.max(exposureWith, Math.min(exposure, exposureWithout)),
                levelWithout, levelWith, hoursToLimitWithout, hoursToLimitWith);
    }

    /** Whether the model expects harm of it: more chance or more exposure, by more than anybody would mind. */
    public boolean harms() {
        return chanceWith > chanceWithout + HARMLESS_CHANCE
                || exposureWith > exposureWithout * (1 + HARMLESS_SHARE_OF_EXPOSURE);
    }

    /** By how much the chance falls. */
    public double chanceFall() {
        return chanceWithout - chanceWith;
    }

    /** By what share the exposure falls, 0 to 1. */
    public double exposureFall() {
        return exposureWithout > 0 ? 1 - exposureWith / exposureWithout : 0;
    }
}
