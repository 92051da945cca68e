package org.tankrounds.lab.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class BootstrapTest {
    private static final int UNITS = 100;

    @Test
    void span_ofTheSameCases_isTheSame() {
        assertThat(Bootstrap.of(mean(5))).isEqualTo(Bootstrap.of(mean(5)));
        assertThat(Bootstrap.of(mean(5))).isNotEqualTo(Bootstrap.of(mean(6)));
    }

    /** The mean of n normal numbers of spread 1 has the span ±1.96/√n; 500 samples miss it by up to a tenth or so. */
    @Test
    void span_ofAMean_isThatOfTheNormalTheory() {
        Estimate estimate = Bootstrap.of(mean(5));
        assertThat((estimate.high() - estimate.low()) / 2).isCloseTo(1.96 / Math.sqrt(UNITS), within(0.04));
        assertThat(estimate.value()).isBetween(estimate.low(), estimate.high());
    }

    /** Cases of one unit stand and fall together: ten times the cases of it tell no more. */
    @Test
    void span_goesByUnitsNotByCases() {
        Estimate once = Bootstrap.of(mean(5));
        Estimate tenfold = Bootstrap.of(repeated(5, 10));
        assertThat(tenfold.high()).isCloseTo(once.high(), within(1e-9));
        assertThat(tenfold.low()).isCloseTo(once.low(), within(1e-9));
    }

    @Test
    void difference_ofAScoreToItself_isNothingInEverySample() {
        assertThat(Bootstrap.of(mean(5).minus(mean(5)))).isEqualTo(new Estimate(0, 0, 0));
    }

    @Test
    void fewUnits_haveNoSpan() {
        Sums sums = new Sums(new int[] {0, 1}, 1, sum -> sum[0]);
        sums.add(0, 3);
        assertThat(Bootstrap.of(sums).value()).isEqualTo(3);
        assertThat(Bootstrap.of(sums).low()).isNaN();
    }

    private static Resampled mean(long seed) {
        return repeated(seed, 1);
    }

    private static Resampled repeated(long seed, int times) {
        SplittableRandom random = new SplittableRandom(seed);
        Sums sums = new Sums(IntStream.range(0, UNITS).toArray(), 2, sum -> sum[1] / sum[0]);
        for (int unit = 0; unit < UNITS; unit++) {
            double value = normal(random);
            for (int i = 0; i < times; i++) {
                sums.add(unit, 1, value);
            }
        }
        return sums;
    }

    /** Sum of twelve uniform numbers less six: mean 0, spread 1. */
    private static double normal(SplittableRandom random) {
        return random.doubles(12).sum() - 6;
    }
}
