package org.tankrounds.pages;

import java.util.List;

/**
 * A series of two weeks or less, its limits and the next 72 hours, in a table's cell.
 *
 * @param alternative the same in a sentence, with numbers and units
 * @param lines path data; a gap in the readings separates two lines
 * @param wide path data of the band that 9 of 10 courses stay in
 * @param narrow path data of the band that half of them stay in
 * @param limits heights of the limit lines
 */
public record SmallPicture(
        int width, int height, String alternative, List<String> lines, List<Dot> dots, String wide, String narrow,
        String nowX, List<String> limits) {

    /** @param open not detected: the truth lies below */
    public record Dot(String x, String y, boolean open) {}

    public String viewBox() {
        return "0 0 " + width + " " + height;
    }
}
