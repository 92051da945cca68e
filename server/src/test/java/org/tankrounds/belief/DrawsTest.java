package org.tankrounds.belief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DrawsTest {

    /**
     * Quantiles of the standard normal distribution, any table; the approximation's stated error is 4.5e-4.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"0.5, 0", "0.975, 1.959964", "0.05, -1.644854", "0.999, 3.090232", "0.16, -0.994458"})
    void normalQuantile_isTheTables(double p, double z) {
        assertThat(Draws.normalQuantile(p)).isCloseTo(z, within(4.5e-4));
    }

    @Test
    void normalQuantile_ofACertainty_isRefused() {
        assertThatThrownBy(() -> Draws.normalQuantile(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Draws.normalQuantile(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void spread_holdsEveryShareOnceAndInAnotherOrderPerStream() {
        double[] spread = Draws.spread(400, 7);
        double[] sorted = spread.clone();
        Arrays.sort(sorted);
        double[] even = IntStream.range(0, 400).mapToDouble(i -> (i + 0.5) / 400).toArray();
        assertThat(sorted).containsExactly(even);
        assertThat(spread).isEqualTo(Draws.spread(400, 7)).isNotEqualTo(Draws.spread(400, 8));
    }

    @Test
    void normals_haveMean0AndSpread1() {
        double[] normals = IntStream.range(0, 60_000).mapToDouble(Draws::normal).toArray();
        assertThat(Arrays.stream(normals).average().getAsDouble()).isCloseTo(0, within(0.02));
        assertThat(Arrays.stream(normals).map(z -> z * z).average().getAsDouble()).isCloseTo(1, within(0.02));
    }
}
