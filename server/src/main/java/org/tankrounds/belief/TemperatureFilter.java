package org.tankrounds.belief;

import java.time.Instant;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Follows a tank's temperature with a few hundred possible states: the chiller holds it, or it stands (or no
 * longer keeps up) and the room warms the tank as a heat balance says. Standing is tried more often than it
 * happens and weighted down in return, so that one reading is enough to see it coming; a reading that fits no
 * state counts as a likely typo.
 */
final class TemperatureFilter {

    /** Possible states that are followed: many, for few of them stop just when a chiller did. */
    private static final int STATES = 2400;
    /** States that a belief keeps of them. */
    private static final int KEPT = 400;
    private static final double REPAIRS_PER_DAY = 0.25;
    /** Where nobody reads for days, nobody repairs either. */
    private static final double UNREAD_REPAIRS_PER_DAY = 0.08;
    static final double UNREAD_HOURS = 72;
    private static final double TRIED_STOPS = 0.25;
    private static final double HELD_SD_C = 1.4;
    private static final double HELD_SD_WITH_SET_POINT_C = 0.8;
    private static final double HELD_WALK_SD_C = 0.15;
    private static final double CONSTANT_WALK_LOG_SD = 0.1;
    private static final double READER_SD_C = 0.25;
    private static final double TYPO_SHARE = 0.02;
    private static final double DOUBTFUL_SHARE = 0.5;
    private static final double TYPO_SPAN_C = 40;
    /** Two readings so near each other within so many hours speak for each other. */
    private static final double SAME_C = 1.5;
    private static final double SAME_WITHIN_H = 96;
    private static final double STANDING_ABOVE_HELD_C = 2;

    private final double[] nowC = new double[STATES];
    private final double[] heldC = new double[STATES];
    private final double[] endC = new double[STATES];
    private final double[] timeConstantH = new double[STATES];
    private final boolean[] stopped = new boolean[STATES];
    private final double[] weight = new double[STATES];
    private int draw;

    TemperatureFilter(double usualC, boolean isSetPoint) {
        double[] spread = Draws.spreadNormal(STATES, 1);
        for (int i = 0; i < STATES; i++) {
            heldC[i] = usualC + spread[i] * (isSetPoint ? HELD_SD_WITH_SET_POINT_C : HELD_SD_C);
            nowC[i] = heldC[i] + ChillerFailure.RUN_SD_C * normal();
            weight[i] = 1.0 / STATES;
        }
    }

    /** Time passes without a reading. */
    void advance(double hours, boolean isRead) {
        double days = hours / 24;
        double repairsPerDay = isRead ? REPAIRS_PER_DAY : UNREAD_REPAIRS_PER_DAY;
        double stops = ChillerFailure.chanceWithin(days);
        double tried = Math.max(stops, Math.min(TRIED_STOPS, days));
        double repaired = 1 - StrictMath.exp(-repairsPerDay * days);
        double settle = StrictMath.exp(-hours / ChillerFailure.RUN_HOURS);
        double settleSd = ChillerFailure.RUN_SD_C * Math.sqrt(1 - settle * settle);
        double walkSd = HELD_WALK_SD_C * Math.sqrt(days);
        for (int i = 0; i < STATES; i++) {
            heldC[i] += walkSd * normal();
            if (stopped[i]) {
                if (uniform() < repaired) {
                    stopped[i] = false;
                    nowC[i] = heldC[i] + (nowC[i] - heldC[i]) * Decay.after(hours * uniform() / ChillerFailure.RUN_HOURS);
                } else {
                    warm(i, hours);
                    wander(i, days);
                }
            } else if (uniform() < tried) {
                weight[i] *= stops / tried;
                stop(i);
                warm(i, hours * uniform());
            } else {
                weight[i] *= (1 - stops) / (1 - tried);
                nowC[i] = heldC[i] + (nowC[i] - heldC[i]) * settle + settleSd * normal();
            }
        }
    }

    /** A reading; false when it fits none of the states. */
    boolean see(double readC, double halfStepC, boolean doubtful) {
        double sd = sd(halfStepC);
        double typo = doubtful ? DOUBTFUL_SHARE : TYPO_SHARE;
        double sum = 0;
        double fitting = 0;
        for (int i = 0; i < STATES; i++) {
            double z = (readC - nowC[i]) / sd;
            double fit = (1 - typo) * Decay.after(z * z / 2) / (sd * 2.506628274631);
            fitting += weight[i] * fit;
            weight[i] *= fit + typo / TYPO_SPAN_C;
            sum += weight[i];
        }
        double typoWeight = sum - fitting;
        double squares = 0;
        for (int i = 0; i < STATES; i++) {
            weight[i] /= sum;
            squares += weight[i] * weight[i];
        }
        if (squares * STATES > 2) {
            resample();
        }
        return fitting > typoWeight;
    }

    /** Whether two readings that nothing held explains confirm each other. */
    boolean isSame(Observation before, Observation reading) {
        return Math.abs(reading.value() - before.value()) <= SAME_C
                && hours(before.at(), reading.at()) <= SAME_WITHIN_H;
    }

    /**
     * Believes a temperature that no state came to: either the chiller was set to it, or it stands, the more
     * likely the further the water is above what was held.
     */
    void beginAgainAt(double readC, double halfStepC) {
        double sd = sd(halfStepC);
        for (int i = 0; i < STATES; i++) {
            nowC[i] = readC + sd * normal();
            stopped[i] = false;
            if (readC > heldC[i] + STANDING_ABOVE_HELD_C && i % 4 != 0) {
                stop(i);
                endC[i] = Math.max(endC[i], nowC[i]);
            } else {
                heldC[i] = readC;
            }
            weight[i] = 1.0 / STATES;
        }
    }

    private static double sd(double halfStepC) {
        return Math.sqrt(halfStepC * halfStepC / 3 + READER_SD_C * READER_SD_C);
    }

    TemperatureBelief belief(List<Observation> readings, Optional<Observation> setAside) {
        resample();
        int[] order = IntStream.range(0, STATES).boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> nowC[i]).thenComparing(i -> i))
                .mapToInt(Integer::intValue).toArray();
        double[] now = new double[KEPT];
        double[] held = new double[KEPT];
        double[] end = new double[KEPT];
        double[] constant = new double[KEPT];
        boolean[] standing = new boolean[KEPT];
        int count = 0;
        for (int i = 0; i < KEPT; i++) {
            int from = order[i * (STATES / KEPT) + (int) (Draws.uniform(draw++) * (STATES / KEPT))];
            now[i] = nowC[from];
            held[i] = heldC[from];
            end[i] = endC[from];
            constant[i] = timeConstantH[from];
            standing[i] = stopped[from];
            count += standing[i] ? 1 : 0;
        }
        return new TemperatureBelief(now, held, end, constant, standing, (double) count / KEPT,
                List.copyOf(readings), setAside);
    }

    private void stop(int i) {
        stopped[i] = true;
        ChillerFailure failure =
                ChillerFailure.of(heldC[i], normal(), normal(), uniform(), uniform());
        endC[i] = failure.endC();
        timeConstantH[i] = failure.timeConstantH();
    }

    private void warm(int i, double hours) {
        nowC[i] = endC[i] - (endC[i] - nowC[i]) * Decay.after(hours / timeConstantH[i]);
    }

    /**
     * Rooms are heated and aired, and no two states may stay alike: readings would leave one and its
     * certainty.
     */
    private void wander(int i, double days) {
        double share = Math.sqrt(days);
        endC[i] += ChillerFailure.ROOM_WALK_SD_C * share * normal();
        timeConstantH[i] *= StrictMath.exp(CONSTANT_WALK_LOG_SD * share * normal());
    }

    /** Systematic resampling: states by their weight, then all equally likely. */
    private void resample() {
        double[] now = nowC.clone();
        double[] held = heldC.clone();
        double[] end = endC.clone();
        double[] constant = timeConstantH.clone();
        boolean[] standing = stopped.clone();
        int from = 0;
        double reached = weight[0];
        double total = 0;
        for (double w : weight) {
            total += w;
        }
        for (int i = 0; i < STATES; i++) {
            double aim = (i + 0.5) / STATES * total;
            while (reached < aim && from < STATES - 1) {
                reached += weight[++from];
            }
            nowC[i] = now[from];
            heldC[i] = held[from];
            endC[i] = end[from];
            timeConstantH[i] = constant[from];
            stopped[i] = standing[from];
        }
        Arrays.fill(weight, 1.0 / STATES);
    }

    private double normal() {
        return Draws.normal(draw++);
    }

    private double uniform() {
        return Draws.uniform(draw++);
    }

    /** Hours between two moments. */
    static double hours(Instant from, Instant to) {
        return (to.getEpochSecond() - from.getEpochSecond()) / 3600.0;
    }
}
