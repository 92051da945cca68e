package org.tankrounds.fish;

/**
 * How long rainbow trout eggs take at a steady temperature.
 *
 * <p>{@code log10 D2 = −2.0961 log10(T + 6.0) + 4.0313}, D2 in days from fertilisation to 50 % hatch; 50 % swim-up at
 * 1.7 D2. Source: Crisp 1981, Freshw. Biol. 11:361–368 (coefficients from memory, supported by the hatchery table);
 * multiplier Crisp 1988. Fitted over about 0 to 15 °C; show at least ±10 %.
 */
public final class HatchModel {

    /** Swim-up over hatch, in days from fertilisation. */
    public static final double SWIM_UP_PER_HATCH = 1.7;

    private HatchModel() {
    }

    /**
     * Days from fertilisation to 50 % hatch.
     *
     * @throws IllegalArgumentException below −5 °C, where the formula has no meaning
     */
    public static double daysToHatch(double temperatureC) {
        if (!(temperatureC > -5)) {
            throw new IllegalArgumentException("temperature must be above -5 °C, was " + temperatureC);
        }
        return StrictMath.pow(10, -2.0961 * StrictMath.log10(temperatureC + 6.0) + 4.0313);
    }

    /** Days from fertilisation to 50 % swim-up. */
    public static double daysToSwimUp(double temperatureC) {
        return SWIM_UP_PER_HATCH * daysToHatch(temperatureC);
    }

    /** The share of the way to hatch that a day at a temperature brings (Sparks et al. 2019). */
    public static double hatchSharePerDay(double temperatureC) {
        return 1 / daysToHatch(Math.max(0, temperatureC));
    }
}
