package org.tankrounds.pages;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Twenty equally likely ways in which it could go, each a dot under the day on which the water first goes beyond a
 * limit. Columns stand on one line and are read out as a list.
 *
 * @param answer how many go beyond which limit by when
 * @param levels where the leading series then is; may be empty
 * @param signs which dot is which; empty where there is one kind
 * @param columns from now to the end of the forecast, then those that stay within
 */
public record WaysPicture(String answer, String levels, String signs, List<Column> columns) {
    /** Dots side by side, so that twenty of them in one column are still low enough for a phone. */
    private static final int ACROSS = 4;
    private static final int APART = 12;
    private static final int HEIGHT = 60;

    /**
     * @param label under the dots, short
     * @param words the label where it is read out, with what is counted
     * @param kinds a dot each: main, other or within
     */
    public record Column(String label, String words, List<String> kinds) {

        public int count() {
            return kinds.size();
        }

        public List<Dot> dots() {
            return IntStream.range(0, kinds.size())
                    .mapToObj(i -> new Dot(i % ACROSS * APART + APART / 2,
                            HEIGHT - i / ACROSS * APART - APART / 2, kinds.get(i))).toList();
        }
    }

    /** @param kind main, other or within; each has its own shape */
    public record Dot(int x, int y, String kind) {

        public boolean square() {
            return kind.equals("other");
        }
    }

    public String viewBox() {
        return "0 0 " + ACROSS * APART + " " + HEIGHT;
    }
}
