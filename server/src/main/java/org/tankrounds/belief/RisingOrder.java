package org.tankrounds.belief;

/** In which order numbers rise. A merge sort of places: those of the language sort numbers alone, or objects. */
public final class RisingOrder {

    private final double[] values;
    private int[] places;
    private int[] spare;

    private RisingOrder(double[] values) {
        this.values = values;
        places = new int[values.length];
        spare = new int[values.length];
        for (int i = 0; i < places.length; i++) {
            places[i] = i;
        }
    }

    /** Where the least stands, then the next, and so on; equal ones as they stand. @param values without NaN */
    public static int[] of(double[] values) {
        RisingOrder order = new RisingOrder(values);
        for (int run = 1; run < values.length; run *= 2) {
            order.mergeRuns(run);
        }
        return order.places;
    }

    private void mergeRuns(int run) {
        for (int from = 0; from < places.length; from += 2 * run) {
            int middle = Math.min(from + run, places.length);
            merge(from, middle, Math.min(middle + run, places.length));
        }
        int[] merged = spare;
        spare = places;
        places = merged;
    }

    private void merge(int from, int middle, int until) {
        int left = from;
        int right = middle;
        for (int i = from; i < until; i++) {
            boolean takesLeft = right == until || left < middle && values[places[left]] <= values[places[right]];
            spare[i] = places[takesLeft ? left++ : right++];
        }
    }
}
