package org.tankrounds.lab.evaluation;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * The chances, never falling as a score rises, that fit what came true best: pooling adjacent violators (Ayer
 * et al. 1955, Annals of Mathematical Statistics 26:641–647). Fitted to the very cases that it is judged by.
 */
final class Isotone {

    private final double[] cases;
    private final double[] trues;
    private int blocks;

    private Isotone(int size) {
        cases = new double[size];
        trues = new double[size];
    }

    static double[] chances(double[] score, boolean[] cameTrue) {
        int[] order = IntStream.range(0, score.length).boxed()
                .sorted(Comparator.comparingDouble(i -> score[i])).mapToInt(Integer::intValue).toArray();
        Isotone isotone = new Isotone(score.length);
        for (int from = 0; from < order.length;) {
            int to = from;
            double came = 0;
            while (to < order.length && score[order[to]] == score[order[from]]) {
                came += cameTrue[order[to++]] ? 1 : 0;
            }
            isotone.add(to - from, came);
            from = to;
        }
        return isotone.inOrder(order);
    }

    /** Cases of one score, higher than those before; blocks that would fall are pooled. */
    private void add(double count, double came) {
        cases[blocks] = count;
        trues[blocks] = came;
        blocks++;
        while (blocks > 1 && trues[blocks - 2] / cases[blocks - 2] >= trues[blocks - 1] / cases[blocks - 1]) {
            cases[blocks - 2] += cases[blocks - 1];
            trues[blocks - 2] += trues[blocks - 1];
            blocks--;
        }
    }

    private double[] inOrder(int[] order) {
        double[] chances = new double[order.length];
        int at = 0;
        for (int block = 0; block < blocks; block++) {
            double chance = trues[block] / cases[block];
            for (int end = at + (int) cases[block]; at < end; at++) {
                chances[order[at]] = chance;
            }
        }
        return chances;
    }
}
