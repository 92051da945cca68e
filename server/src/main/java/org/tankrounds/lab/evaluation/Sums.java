package org.tankrounds.lab.evaluation;

import java.util.stream.IntStream;

/** A score made of sums over cases, kept by unit. */
final class Sums implements Resampled {

    /** What to make of the sums. */
    interface Score {
        double of(double[] sums);
    }

    private final double[][] byUnit;
    private final int terms;
    private final Score score;

    /** @param unit to which each case belongs, from 0 */
    Sums(int[] unit, int terms, Score score) {
        byUnit = new double[IntStream.of(unit).max().orElse(-1) + 1][terms];
        this.terms = terms;
        this.score = score;
    }

    void add(int unit, double... values) {
        for (int k = 0; k < terms; k++) {
            byUnit[unit][k] += values[k];
        }
    }

    @Override
    public int units() {
        return byUnit.length;
    }

    @Override
    public double at(int[] times) {
        double[] sums = new double[terms];
        for (int u = 0; u < times.length; u++) {
            for (int k = 0; k < terms; k++) {
                sums[k] += times[u] * byUnit[u][k];
            }
        }
        return score.of(sums);
    }
}
