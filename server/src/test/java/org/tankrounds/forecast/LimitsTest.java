package org.tankrounds.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.fish.Stage;

/** The limits as published with the ranking; their sources stand at {@link Limits}. */
class LimitsTest {
    private static final Limits LIMITS = Limits.DEFAULT;

    /** US EPA Region 10, 2003, EPA 910-B-03-002. */
    @ParameterizedTest(name = "{0} at {1} °C")
    @CsvSource({
        "EGG, 9, 0", "EGG, 13, 1", "EGG, 15, 1.5", "SAC_FRY, 13, 1", "SAC_FRY, 11, 0.5", "FEEDING, 14, 0",
        "FEEDING, 18, 1", "FEEDING, 22, 2",
    })
    void temperature_isJudgedByStage(Stage stage, double temperatureC, double u) {
        assertThat(LIMITS.ofTemperature(stage, temperatureC)).isCloseTo(u, within(1e-12));
    }

    /** Piper et al. 1982, Fish Hatchery Management. */
    @Test
    void unIonisedAmmonia_isAShareOf12point5Micrograms() {
        assertThat(LIMITS.ofUnIonisedAmmonia(0.0125)).isEqualTo(1);
        assertThat(LIMITS.ofUnIonisedAmmonia(0.025)).isEqualTo(2);
    }

    /**
     * EIFAC 1984, Technical Paper 46, 95th percentile for salmonids (from memory); linear between, flat
     * outside.
     */
    @ParameterizedTest(name = "chloride {0} mg/L")
    @CsvSource({
        "0, 0.03", "1, 0.03", "3, 0.09", "5, 0.15", "7.5, 0.21", "10, 0.27", "15, 0.315", "20, 0.36",
        "30, 0.405",
        "40, 0.45", "400, 0.45",
    })
    void nitriteLimit_risesWithChloride(double chlorideMgPerL, double limitMgNPerL) {
        assertThat(LIMITS.nitriteMgPerL(chlorideMgPerL)).isCloseTo(limitMgNPerL, within(1e-12));
        assertThat(LIMITS.ofNitrite(limitMgNPerL, chlorideMgPerL)).isCloseTo(1, within(1e-12));
    }

    /** US EPA 1986, EPA 440/5-86-003. */
    @ParameterizedTest(name = "{0} at {1} mg/L")
    @CsvSource({
        "EGG, 8, 1", "SAC_FRY, 8, 1", "EGG, 10, 0.8", "EGG, 4, 2", "FEEDING, 6, 1", "FEEDING, 8, 0.75",
        "FEEDING, 3, 2",
    })
    void oxygen_isJudgedByStage(Stage stage, double mgPerL, double u) {
        assertThat(LIMITS.ofOxygen(stage, mgPerL)).isCloseTo(u, within(1e-12));
    }

    @Test
    void waterWithoutOxygen_isBeyondByAFiniteNumber() {
        assertThat(LIMITS.ofOxygen(Stage.FEEDING, 0)).isGreaterThan(100).isFinite();
    }

    /** Culture practice. */
    @ParameterizedTest(name = "pH {0}")
    @CsvSource({"5.99, 1.2", "6.0, 0", "7.4, 0", "9.0, 0", "9.01, 1.2"})
    void ph_isEitherBeyondOrNot(double ph, double u) {
        assertThat(LIMITS.ofPh(ph)).isEqualTo(u);
    }

    /** US EPA 1984, EPA 440/5-84-030, chronic. */
    @Test
    void chlorine_isAShareOf11Micrograms() {
        assertThat(LIMITS.ofChlorine(0.011)).isEqualTo(1);
        assertThat(LIMITS.ofChlorine(0.1)).isCloseTo(9.09, within(0.005));
    }

    @Test
    void limitLines_lieWhereUIs1() {
        assertThat(LIMITS.upper(Driver.TEMPERATURE, Stage.EGG, 5)).hasValue(13);
        assertThat(LIMITS.upper(Driver.TEMPERATURE, Stage.FEEDING, 5)).hasValue(18);
        assertThat(LIMITS.upper(Driver.NITRITE, Stage.FEEDING, 5)).hasValue(0.15);
        assertThat(LIMITS.upper(Driver.UN_IONISED_AMMONIA, Stage.EGG, 5)).hasValue(0.0125);
        assertThat(LIMITS.upper(Driver.PH, Stage.EGG, 5)).hasValue(9);
        assertThat(LIMITS.lower(Driver.PH, Stage.EGG)).hasValue(6);
        assertThat(LIMITS.lower(Driver.DISSOLVED_OXYGEN, Stage.SAC_FRY)).hasValue(8);
        assertThat(LIMITS.lower(Driver.DISSOLVED_OXYGEN, Stage.FEEDING)).hasValue(6);
        assertThat(LIMITS.upper(Driver.DISSOLVED_OXYGEN, Stage.FEEDING, 5)).isEmpty();
    }
}
