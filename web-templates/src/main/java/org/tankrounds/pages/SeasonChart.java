package org.tankrounds.pages;

import java.util.List;

/**
 * One series over the season: the past on the left, the next 72 hours drawn wider on the right. The picture is
 * stretched to the page's width; heights are pixels.
 *
 * @param name with its unit
 * @param newest the last reading, with its unit and age
 * @param alternative the same in a sentence, with numbers and units
 * @param lines path data; a gap in the readings separates two lines
 * @param dots path data of a dot a reading
 * @param openDots the same for what was not detected
 * @param limits path data of the limit lines, with a step where the limit changes
 * @param outlined path data of the "now" line
 */
public record SeasonChart(
        String name, String newest, String alternative, int height, List<Tick> ticks,
        List<String> lines, String dots, String openDots, String wide, String narrow, List<String> limits,
        String now) {

    /** @param at pixels from the top, or per cent from the left */
    public record Tick(String at, String label, String anchor) {}

    public String viewBox() {
        return "0 0 1000 " + height;
    }

    /** A reader on paper or screen needs the last label's foot inside the picture. */
    public int labelsHeight() {
        return height + 8;
    }
}
