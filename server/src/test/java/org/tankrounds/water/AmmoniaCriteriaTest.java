package org.tankrounds.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** US EPA 2013, EPA 822-R-13-001: cells of its tables, printed with two significant figures. */
class AmmoniaCriteriaTest {
    private static final double[] PH = {6.5, 7.0, 7.5, 8.0, 8.5, 9.0};

    /** A criterion by pH and °C. */
    private interface Criterion {
        double at(double ph, double temperatureC);
    }

    @ParameterizedTest(name = "{0} °C")
    @CsvSource({
        "10, 33,  24,  13,  5.6, 2.1,  0.88",
        "20, 23,  17,  9.2, 3.9, 1.5,  0.62",
        "30, 9.9, 7.3, 4.0, 1.7, 0.65, 0.27",
    })
    void acuteWithTrout_reproducesThePublishedCells(double temperatureC, String at65, String at70,
            String at75,
            String at80, String at85, String at90) {
        assertCells(AmmoniaCriteria::acuteWithTrout, temperatureC, at65, at70, at75, at80, at85, at90);
    }

    @Test
    void acuteWithoutTrout_reproducesThePublishedCells() {
        assertCells(AmmoniaCriteria::acuteWithoutTrout, 10, "51", "38", "21", "8.8", "3.3", "1.4");
    }

    @ParameterizedTest(name = "{0} °C")
    @CsvSource({
        "5,  4.9, 4.4,  3.2,  1.8,  0.80, 0.36",
        "20, 2.1, 1.9,  1.4,  0.78, 0.35, 0.16",
        "30, 1.1, 0.99, 0.73, 0.41, 0.18, 0.081",
    })
    void chronic_reproducesThePublishedCells(double temperatureC, String at65, String at70, String at75,
            String at80, String at85, String at90) {
        assertCells(AmmoniaCriteria::chronic, temperatureC, at65, at70, at75, at80, at85, at90);
    }

    /** The same formulas computed once elsewhere (Python), unrounded. */
    @ParameterizedTest(name = "pH {0}, {1} °C")
    @CsvSource({
        "7.0, 20, 16.760248, 16.760248, 1.887016",
        "7.0, 10, 24.103237, 37.645314, 3.595634",
        "7.4, 10, 15.340967, 23.959947, 2.880196",
        "7.8, 12, 8.106819,  10.940752, 1.701963",
        "8.0, 10, 5.615107,  8.769598,  1.480645",
        "8.0, 15, 5.615107,  5.909479,  1.072632",
        "8.5, 12, 2.139495,  2.887174,  0.582508",
        "8.0, 25, 2.579581,  2.579581,  0.562925",
    })
    void criteria_agreeUnrounded(
            double ph, double temperatureC, double withTrout, double withoutTrout, double chronic) {
        assertThat(AmmoniaCriteria.acuteWithTrout(ph, temperatureC)).isCloseTo(withTrout, within(5.1e-7));
        assertThat(AmmoniaCriteria.acuteWithoutTrout(ph, temperatureC))
                .isCloseTo(withoutTrout, within(5.1e-7));
        assertThat(AmmoniaCriteria.chronic(ph, temperatureC)).isCloseTo(chronic, within(5.1e-7));
    }

    /** The document's own anchor. A 10 in place of the 20 is in circulation and would give half of it. */
    @Test
    void chronicAtPh7And20C_is1point9() {
        assertThat(twoFigures(AmmoniaCriteria.chronic(7, 20))).isEqualByComparingTo("1.9");
        assertThat(twoFigures(AmmoniaCriteria.acuteWithTrout(7, 20))).isEqualByComparingTo("17");
    }

    @Test
    void chronicBelow7C_staysAsAt7C() {
        assertThat(AmmoniaCriteria.chronic(7.5, 2)).isEqualTo(AmmoniaCriteria.chronic(7.5, 7));
    }

    private static void assertCells(Criterion criterion, double temperatureC, String... cells) {
        for (int i = 0; i < PH.length; i++) {
            assertThat(twoFigures(criterion.at(PH[i], temperatureC)))
                    .as("pH %s", PH[i]).isEqualByComparingTo(cells[i]);
        }
    }

    private static BigDecimal twoFigures(double mgPerL) {
        return BigDecimal.valueOf(mgPerL).round(new MathContext(2, RoundingMode.HALF_UP));
    }
}
