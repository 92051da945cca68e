package org.tankrounds.belief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.water.Analyte;

class IntervalTest {
    private static final Instant AT = Instant.parse("2027-01-12T19:00:00Z");
    private static final double USUAL_HALF_STEP = 0.12;

    /** Standard deviation of a uniform distribution over one step: step / √12. */
    @ParameterizedTest(name = "step {0}")
    @CsvSource({"0.25, 0.0721688", "0.5, 0.1443376", "1, 0.2886751", "5, 1.4433757"})
    void cardReading_spreadsByItsStepOverRoot12(double step, double sd) {
        Interval interval = Interval.of(reading(20, step / 2, false), USUAL_HALF_STEP);
        assertThat(interval.sd()).isCloseTo(sd, within(5.1e-8));
    }

    @Test
    void cardReading_reachesHalfWayToItsNeighbours() {
        assertThat(Interval.of(reading(0.5, 0.125, false), USUAL_HALF_STEP))
                .isEqualTo(new Interval(0.375, 0.625));
    }

    @Test
    void lowestColour_meansBelowHalfTheFirstStepAndNotZero() {
        assertThat(Interval.of(reading(0, 0.125, true), USUAL_HALF_STEP)).isEqualTo(new Interval(0, 0.125));
        assertThat(Interval.of(reading(0, 0.125, false), USUAL_HALF_STEP)).isEqualTo(new Interval(0, 0.125));
    }

    @Test
    void notDetected_meansBelowTheStepGiven() {
        assertThat(Interval.of(reading(0.25, 0.125, true), USUAL_HALF_STEP)).isEqualTo(new Interval(0, 0.25));
    }

    @Test
    void unknownStep_isTakenAsACommonKits() {
        assertThat(Interval.of(reading(0.5, 0, false), USUAL_HALF_STEP).high())
                .isEqualTo(0.5 + USUAL_HALF_STEP);
    }

    private static Observation reading(double value, double halfStep, boolean below) {
        return new Observation(AT, Analyte.TOTAL_AMMONIA, value, halfStep, below, false);
    }
}
