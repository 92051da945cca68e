package org.tankrounds.advice;

import java.util.Optional;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Effect;

/**
 * How much of what the courses show comes true where the advice is followed. They are too hopeful: water that
 * is worse than believed stays worse. Learned in the lab ({@code AdviceTrial}) on drawn worlds 5000 to 5119,
 * eight tanks each; the named worlds that effects are reported for are not among them.
 *
 * @param chance share of the fall in chance that comes true
 * @param exposure power of the ratio of exposures that comes true
 */
record Trust(double chance, double exposure) {

    private static final Trust ALL_TOGETHER = new Trust(0.78, 0.64);
    /** From this chance on that the chiller stands, setting it going is what the courses show. */
    private static final double STANDS = 0.5;

    /** @param standsChance of the tank's chiller */
    static Trust of(Act act, double standsChance) {
        return switch (act.kind()) {
            case WATER_CHANGE -> isAgainst(act, Driver.PH) ? new Trust(0.3, 0.1) : new Trust(0.7, 0.75);
            case SALT -> new Trust(0.65, 0.6);
            case SKIP_FEED -> isAgainst(act, Driver.UN_IONISED_AMMONIA)
                    ? new Trust(0.45, 0.1) : new Trust(1, 0.5);
            case BICARBONATE -> new Trust(0.65, 0.4);
            case CHECK_CHILLER -> standsChance > STANDS ? new Trust(0.75, 0.55) : new Trust(0.2, 0.25);
            case ICE -> new Trust(0.5, 0.5);
            case MORE_AIR -> new Trust(0.2, 0.2);
            default -> new Trust(1, 1);
        };
    }

    static Trust ofAllTogether() {
        return ALL_TOGETHER;
    }

    Effect in(Effect shown) {
        return shown.tempered(chance, exposure);
    }

    private static boolean isAgainst(Act act, Driver driver) {
        return act.driver().equals(Optional.of(driver));
    }
}
