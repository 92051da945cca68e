package org.tankrounds.forecast;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Map;

/**
 * A sum of small decision trees over the signs (Friedman 2001, Annals of Statistics 29:1189–1232).
 *
 * <p>Written one tree an entry, each question before its answers: {@code NITRITE_U<0.62 -0.05 0.11} adds −0.05 below
 * 0.62 and 0.11 from there on; {@code <?} instead of {@code <} counts an unknown sign as below.
 *
 * @param start what the sum begins with
 * @param trees in order
 */
public record Trees(double start, List<Node> trees) {

    /** A question with its two answers, or a number where {@code sign} is null. */
    public record Node(Sign sign, double threshold, boolean unknownIsBelow, Node below, Node above, double value) {

        public static Node leaf(double value) {
            return new Node(null, Double.NaN, false, null, null, value);
        }

        /** Its answer for a tank's signs, by {@link Sign#ordinal}. */
        public double of(double[] signs) {
            Node at = this;
            while (at.sign != null) {
                double seen = signs[at.sign.ordinal()];
                boolean isBelow = Double.isNaN(seen) ? at.unknownIsBelow : seen < at.threshold;
                at = isBelow ? at.below : at.above;
            }
            return at.value;
        }

        private void write(StringBuilder out) {
            if (sign == null) {
                out.append(value);
                return;
            }
            out.append(sign).append(unknownIsBelow ? "<?" : "<").append(threshold).append(' ');
            below.write(out);
            out.append(' ');
            above.write(out);
        }

        private static Node read(Deque<String> words) {
            String word = words.remove();
            int at = word.indexOf('<');
            if (at < 0) {
                return leaf(Double.parseDouble(word));
            }
            boolean unknownIsBelow = word.charAt(at + 1) == '?';
            double threshold = Double.parseDouble(word.substring(at + (unknownIsBelow ? 2 : 1)));
            Node below = read(words);
            return new Node(Sign.valueOf(word.substring(0, at)), threshold, unknownIsBelow, below, read(words), 0);
        }
    }

    public Trees {
        trees = List.copyOf(trees);
    }

    /** The sum for a tank's signs, by {@link Sign#ordinal}. */
    public double of(double[] signs) {
        double sum = start;
        for (Node tree : trees) {
            sum += tree.of(signs);
        }
        return sum;
    }

    /** As entries of a properties file under a name: the start, then the trees by number. */
    List<String> lines(String name) {
        List<String> lines = new ArrayList<>();
        lines.add(name + "=" + start);
        for (int i = 0; i < trees.size(); i++) {
            StringBuilder line = new StringBuilder(key(name, i)).append('=');
            trees.get(i).write(line);
            lines.add(line.toString());
        }
        return lines;
    }

    static Trees read(Map<String, String> entries, String name) {
        List<Node> trees = new ArrayList<>();
        for (String line; (line = entries.get(key(name, trees.size()))) != null;) {
            trees.add(Node.read(new ArrayDeque<>(Arrays.asList(line.split(" ")))));
        }
        return new Trees(Double.parseDouble(entries.get(name)), trees);
    }

    private static String key(String name, int number) {
        return name + "." + number;
    }
}
