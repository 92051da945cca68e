package org.tankrounds.lab;

import java.util.Locale;

/** Numbers as people like to read them. */
final class Rounded {

    private Rounded() {
    }

    static double toFigures(double value, int figures) {
        return Double.parseDouble(String.format(Locale.ROOT, "%." + (figures - 1) + "e", value));
    }
}
