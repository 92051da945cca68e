package org.tankrounds.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tankrounds.fish.Stage;
import org.tankrounds.water.Ammonia;
import org.tankrounds.water.Analyte;

/** Courses laid out so that it is known what decides them. */
class TellingsTest {
    private static final int HOURS = 73;
    private static final int COURSES = 400;
    private static final double MG_N_PER_L = 0.5;
    private static final double COLD_C = 11;

    private final double[][] temperatureC = steady(COLD_C);
    private final double[][] unIonisedMgPerL = steady(0.001);
    private final double[][] nitriteMgPerL = steady(0.02);
    private final double[][] ph = steady(7.4);
    private final double[] chlorideMgPerL = new double[HOURS];
    private final Stage[] stage = new Stage[HOURS];

    @BeforeEach
    void allFeed() {
        Arrays.fill(stage, Stage.FEEDING);
        Arrays.fill(chlorideMgPerL, Limits.CHLORIDE_WHERE_UNKNOWN_MG_PER_L);
    }

    @Test
    void waterThatIsDecidedByItsPh_isToldByAPhReading() {
        spreadPh(6.8, 8.6);
        Telling told = Tellings.most(paths(), outcome()).orElseThrow();
        assertThat(told.analyte()).isEqualTo(Analyte.PH);
        assertThat(told.share()).isGreaterThan(0.5);
    }

    @Test
    void pHKnownToLessThanACardTells_isNotAskedForAgain() {
        double share = Limits.DEFAULT.unIonisedAmmoniaMgPerL() / (MG_N_PER_L * Ammonia.NH3_PER_N);
        double edge = Ammonia.pKa(COLD_C) + Math.log10(share / (1 - share));
        spreadPh(edge - 0.05, edge + 0.05);
        assertThat(outcome().chance()).as("an even chance").isBetween(0.3, 0.7);
        assertThat(Tellings.most(paths(), outcome())).isEmpty();
    }

    @Test
    void chillerThatMayHaveStopped_isToldByTheTemperature() {
        for (int i = 0; i < COURSES; i++) {
            boolean warms = i % 2 == 0;
            for (int h = 0; h < HOURS; h++) {
                temperatureC[h][i] = warms ? Math.min(21, 15 + 0.2 * h) : COLD_C;
            }
        }
        Telling told = Tellings.most(paths(), outcome()).orElseThrow();
        assertThat(told.analyte()).isEqualTo(Analyte.TEMPERATURE);
        assertThat(told.share()).isGreaterThan(0.9);
    }

    @Test
    void troubleThatOnlyTheFutureDecides_isToldByNoReading() {
        for (int i = 0; i < COURSES; i += 2) {
            for (int h = 40; h < HOURS; h++) {
                nitriteMgPerL[h][i] = 0.3;
            }
        }
        assertThat(outcome().chance()).isBetween(0.49, 0.51);
        assertThat(Tellings.most(paths(), outcome())).isEmpty();
    }

    @Test
    void aHandfulOfOddCourses_isNoReasonToAsk() {
        spreadPh(6.8, 7.6);
        for (int i = COURSES - 5; i < COURSES; i++) {
            for (int h = 0; h < HOURS; h++) {
                unIonisedMgPerL[h][i] = 0.02;
            }
        }
        assertThat(Tellings.most(paths(), outcome())).isEmpty();
    }

    /** The same ammonia on every course, and what the pH makes of it. */
    private void spreadPh(double from, double to) {
        for (int i = 0; i < COURSES; i++) {
            double level = from + (to - from) * (i * 7 % COURSES) / COURSES;
            for (int h = 0; h < HOURS; h++) {
                ph[h][i] = level;
                unIonisedMgPerL[h][i] = Ammonia.unIonisedMgPerL(MG_N_PER_L, level, COLD_C);
            }
        }
    }

    private Paths paths() {
        return new Paths(temperatureC, unIonisedMgPerL, nitriteMgPerL, steady(10), ph, new double[HOURS],
                chlorideMgPerL, stage);
    }

    private Outcome outcome() {
        return new Outcome(paths(), Limits.DEFAULT);
    }

    private static double[][] steady(double level) {
        double[][] courses = new double[HOURS][COURSES];
        for (double[] hour : courses) {
            Arrays.fill(hour, level);
        }
        return courses;
    }
}
