package org.tankrounds.lab;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as people like to read them. */
final class Rounded {

    private Rounded() {
    }

    static double toFigures(double value, int figures) {
        return new BigDecimal(value).round(new MathContext(figures)).doubleValue();
    }
}
