package org.tankrounds.rounds;

import java.util.Locale;

/** Path data of an SVG picture, to a tenth of a pixel. */
final class SvgPath {
    private final StringBuilder data = new StringBuilder();

    SvgPath to(double x, double y) {
        data.append(data.length() == 0 ? "M" : "L").append(number(x)).append(' ').append(number(y));
        return this;
    }

    SvgPath close() {
        data.append('Z');
        return this;
    }

    String data() {
        return data.toString();
    }

    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        String plain = text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
        return "-0".equals(plain) ? "0" : plain;
    }
}
