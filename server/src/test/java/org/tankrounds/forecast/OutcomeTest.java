package org.tankrounds.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tankrounds.fish.Stage;

/** The published meaning of chance, exposure and hours to a limit, on courses laid out by hand. */
class OutcomeTest {
    private static final int HOURS = 73;
    private static final int COURSES = 4;
    /** A fifth above the limit at 5 mg/L chloride. */
    private static final double NITRITE_BEYOND = 0.18;
    private static final double WARM_C = 20;

    private final double[][] temperatureC = steady(11);
    private final double[][] nitriteMgPerL = steady(0.02);
    private final double[] chlorineMgPerL = new double[HOURS];
    private final Stage[] stage = new Stage[HOURS];

    @BeforeEach
    void allFeed() {
        Arrays.fill(stage, Stage.FEEDING);
    }

    @Test
    void twoHoursInAllOverAnyLimits_count() {
        temperatureC[10][0] = WARM_C;
        temperatureC[10][1] = WARM_C;
        nitriteMgPerL[50][1] = NITRITE_BEYOND;
        temperatureC[20][2] = WARM_C;
        nitriteMgPerL[20][2] = NITRITE_BEYOND;
        // One course of four; a chance is kept off certainty by half a course.
        assertThat(outcome().chance()).isCloseTo(1.5 / (COURSES + 1), within(1e-12));
    }

    @Test
    void hourAfterTheLast_doesNotCount() {
        temperatureC[71][0] = WARM_C;
        temperatureC[72][0] = WARM_C;
        assertThat(outcome().chance()).isCloseTo(0.5 / (COURSES + 1), within(1e-12));
        assertThat(outcome().excess(Driver.TEMPERATURE)).isCloseTo(0.5 / COURSES, within(1e-12));
    }

    @Test
    void excess_addsUpHowFarBeyondOverLimitsAndHours() {
        for (double[] hour : temperatureC) {
            hour[0] = WARM_C;
        }
        nitriteMgPerL[5][1] = NITRITE_BEYOND;
        Outcome outcome = outcome();
        assertThat(outcome.excess(Driver.TEMPERATURE)).isCloseTo(72 * 0.5 / COURSES, within(1e-9));
        assertThat(outcome.excess(Driver.NITRITE)).isCloseTo(0.2 / COURSES, within(1e-9));
        assertThat(outcome.excess()).isCloseTo((72 * 0.5 + 0.2) / COURSES, within(1e-9));
    }

    @Test
    void stage_changesTheLimitOnTheWay() {
        Arrays.fill(stage, 0, 30, Stage.SAC_FRY);
        for (double[] hour : temperatureC) {
            Arrays.fill(hour, 15);
        }
        assertThat(outcome().excess()).isCloseTo(30 * 0.5, within(1e-9));
        assertThat(outcome().hoursToLimit()).hasValue(0);
    }

    @Test
    void hoursToLimit_isTheMedianCourseAndEmptyWhereTheOddsAreAgainst() {
        for (int i = 0; i < 2; i++) {
            temperatureC[12 + i][i] = WARM_C;
        }
        assertThat(outcome().hoursToLimit()).as("two of four").hasValue(13);
        temperatureC[13][1] = 11;
        assertThat(outcome().hoursToLimit()).as("one of four").isEmpty();
    }

    @Test
    void chlorine_isTheSameOnEveryCourse() {
        chlorineMgPerL[0] = 0.022;
        chlorineMgPerL[1] = 0.022;
        assertThat(outcome().chance()).isCloseTo((COURSES + 0.5) / (COURSES + 1), within(1e-12));
        assertThat(outcome().excess(Driver.CHLORINE)).isCloseTo(2, within(1e-9));
    }

    private Outcome outcome() {
        double[] chlorideMgPerL = new double[HOURS];
        Arrays.fill(chlorideMgPerL, 5);
        return new Outcome(new Paths(temperatureC, steady(0.001), nitriteMgPerL, steady(10), steady(7.4),
                chlorineMgPerL, chlorideMgPerL, stage), Limits.DEFAULT);
    }

    private static double[][] steady(double level) {
        double[][] courses = new double[HOURS][COURSES];
        for (double[] hour : courses) {
            Arrays.fill(hour, level);
        }
        return courses;
    }
}
