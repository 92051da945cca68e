package org.tankrounds.web;

/**
 * Keeps a spreadsheet from taking somebody's text for a formula: an apostrophe goes before text whose first sign,
 * after blanks, begins one, on any of its lines. Numbers are never touched.
 */
public final class FormulaGuard {
    private static final String BEGINS_FORMULA = "=+-@\t\r\n\u0000\uff1d\uff0b\uff0d\uff20";

    private FormulaGuard() {}

    public static String guard(String text) {
        boolean dangerous = false;
        for (String line : text.split("\r\n|\r|\n", -1)) {
            String begin = line.replaceFirst("^[ \u00a0]+", "");
            dangerous |= !begin.isEmpty() && BEGINS_FORMULA.indexOf(begin.charAt(0)) >= 0;
        }
        dangerous |= !text.isEmpty() && BEGINS_FORMULA.indexOf(text.charAt(0)) >= 0;
        return dangerous ? "'" + text : text;
    }
}
