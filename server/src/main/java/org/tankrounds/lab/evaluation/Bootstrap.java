package org.tankrounds.lab.evaluation;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * How far a score would move with other tanks: percentiles of the score over samples of the same size, drawn
 * with replacement (Efron 1979, Annals of Statistics 7:1–26). Whole tanks or chapters are drawn, because the
 * mornings of one tank are much alike. The same cases give the same span; scores of the same units meet the
 * same samples.
 */
final class Bootstrap {

    private static final int SAMPLES = 500;
    private static final long SEED = 20_270_112;
    private static final int FEWEST_UNITS = 5;
    private static final double TAIL = 0.025;

    private Bootstrap() {
    }

    /** Without a span where there are too few units to speak of one. */
    static Estimate of(Resampled score) {
        int[] once = new int[score.units()];
        Arrays.fill(once, 1);
        double[] scores = score.units() < FEWEST_UNITS ? new double[0] : sampled(score);
        return new Estimate(score.at(once), quantile(scores, TAIL), quantile(scores, 1 - TAIL));
    }

    /** Ascending. */
    private static double[] sampled(Resampled score) {
        SplittableRandom random = new SplittableRandom(SEED);
        double[] scores = new double[SAMPLES];
        for (int i = 0; i < SAMPLES; i++) {
            scores[i] = score.at(drawn(score.units(), random));
        }
        return Arrays.stream(scores).filter(one -> !Double.isNaN(one)).sorted().toArray();
    }

    private static int[] drawn(int units, SplittableRandom random) {
        int[] times = new int[units];
        for (int i = 0; i < units; i++) {
            times[random.nextInt(units)]++;
        }
        return times;
    }

    private static double quantile(double[] sorted, double share) {
        return sorted.length == 0 ? Double.NaN : sorted[(int) Math.rint(share * (sorted.length - 1))];
    }
}
