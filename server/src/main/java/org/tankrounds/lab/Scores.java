package org.tankrounds.lab;

import java.util.Comparator;
import java.util.stream.IntStream;

/** How good an order is against what then happened. */
public final class Scores {

    private Scores() {
    }

    /**
     * The chance that a case that came true was put before one that did not, ties counting a half (area under the
     * receiver operating characteristic). NaN where all came out alike.
     */
    public static double auc(double[] score, boolean[] cameTrue) {
        int[] order = ascending(score);
        double rankSum = 0;
        long trues = 0;
        for (int from = 0; from < order.length;) {
            int to = from;
            while (to < order.length && score[order[to]] == score[order[from]]) {
                to++;
            }
            for (int i = from; i < to; i++) {
                if (cameTrue[order[i]]) {
                    trues++;
                    rankSum += (from + 1 + to) / 2.0;
                }
            }
            from = to;
        }
        long falses = order.length - trues;
        return (rankSum - trues * (trues + 1) / 2.0) / (trues * (double) falses);
    }

    /** Whether the case put first is (one of) the worst. */
    public static boolean isWorstFirst(double[] score, double[] harm) {
        int first = 0;
        double worst = 0;
        for (int i = 0; i < score.length; i++) {
            first = score[i] > score[first] ? i : first;
            worst = Math.max(worst, harm[i]);
        }
        return harm[first] == worst;
    }

    /**
     * Discounted harm found in the first k places over that of the best order (Järvelin and Kekäläinen 2002, ACM
     * TOIS 20:422–446). NaN where there is no harm at all.
     */
    public static double ndcg(double[] score, double[] harm, int k) {
        return discounted(score, harm, k) / discounted(harm, harm, k);
    }

    private static double discounted(double[] score, double[] harm, int k) {
        int[] order = ascending(score);
        double sum = 0;
        for (int place = 0; place < Math.min(k, order.length); place++) {
            sum += harm[order[order.length - 1 - place]] * StrictMath.log(2) / StrictMath.log(place + 2.0);
        }
        return sum;
    }

    private static int[] ascending(double[] score) {
        return IntStream.range(0, score.length).boxed().sorted(Comparator.comparingDouble(i -> score[i]))
                .mapToInt(Integer::intValue).toArray();
    }
}
