package org.tankrounds.tankmodel;

/**
 * A chiller with its thermostat. It takes out {@code Q = coolingW · condition · min(1, max(0, (T − set)/band))} watts:
 * proportional within a narrow band above the set-point, full power beyond. A real thermostat switches on and off; the
 * mean over an hour is the same (design choice, no source).
 *
 * @param setPointC what it is set to, °C
 * @param coolingW what a sound one takes out at full power, W
 * @param bandK over how many kelvin above the set-point it comes up to full power
 */
public record Chiller(double setPointC, double coolingW, double bandK) {

    /** None at all. */
    public static final Chiller NONE = new Chiller(0, 0, 1);

    public Chiller {
        if (!(coolingW >= 0) || !(bandK > 0)) {
            throw new IllegalArgumentException(
                    "coolingW must be 0 or more and bandK above 0, were " + coolingW + " and " + bandK);
        }
    }

    /** A common classroom size: 300 W, within half a kelvin. */
    public static Chiller setTo(double setPointC) {
        return new Chiller(setPointC, 300, 0.5);
    }

    /** @param condition 1 sound, 0 stopped; between, how much of its power a fading one has left */
    public double takesOutW(double temperatureC, double condition) {
        return coolingW * condition * Math.min(1, Math.max(0, (temperatureC - setPointC) / bandK));
    }
}
