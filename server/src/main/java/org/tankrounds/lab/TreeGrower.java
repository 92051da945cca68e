package org.tankrounds.lab;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.tankrounds.forecast.Sign;
import org.tankrounds.forecast.Trees.Node;

/**
 * Grows one small tree at a time on rows of signs: the question that gains most is asked next, over quantiles of each
 * sign; signs with a direction keep it (the bounds of a parent's halves are handed down).
 */
final class TreeGrower {

    static final int LEAVES = 32;
    private static final int BINS = 40;
    private static final int LEAST_ROWS = 150;
    private static final double RIDGE = 20;
    private static final double LEAST_GAIN = 1e-6;
    private static final double ROWS_SHARE = 0.7;
    private static final double SIGNS_SHARE = 0.5;
    private static final double RATE = 0.05;

    private final double[][] cuts;
    private final byte[][] bins;
    private final int rows;
    private double[] slope;
    private double[] curve;

    /** Rows not yet asked further. */
    private record Leaf(int[] rows, double least, double most, double value, Split best) {
    }

    private record Split(int sign, int cut, boolean unknownIsBelow, double gain, double below, double above) {
    }

    TreeGrower(double[][] signs) {
        rows = signs.length;
        int count = Sign.values().length;
        cuts = new double[count][];
        bins = new byte[count][rows];
        for (int s = 0; s < count; s++) {
            int sign = s;
            double[] column = Arrays.stream(signs).mapToDouble(row -> row[sign]).toArray();
            cuts[s] = cuts(column);
            for (int i = 0; i < rows; i++) {
                bins[s][i] = (byte) bin(cuts[s], column[i]);
            }
        }
    }

    private static double[] cuts(double[] column) {
        double[] known = Arrays.stream(column).filter(v -> !Double.isNaN(v)).sorted().toArray();
        return known.length == 0 ? known : IntStream.range(1, BINS)
                .mapToDouble(k -> Rounded.toFigures(known[(int) ((long) k * known.length / BINS)], 4))
                .distinct().toArray();
    }

    /** How many cuts lie at or below a value; one bin more for unknown. */
    private static int bin(double[] cuts, double value) {
        if (Double.isNaN(value)) {
            return cuts.length + 1;
        }
        int bin = 0;
        while (bin < cuts.length && cuts[bin] <= value) {
            bin++;
        }
        return bin;
    }

    /** The tree that best follows a loss's slopes and curvatures at each row. */
    Node grow(double[] slopes, double[] curves, Luck luck) {
        slope = slopes;
        curve = curves;
        int[] picked = IntStream.range(0, rows).filter(i -> luck.happens(ROWS_SHARE)).toArray();
        int[] asked = IntStream.range(0, cuts.length).filter(s -> luck.happens(SIGNS_SHARE)).toArray();
        List<Growing> open = new ArrayList<>();
        Growing root = new Growing(leaf(picked, -Double.MAX_VALUE, Double.MAX_VALUE, asked));
        open.add(root);
        while (open.size() < LEAVES) {
            Growing next = open.stream().max(Comparator.comparingDouble(g -> g.leaf.best.gain)).orElseThrow();
            if (next.leaf.best.gain < LEAST_GAIN) {
                break;
            }
            open.remove(next);
            next.divide(asked);
            open.add(next.below);
            open.add(next.above);
        }
        return root.node();
    }

    private final class Growing {
        private final Leaf leaf;
        private Growing below;
        private Growing above;

        Growing(Leaf leaf) {
            this.leaf = leaf;
        }

        void divide(int[] asked) {
            Split split = leaf.best;
            int[] low = Arrays.stream(leaf.rows).filter(i -> isBelow(split, i)).toArray();
            int[] high = Arrays.stream(leaf.rows).filter(i -> !isBelow(split, i)).toArray();
            double middle = (split.below + split.above) / 2;
            int direction = Sign.values()[split.sign].direction();
            below = new Growing(leaf(low, direction < 0 ? Math.max(leaf.least, middle) : leaf.least,
                    direction > 0 ? Math.min(leaf.most, middle) : leaf.most, asked));
            above = new Growing(leaf(high, direction > 0 ? Math.max(leaf.least, middle) : leaf.least,
                    direction < 0 ? Math.min(leaf.most, middle) : leaf.most, asked));
        }

        Node node() {
            if (below == null) {
                return Node.leaf(Rounded.toFigures(RATE * leaf.value, 4));
            }
            Split split = leaf.best;
            return new Node(Sign.values()[split.sign], cuts[split.sign][split.cut], split.unknownIsBelow,
                    below.node(), above.node(), 0);
        }
    }

    private boolean isBelow(Split split, int row) {
        int bin = bins[split.sign][row];
        return bin > cuts[split.sign].length ? split.unknownIsBelow : bin <= split.cut;
    }

    private Leaf leaf(int[] of, double least, double most, int[] asked) {
        double g = 0;
        double h = 0;
        for (int i : of) {
            g += slope[i];
            h += curve[i];
        }
        Split best = new Split(-1, -1, false, 0, 0, 0);
        for (int s : asked) {
            best = better(best, s, of, new Sums(g, h, of.length), least, most);
        }
        return new Leaf(of, least, most, bounded(g, h, least, most), best);
    }

    /** Sums over rows. */
    private record Sums(double slope, double curve, int rows) {
        Sums minus(Sums other) {
            return new Sums(slope - other.slope, curve - other.curve, rows - other.rows);
        }

        Sums plus(Sums other) {
            return new Sums(slope + other.slope, curve + other.curve, rows + other.rows);
        }
    }

    private Split better(Split best, int sign, int[] of, Sums all, double least, double most) {
        int last = cuts[sign].length + 1;
        double[] g = new double[last + 1];
        double[] h = new double[last + 1];
        int[] n = new int[last + 1];
        for (int i : of) {
            int bin = bins[sign][i];
            g[bin] += slope[i];
            h[bin] += curve[i];
            n[bin]++;
        }
        Sums unknown = new Sums(g[last], h[last], n[last]);
        Sums below = new Sums(0, 0, 0);
        for (int cut = 0; cut < cuts[sign].length; cut++) {
            below = below.plus(new Sums(g[cut], h[cut], n[cut]));
            best = better(best, split(sign, cut, false, below, all, least, most));
            best = unknown.rows == 0 ? best
                    : better(best, split(sign, cut, true, below.plus(unknown), all, least, most));
        }
        return best;
    }

    private static Split better(Split one, Split other) {
        return other.gain > one.gain ? other : one;
    }

    private static Split split(
            int sign, int cut, boolean unknownIsBelow, Sums below, Sums all, double least, double most) {
        Sums above = all.minus(below);
        double low = bounded(below.slope, below.curve, least, most);
        double high = bounded(above.slope, above.curve, least, most);
        boolean allowed = below.rows >= LEAST_ROWS && above.rows >= LEAST_ROWS
                && Sign.values()[sign].direction() * (high - low) >= 0;
        double gain = allowed ? gain(below, low) + gain(above, high)
                - gain(all, bounded(all.slope, all.curve, least, most)) : 0;
        return new Split(sign, cut, unknownIsBelow, gain, low, high);
    }

    private static double bounded(double slope, double curve, double least, double most) {
        return Math.min(most, Math.max(least, -slope / (curve + RIDGE)));
    }

    private static double gain(Sums sums, double value) {
        return -(sums.slope * value + 0.5 * (sums.curve + RIDGE) * value * value);
    }
}
