package org.tankrounds.forecast;

import java.util.Arrays;
import org.tankrounds.belief.RisingOrder;

/**
 * How much of one quantity's variance another explains, whatever the shape of their relation: the correlation
 * ratio η² over bins of equally many, less what as many bins of noise would seem to explain.
 *
 * <p>{@code η² = Σ nᵦ (ȳᵦ − ȳ)² / Σ (y − ȳ)²}; corrected {@code ε² = 1 − (1 − η²)(n − 1)/(n − k)}, 0 where negative.
 * Sources: Pearson 1905 (the ratio); Kelley 1935, PNAS 21(9):554–559 (the correction); both from memory.
 */
final class CorrelationRatio {

    private static final int BINS = 10;

    private CorrelationRatio() {
    }

    /**
     * The share of the variance of {@code outcome} that {@code given} explains, 0 to 1; 0 where either is constant.
     *
     * @param outcome any finite numbers
     * @param given as many; equal values share a bin
     */
    static double of(double[] outcome, double[] given) {
        int n = outcome.length;
        if (given.length != n) {
            throw new IllegalArgumentException(n + " outcomes but " + given.length + " given values");
        }
        int[] order = RisingOrder.of(given);
        double mean = Arrays.stream(outcome).average().orElse(0);
        double total = Arrays.stream(outcome).map(y -> (y - mean) * (y - mean)).sum();
        double between = 0;
        int bins = 0;
        for (int from = 0; from < n; bins++) {
            int until = end(order, given, from, bins);
            double sum = 0;
            for (int i = from; i < until; i++) {
                sum += outcome[order[i]] - mean;
            }
            between += sum * sum / (until - from);
            from = until;
        }
        if (total == 0 || bins < 2 || bins == n) {
            return 0;
        }
        return Math.max(0, 1 - (1 - between / total) * (n - 1) / (n - bins));
    }

    /** Where a bin ends: at its quantile, but never between equal values. */
    private static int end(int[] order, double[] given, int from, int bin) {
        int n = order.length;
        int until = Math.max(from + 1, Math.min(n, (int) ((bin + 1L) * n / BINS)));
        while (until < n && given[order[until]] == given[order[until - 1]]) {
            until++;
        }
        return until;
    }
}
