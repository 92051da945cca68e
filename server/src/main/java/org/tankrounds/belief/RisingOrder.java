package org.tankrounds.belief;

/**
 * In which order numbers rise. Each is first laid about where it would stand if they were evenly spread, then moved to
 * where it stands: several times as quick as sorting by comparison, for levels of a tank lie close together.
 */
public final class RisingOrder {

    private final double[] values;
    private final int[] order;

    private RisingOrder(double[] values) {
        this.values = values;
        order = new int[values.length];
    }

    /** Where the least stands, then the next, and so on; equal ones as they stand. @param values finite */
    public static int[] of(double[] values) {
        RisingOrder rising = new RisingOrder(values);
        rising.layAbout();
        rising.moveIntoPlace();
        return rising.order;
    }

    /** The same numbers, rising. @param values finite */
    public static double[] sorted(double[] values) {
        int[] order = of(values);
        double[] sorted = new double[values.length];
        for (int i = 0; i < sorted.length; i++) {
            sorted[i] = values[order[i]];
        }
        return sorted;
    }

    private void layAbout() {
        int[] bins = bins();
        int[] next = new int[order.length + 1];
        for (int bin : bins) {
            next[bin + 1]++;
        }
        for (int bin = 1; bin < next.length; bin++) {
            next[bin] += next[bin - 1];
        }
        for (int i = 0; i < order.length; i++) {
            order[next[bins[i]]++] = i;
        }
    }

    /** As many as there are numbers, equally wide. */
    private int[] bins() {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            least = Math.min(least, value);
            most = Math.max(most, value);
        }
        int last = values.length - 1;
        double binsPerUnit = most > least ? last / (most - least) : 0;
        int[] bins = new int[values.length];
        for (int i = 0; i < bins.length; i++) {
            bins[i] = Math.min(last, (int) ((values[i] - least) * binsPerUnit));
        }
        return bins;
    }

    private void moveIntoPlace() {
        for (int i = 1; i < order.length; i++) {
            int moved = order[i];
            int to = i;
            for (; to > 0 && values[order[to - 1]] > values[moved]; to--) {
                order[to] = order[to - 1];
            }
            order[to] = moved;
        }
    }
}
