package org.tankrounds.belief;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Possible states of a tank's temperature, each with its weight; arrays by state. */
final class TemperatureStates {

    /** So many are followed: many, for few of them stop just when a chiller did. */
    static final int COUNT = 2400;
    private static final int KEPT = TemperatureBelief.STATES;

    double[] nowC = new double[COUNT];
    double[] heldC = new double[COUNT];
    double[] endC = new double[COUNT];
    double[] timeConstantH = new double[COUNT];
    boolean[] stopped = new boolean[COUNT];
    final double[] weight = new double[COUNT];

    TemperatureStates() {
        Arrays.fill(weight, 1.0 / COUNT);
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
        int[] drawn = drawn();
        nowC = of(nowC, drawn);
        heldC = of(heldC, drawn);
        endC = of(endC, drawn);
        timeConstantH = of(timeConstantH, drawn);
        stopped = of(stopped, drawn);
        Arrays.fill(weight, 1.0 / COUNT);
    }

    private int[] drawn() {
        double total = 0;
        for (double w : weight) {
            total += w;
        }
        int[] drawn = new int[COUNT];
        int from = 0;
        double reached = weight[0];
        for (int i = 0; i < COUNT; i++) {
            double aim = (i + 0.5) / COUNT * total;
            while (reached < aim && from < COUNT - 1) {
                reached += weight[++from];
            }
            drawn[i] = from;
        }
        return drawn;
    }

    /** A sample for the forecast, one of each few neighbours, from cold to warm. */
    TemperatureBelief belief(List<Observation> readings, Optional<Observation> setAside, int firstDraw) {
        resample();
        int[] kept = kept(firstDraw);
        boolean[] stands = of(stopped, kept);
        long standing = IntStream.range(0, KEPT).filter(i -> stands[i]).count();
        return new TemperatureBelief(of(nowC, kept), of(heldC, kept), of(endC, kept), of(timeConstantH, kept),
                stands, (double) standing / KEPT, List.copyOf(readings), setAside);
    }

    private int[] kept(int firstDraw) {
        int[] fromColdToWarm = RisingOrder.of(nowC);
        int apart = COUNT / KEPT;
        int[] kept = new int[KEPT];
        for (int i = 0; i < KEPT; i++) {
            kept[i] = fromColdToWarm[i * apart + (int) (Draws.uniform(firstDraw + i) * apart)];
        }
        return kept;
    }

    private static double[] of(double[] values, int[] which) {
        double[] some = new double[which.length];
        for (int i = 0; i < which.length; i++) {
            some[i] = values[which[i]];
        }
        return some;
    }

    private static boolean[] of(boolean[] values, int[] which) {
        boolean[] some = new boolean[which.length];
        for (int i = 0; i < which.length; i++) {
            some[i] = values[which[i]];
        }
        return some;
    }
}
