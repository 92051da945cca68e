package org.tankrounds.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AmmoniaTest {

    /**
     * Trussell 1972, J. Fish. Res. Board Can. 29:1505–1507, per cent un-ionised, as reprinted in instrument
     * manuals: an older constant measured independently, so the two agree within 3 %.
     */
    @ParameterizedTest(name = "pH {0}")
    @CsvSource({
        // pH, per cent at 10 / 15 / 20 / 25 °C
        "7.0, 0.19, 0.27, 0.40,  0.55",
        "7.5, 0.59, 0.85, 1.24,  1.73",
        "8.0, 1.83, 2.65, 3.83,  5.28",
        "8.5, 5.55, 7.98, 11.18, 14.97",
    })
    void unIonisedFraction_agreesWithTrussell(double ph, double at10, double at15, double at20, double at25) {
        assertThat(percent(ph, 10)).isCloseTo(at10, withinPercentage(3));
        assertThat(percent(ph, 15)).isCloseTo(at15, withinPercentage(3));
        assertThat(percent(ph, 20)).isCloseTo(at20, withinPercentage(3));
        assertThat(percent(ph, 25)).isCloseTo(at25, withinPercentage(3));
    }

    /**
     * The published equation of Emerson et al. 1975 computed once elsewhere (Python); half of the last digit.
     */
    @ParameterizedTest(name = "{0} °C")
    @CsvSource({
        // °C, per cent at pH 6.5 / 7.0 / 7.5 / 8.0 / 8.5
        "5,  0.0394, 0.1244, 0.3922, 1.2299, 3.7887",
        "8,  0.0501, 0.1582, 0.4987, 1.5601, 4.7725",
        "10, 0.0587, 0.1853, 0.5835, 1.8221, 5.5437",
        "12, 0.0685, 0.2164, 0.6811, 2.1226, 6.4178",
        "15, 0.0862, 0.2721, 0.8553, 2.6557, 7.9420",
    })
    void unIonisedFraction_isEmersons(
            double temperatureC, double at65, double at70, double at75, double at80, double at85) {
        assertThat(percent(6.5, temperatureC)).isCloseTo(at65, within(5.1e-5));
        assertThat(percent(7.0, temperatureC)).isCloseTo(at70, within(5.1e-5));
        assertThat(percent(7.5, temperatureC)).isCloseTo(at75, within(5.1e-5));
        assertThat(percent(8.0, temperatureC)).isCloseTo(at80, within(5.1e-5));
        assertThat(percent(8.5, temperatureC)).isCloseTo(at85, within(5.1e-5));
    }

    /**
     * A constant of 2727.92 is in circulation: it makes the fraction 1.6 % too high and pKa(10 °C) 9.7244.
     */
    @ParameterizedTest(name = "{0} °C")
    @CsvSource({"5, 9.904740", "10, 9.731430", "12, 9.663808", "15, 9.564135"})
    void pKa_isThePublishedOneAndNotTheMisprint(double temperatureC, double pKa) {
        assertThat(Ammonia.pKa(temperatureC)).isCloseTo(pKa, within(5.1e-7));
    }

    /** The arithmetic of a card that counts NH3, pH 7.6 at 12 °C, worked by hand. */
    @Test
    void kitReadingAsNh3_isTakenThroughNitrogenToUnIonised() {
        double totalMgNPerL =
                Units.toCanonical(Analyte.TOTAL_AMMONIA, new UnitForm("mg/L", "NH3"), 0.50, 12);
        assertThat(totalMgNPerL).isCloseTo(0.411223, within(5.1e-7));
        assertThat(Ammonia.unIonisedFraction(7.6, 12)).isCloseTo(0.00855970, within(5.1e-9));
        assertThat(Ammonia.unIonisedMgPerL(totalMgNPerL, 7.6, 12)).isCloseTo(0.00427985, within(5.1e-9));
    }

    /**
     * Total ammonia at which the fish-culture rule of 0.0125 mg/L as NH3 is met; same computation, three
     * decimals.
     */
    @ParameterizedTest(name = "{0} °C")
    @CsvSource({
        // °C, mg N/L at pH 6.5 / 7.0 / 7.4 / 7.6 / 8.0 / 8.4
        "8,  20.523, 6.497, 2.593, 1.640, 0.659, 0.269",
        "10, 17.527, 5.549, 2.215, 1.402, 0.564, 0.231",
        "12, 15.001, 4.751, 1.898, 1.201, 0.484, 0.199",
        "15, 11.927, 3.779, 1.510, 0.957, 0.387, 0.160",
    })
    void totalAmmoniaAtTheLimit_fallsWithPhAndWarmth(double temperatureC, double at65, double at70,
            double at74, double at76, double at80, double at84) {
        assertThat(Ammonia.totalMgNPerLAt(0.0125, 6.5, temperatureC)).isCloseTo(at65, within(6e-4));
        assertThat(Ammonia.totalMgNPerLAt(0.0125, 7.0, temperatureC)).isCloseTo(at70, within(6e-4));
        assertThat(Ammonia.totalMgNPerLAt(0.0125, 7.4, temperatureC)).isCloseTo(at74, within(6e-4));
        assertThat(Ammonia.totalMgNPerLAt(0.0125, 7.6, temperatureC)).isCloseTo(at76, within(6e-4));
        assertThat(Ammonia.totalMgNPerLAt(0.0125, 8.0, temperatureC)).isCloseTo(at80, within(6e-4));
        assertThat(Ammonia.totalMgNPerLAt(0.0125, 8.4, temperatureC)).isCloseTo(at84, within(6e-4));
    }

    private static double percent(double ph, double temperatureC) {
        return 100 * Ammonia.unIonisedFraction(ph, temperatureC);
    }
}
