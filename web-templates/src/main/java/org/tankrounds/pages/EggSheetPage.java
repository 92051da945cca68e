package org.tankrounds.pages;

import java.util.List;

/**
 * An egg day on paper: the drive, the cooler, and a receipt for each class to sign.
 *
 * @param about from whom, by which papers, how far the eggs have come
 * @param scale sign of the degrees that are written in
 * @param rules of tempering, in words
 * @param cautions of what is done at the tank
 */
public record EggSheetPage(
        String title, String heading, String runTo, String pdfTo, List<String> about, String scale, List<Line> lines,
        List<String> bring, List<String> rules, List<String> cautions) implements Page {

    /** @param time when it is expected; empty where nobody said */
    public record Line(int number, String time, String place, String eggs) {}
}
