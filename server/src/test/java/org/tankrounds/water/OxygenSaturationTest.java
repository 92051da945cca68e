package org.tankrounds.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OxygenSaturationTest {

    /**
     * EN 25814 at 101.325 kPa, three figures (its cells for 6 and 7 °C are misprinted in circulating copies
     * and left out), and the equation of Benson and Krause 1984 computed once elsewhere to four decimals.
     */
    @ParameterizedTest(name = "{0} °C")
    @CsvSource({
        "0,  14.6, 14.6208", "4,  13.1, 13.1084", "5,  12.8, 12.7710", "8,  11.8, 11.8433",
        "10, 11.3, 11.2879",
        "12, 10.8, 10.7770", "14, 10.3, 10.3058", "16, 9.87, 9.8704", "18, 9.47, 9.4670", "20, 9.09, 9.0924",
        "25, 8.26, 8.2635",
    })
    void saturationAtSeaLevel_isThatOfTheStandard(double temperatureC, String standard, double computed) {
        double mgPerL = OxygenSaturation.mgPerL(temperatureC, 0);
        assertThat(BigDecimal.valueOf(mgPerL).round(new MathContext(3, RoundingMode.HALF_UP)))
                .isEqualByComparingTo(standard);
        assertThat(mgPerL).isCloseTo(computed, within(5.1e-5));
    }

    /** CCME 1999, Canadian guidelines, dissolved oxygen; and the polynomial of APHA 4500-O. */
    @Test
    void saturation_isThatOfTwoOtherPublications() {
        assertThat(OxygenSaturation.mgPerLAtPressure(5, 1)).isCloseTo(12.77, within(0.005));
        assertThat(OxygenSaturation.mgPerLAtPressure(20, 1)).isCloseTo(9.092426, within(5.1e-7));
    }

    /** A table of an instrument's manual, good to 0.1 mg/L, and our own computation elsewhere. */
    @ParameterizedTest(name = "{0} °C, {1} mmHg")
    @CsvSource({
        "10, 750, 11.2, 11.138", "10, 725, 10.8, 10.762", "10, 700, 10.4, 10.387", "10, 650, 9.7, 9.635",
        "5,  700, 11.8, 11.755",
    })
    void lowerPressure_holdsLessOxygen(double temperatureC, double mmHg, double published, double computed) {
        double mgPerL = OxygenSaturation.mgPerLAtPressure(temperatureC, mmHg / 760);
        assertThat(mgPerL).isCloseTo(published, within(0.1));
        assertThat(mgPerL).isCloseTo(computed, within(5.1e-4));
    }

    @Test
    void nineTenthsOfAnAtmosphere_isThePublishedPressureFactor() {
        assertThat(OxygenSaturation.mgPerLAtPressure(10, 0.9)).isCloseTo(10.146160, within(5.1e-7));
    }

    /** Standard atmosphere, computed once elsewhere; 1609.344 m is a mile. */
    @ParameterizedTest(name = "{0} m")
    @CsvSource({
        // m, atm, mg/L at 4 / 8 / 10 / 12 / 15 °C
        "0,        1.000000, 13.108, 11.843, 11.288, 10.777, 10.084",
        "500,      0.942125, 12.344, 11.151, 10.627, 10.145, 9.491",
        "1000,     0.886993, 11.616, 10.492, 9.998,  9.543,  8.926",
        "1609.344, 0.823366, 10.776, 9.731,  9.271,  8.848,  8.273",
        "2500,     0.737059, 9.636,  8.698,  8.285,  7.905,  7.389",
    })
    void height_lowersSaturation(
            double elevationM, double atm, double at4, double at8, double at10, double at12, double at15) {
        assertThat(OxygenSaturation.pressureAtm(elevationM)).isCloseTo(atm, within(5.1e-7));
        assertThat(OxygenSaturation.mgPerL(4, elevationM)).isCloseTo(at4, within(5.1e-4));
        assertThat(OxygenSaturation.mgPerL(8, elevationM)).isCloseTo(at8, within(5.1e-4));
        assertThat(OxygenSaturation.mgPerL(10, elevationM)).isCloseTo(at10, within(5.1e-4));
        assertThat(OxygenSaturation.mgPerL(12, elevationM)).isCloseTo(at12, within(5.1e-4));
        assertThat(OxygenSaturation.mgPerL(15, elevationM)).isCloseTo(at15, within(5.1e-4));
    }

    @Test
    void mistypedTemperature_isTakenAtTheEdgeOfTheFormula() {
        assertThat(OxygenSaturation.mgPerL(-12, 0)).isEqualTo(OxygenSaturation.mgPerL(0, 0));
        assertThat(OxygenSaturation.mgPerL(54, 0)).isEqualTo(OxygenSaturation.mgPerL(40, 0));
    }
}
