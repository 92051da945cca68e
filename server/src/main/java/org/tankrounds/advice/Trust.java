package org.tankrounds.advice;

import org.tankrounds.forecast.Effect;

/**
 * How much of what the courses show comes true where the advice is followed. They are too hopeful: water that
 * is worse than believed stays worse.
 *
 * @param chance share of the fall in chance that comes true, 0 to 1
 * @param exposure power of the ratio of exposures that comes true, 0 to 1
 */
public record Trust(double chance, double exposure) {

    /** The courses are taken at their word. */
    static final Trust FULL = new Trust(1, 1);

    Effect in(Effect shown) {
        return shown.tempered(chance, exposure);
    }

    String words() {
        return chance + " " + exposure;
    }

    static Trust read(String words) {
        String[] numbers = words.split(" ");
        return new Trust(Double.parseDouble(numbers[0]), Double.parseDouble(numbers[1]));
    }
}
