package org.tankrounds.lab.evaluation;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * The chance that a case that came true was put before one that did not, ties counting a half: area under the
 * receiver operating characteristic (Hanley and McNeil 1982, Radiology 143:29–36). NaN where all came out
 * alike.
 */
final class Auc implements Resampled {

    private final double[] score;
    private final boolean[] cameTrue;
    private final int[] unit;
    private final int units;
    private final int[] ascending;

    /** @param unit to which each case belongs, from 0 */
    Auc(double[] score, boolean[] cameTrue, int[] unit) {
        this.score = score;
        this.cameTrue = cameTrue;
        this.unit = unit;
        units = IntStream.of(unit).max().orElse(-1) + 1;
        ascending = IntStream.range(0, score.length).boxed()
                .sorted(Comparator.comparingDouble(i -> score[i])).mapToInt(Integer::intValue).toArray();
    }

    static double of(double[] score, boolean[] cameTrue) {
        return new Auc(score, cameTrue, new int[score.length]).at(new int[] {1});
    }

    @Override
    public int units() {
        return units;
    }

    @Override
    public double at(int[] times) {
        double won = 0;
        double trues = 0;
        double falses = 0;
        for (int from = 0; from < ascending.length;) {
            double tiedTrues = 0;
            double tiedFalses = 0;
            double tied = score[ascending[from]];
            for (; from < ascending.length && score[ascending[from]] == tied; from++) {
                int weight = times[unit[ascending[from]]];
                tiedTrues += cameTrue[ascending[from]] ? weight : 0;
                tiedFalses += cameTrue[ascending[from]] ? 0 : weight;
            }
            won += tiedTrues * (falses + tiedFalses / 2);
            trues += tiedTrues;
            falses += tiedFalses;
        }
        return won / (trues * falses);
    }
}
