package org.tankrounds.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Relations whose share of explained variance is known from how they are made. */
class CorrelationRatioTest {
    private static final int MANY = 4_000;

    private final SplittableRandom random = new SplittableRandom(7);
    private final double[] given = random.doubles(MANY).toArray();

    @Test
    void stepAtABinsEdge_isExplainedWhole() {
        assertThat(CorrelationRatio.of(of(x -> x > 0.5 ? 1 : 0), evenly(MANY))).isCloseTo(1, within(0.01));
    }

    @Test
    void valley_isExplained_thoughStraightLinesMissIt() {
        assertThat(CorrelationRatio.of(made(x -> (x - 0.5) * (x - 0.5), 0), given)).isGreaterThan(0.9);
    }

    @Test
    void halfOfTheVarianceNoise_leavesHalf() {
        // Uniform on 0 to 1 has variance 1/12; normal noise of the same variance halves what is explained.
        assertThat(CorrelationRatio.of(made(x -> x, Math.sqrt(1 / 12.0)), given)).isCloseTo(0.5, within(0.03));
    }

    @Test
    void whatHasNothingToDoWithIt_explainsNothing() {
        assertThat(CorrelationRatio.of(random.doubles(MANY).toArray(), given)).isLessThan(0.01);
    }

    @Test
    void constants_explainNothingAndHaveNothingToExplain() {
        double[] constant = new double[MANY];
        assertThat(CorrelationRatio.of(given, constant)).isZero();
        assertThat(CorrelationRatio.of(constant, given)).isZero();
        assertThat(CorrelationRatio.of(new double[0], new double[0])).isZero();
    }

    @Test
    void equalValues_shareABin_whateverTheirOrder() {
        double[] outcome = new double[100];
        Arrays.fill(outcome, 0, 40, 1);
        assertThat(CorrelationRatio.of(outcome, new double[100])).isZero();
    }

    @Test
    void differentLengths_areRefused() {
        assertThatThrownBy(() -> CorrelationRatio.of(new double[3], new double[4]))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("3 outcomes but 4");
    }

    private double[] of(DoubleUnaryOperator relation) {
        return Arrays.stream(evenly(MANY)).map(relation).toArray();
    }

    private double[] made(DoubleUnaryOperator relation, double noiseSd) {
        double[] outcome = Arrays.stream(given).map(relation).toArray();
        for (int i = 0; i < outcome.length; i++) {
            outcome[i] += noiseSd * normal();
        }
        return outcome;
    }

    /** Near enough to normal: twelve uniform draws, less their mean. */
    private double normal() {
        return random.doubles(12).sum() - 6;
    }

    private static double[] evenly(int n) {
        double[] values = new double[n];
        Arrays.setAll(values, i -> (i + 0.5) / n);
        return values;
    }
}
