package org.tankrounds.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DigitsTest {

    @ParameterizedTest
    @ValueSource(doubles = {0, 7.2, -0.5, 80.3, 189.27, 17.899, 0.0125, 999999, 9999.999, 0.01234567})
    void whatAPersonWrites_comesBackAsWritten(double written) {
        assertThat(Digits.kept(written)).isEqualTo(written);
        assertThat(Digits.kept((float) written)).as("after it was stored").isEqualTo(written);
    }

    /** 7 digits: 10/3 and the largest and least that a single holds. */
    @Test
    void whatHasMoreDigits_losesThem() {
        assertThat(Digits.kept(10 / 3.0)).isEqualTo(3.333333);
        assertThat(Digits.kept(Float.MAX_VALUE)).isCloseTo(Float.MAX_VALUE, withinPercentage(1e-4));
        assertThat(Digits.kept(Float.MIN_VALUE)).isCloseTo(Float.MIN_VALUE, withinPercentage(1e-4));
    }
}
