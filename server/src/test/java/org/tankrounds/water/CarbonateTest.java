package org.tankrounds.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CarbonateTest {

    /** Plummer and Busenberg 1982, Geochim. Cosmochim. Acta 46:1011–1040 (from memory). */
    @ParameterizedTest(name = "{0} °C")
    @CsvSource({"25, 6.3519", "10, 6.4633", "12, 6.4446"})
    void pK1_isPlummerAndBusenbergs(double temperatureC, double pK1) {
        assertThat(Carbonate.pK1(temperatureC)).isCloseTo(pK1, within(5.1e-5));
    }

    /** The same equation computed once elsewhere (Python). */
    @ParameterizedTest(name = "pH {0}, {1} mg/L, {2} °C")
    @CsvSource({
        "6.5, 50,  10, 40.412", "7.0, 50,  10, 12.779", "7.0, 100, 10, 25.559", "7.5, 100, 10, 8.082",
        "8.0, 100, 10, 2.556", "6.8, 60,  12, 23.276",
    })
    void carbonDioxide_followsFromPhAndAlkalinity(
            double ph, double alkalinityMgPerL, double temperatureC, double carbonDioxideMgPerL) {
        assertThat(Carbonate.carbonDioxideMgPerL(ph, alkalinityMgPerL, temperatureC))
                .isCloseTo(carbonDioxideMgPerL, within(5.1e-4));
    }

    /** Stoichiometry, worked by hand: 55 US gallons nominal and 100 L. */
    @Test
    void bicarbonate_raisesAlkalinityByStoichiometry() {
        assertThat(Carbonate.bicarbonateG(20, 208.198)).isCloseTo(6.98993, within(5.1e-6));
        assertThat(Carbonate.bicarbonateG(10, 100)).isCloseTo(1.678673, within(5.1e-7));
    }
}
