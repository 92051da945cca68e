package org.tankrounds.summary;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Figures are rounded here and nowhere else, so that every format prints the same ones. */
final class Rounded {
    private static final int SHARE_DECIMALS = 6;

    private Rounded() {}

    static BigDecimal share(double share) {
        return to(share, SHARE_DECIMALS);
    }

    static BigDecimal value(Series series, double value) {
        return to(value, series.decimals());
    }

    /** Half up, without zeros at the end. */
    static BigDecimal to(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }
}
