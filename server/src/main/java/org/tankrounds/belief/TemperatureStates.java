package org.tankrounds.belief;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Possible states of a tank's temperature, each with its weight; arrays by state. */
final class TemperatureStates {

    /** So many are followed: many, for few of them stop just when a chiller did. */
    static final int COUNT = 2400;
    /** So many of them a belief keeps. */
    private static final int KEPT = 400;

    final double[] nowC;
    final double[] heldC;
    final double[] endC;
    final double[] timeConstantH;
    final boolean[] stopped;
    final double[] weight;

    TemperatureStates(int count) {
        nowC = new double[count];
        heldC = new double[count];
        endC = new double[count];
        timeConstantH = new double[count];
        stopped = new boolean[count];
        weight = new double[count];
        Arrays.fill(weight, 1.0 / count);
    }

    /** Makes the weights add up to 1; draws anew where few states carry most of them. */
    void weighTo(double sum) {
        double squares = 0;
        for (int i = 0; i < COUNT; i++) {
            weight[i] /= sum;
            squares += weight[i] * weight[i];
        }
        if (squares * COUNT > 2) {
            resample();
        }
    }

    /** Systematic resampling: states by their weight, then all equally likely. */
    void resample() {
        double total = 0;
        for (double w : weight) {
            total += w;
        }
        TemperatureStates before = copy();
        int from = 0;
        double reached = weight[0];
        for (int i = 0; i < COUNT; i++) {
            double aim = (i + 0.5) / COUNT * total;
            while (reached < aim && from < COUNT - 1) {
                reached += before.weight[++from];
            }
            take(i, before, from);
        }
        Arrays.fill(weight, 1.0 / COUNT);
    }

    /** A sample for the forecast, one of each few neighbours, from cold to warm. */
    TemperatureBelief belief(List<Observation> readings, Optional<Observation> setAside, int firstDraw) {
        resample();
        int[] order = fromColdToWarm();
        int apart = COUNT / KEPT;
        TemperatureStates kept = new TemperatureStates(KEPT);
        for (int i = 0; i < KEPT; i++) {
            kept.take(i, this, order[i * apart + (int) (Draws.uniform(firstDraw + i) * apart)]);
        }
        long standing = IntStream.range(0, KEPT).filter(i -> kept.stopped[i]).count();
        return new TemperatureBelief(kept.nowC, kept.heldC, kept.endC, kept.timeConstantH, kept.stopped,
                (double) standing / KEPT, List.copyOf(readings), setAside);
    }

    private int[] fromColdToWarm() {
        return IntStream.range(0, COUNT).boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> nowC[i]).thenComparing(i -> i))
                .mapToInt(Integer::intValue).toArray();
    }

    private TemperatureStates copy() {
        TemperatureStates copy = new TemperatureStates(COUNT);
        for (int i = 0; i < COUNT; i++) {
            copy.take(i, this, i);
            copy.weight[i] = weight[i];
        }
        return copy;
    }

    private void take(int to, TemperatureStates other, int from) {
        nowC[to] = other.nowC[from];
        heldC[to] = other.heldC[from];
        endC[to] = other.endC[from];
        timeConstantH[to] = other.timeConstantH[from];
        stopped[to] = other.stopped[from];
    }
}
