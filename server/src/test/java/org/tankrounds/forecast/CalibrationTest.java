package org.tankrounds.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tankrounds.forecast.Calibration.Point;

class CalibrationTest {
    private static final Calibration BENT =
            new Calibration(List.of(new Point(0.2, 0.1), new Point(0.6, 0.7)));

    /** Half-way between two points, by hand, and on the lines to 0 and 1. */
    @Test
    void chance_liesOnTheLineBetweenTwoPoints() {
        assertThat(BENT.of(0.1)).isCloseTo(0.05, within(1e-12));
        assertThat(BENT.of(0.4)).isCloseTo(0.4, within(1e-12));
        assertThat(BENT.of(0.8)).isCloseTo(0.85, within(1e-12));
        assertThat(BENT.of(0)).isZero();
        assertThat(BENT.of(1)).isEqualTo(1);
    }

    @Test
    void withoutPoints_chancesStayAsTheyAre() {
        assertThat(Calibration.NONE.of(0.37)).isCloseTo(0.37, within(1e-12));
    }
}
