package org.tankrounds.advice;

import org.tankrounds.forecast.Effect;

/**
 * How much of what the courses show comes true where the advice is followed. They are too hopeful: water that is worse
 * than believed stays worse. Learned in the lab ({@code AdviceTrial}) on drawn worlds 5000 to 5119, eight tanks each, a
 * school morning in twelve; the named worlds that effects are reported for are not among them.
 *
 * @param chance share of the fall in chance that comes true
 * @param exposure power of the ratio of exposures that comes true
 */
record Trust(double chance, double exposure) {

    private static final Trust ALL_TOGETHER = new Trust(0.78, 0.64);
    /** Too few mornings to learn from. */
    private static final Trust UNPROVEN = new Trust(0.5, 0.5);

    static Trust of(Act.Kind kind) {
        return switch (kind) {
            case WATER_CHANGE -> new Trust(0.6, 0.8);
            case SALT -> new Trust(0.65, 0.6);
            case SKIP_FEED -> new Trust(0.9, 0.45);
            case CHECK_CHILLER -> new Trust(0.2, 0.4);
            case ICE -> new Trust(1, 0.45);
            case THIOSULFATE -> new Trust(1, 1);
            default -> UNPROVEN;
        };
    }

    static Trust ofAllTogether() {
        return ALL_TOGETHER;
    }

    Effect in(Effect shown) {
        return shown.tempered(chance, exposure);
    }
}
