package org.tankrounds.lab.evaluation;

import java.util.Locale;

/** What stands in a table: read by people as text, by programs as CSV. */
record Cell(String text, String csv) {

    static Cell of(String words) {
        return new Cell(words, words);
    }

    static Cell of(int number) {
        return of(String.valueOf(number));
    }

    static Cell of(double number, int decimals) {
        String text = Double.isNaN(number) ? "" : String.format(Locale.ROOT, "%." + decimals + "f", number);
        return new Cell(text.isEmpty() ? "–" : text, text);
    }

    /** A score and half its span; a CSV has the whole span in three cells. */
    static Cell of(Estimate estimate) {
        String value = of(estimate.value(), 3).text;
        String text = Double.isNaN(estimate.low()) ? value
                : value + " ±" + of((estimate.high() - estimate.low()) / 2, 3).text;
        return new Cell(text, String.join(",", of(estimate.value(), 4).csv, of(estimate.low(), 4).csv,
                of(estimate.high(), 4).csv));
    }
}
