package org.tankrounds.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is added to or taken from a tank, by stoichiometry and mixing; worked by hand. */
class DosesTest {
    private static final double NOMINAL_55_GAL_L = 55 * 3.785411784;

    @ParameterizedTest(name = "{0} to {1} mg/L")
    @CsvSource({"0, 100, 34.3205", "10, 100, 30.8885", "10, 50, 13.7282", "5, 60, 18.8763"})
    void salt_bringsChlorideToItsAim(double nowMgPerL, double targetMgPerL, double grams) {
        assertThat(Salt.grams(nowMgPerL, targetMgPerL, NOMINAL_55_GAL_L)).isCloseTo(grams, within(5.1e-5));
    }

    @Test
    void salt_whereThereIsEnough_isNone() {
        assertThat(Salt.grams(80, 60, NOMINAL_55_GAL_L)).isZero();
    }

    /** 2 S2O3²⁻ + Cl2 → S4O6²⁻ + 2 Cl⁻, the "7 to 1" of practice: 100 L at 1.5 mg/L. */
    @Test
    void thiosulfate_isSevenTimesTheChlorine() {
        assertThat(Chlorine.thiosulfateG(1.5, 100)).isCloseTo(1.05006, within(5.1e-6));
    }

    @ParameterizedTest(name = "{0} mg/L, tap {1}, {3} times {2}")
    @CsvSource({
        "1.0, 0,   0.25, 3, 0.421875", "1.5, 0.2, 0.30, 2, 0.837", "1.0, 0, 0.50, 1, 0.50",
        "1.0, 0,   0.25, 2, 0.5625",
    })
    void waterChange_mixesTankAndTap(double level, double tap, double share, int times, double after) {
        assertThat(WaterChange.after(level, tap, share, times)).isCloseTo(after, within(1e-12));
    }

    /** Half a volume let through slowly leaves e^(−0.5): as many tiny changes do. */
    @Test
    void waterChange_inManyTinyShares_isThatOfAThinStream() {
        assertThat(WaterChange.after(1, 0, 0.5 / 1_000_000, 1_000_000)).isCloseTo(0.606531, within(1e-6));
    }

    @ParameterizedTest(name = "{0} mg/L, tap {1}, aim {2}")
    @CsvSource({"1.0, 0, 0.6", "0.5, 0.1, 0.2", "8, 0, 0.4"})
    void shareFor_isTheChangeThatEndsAtTheAim(double level, double tap, double aim) {
        double share = WaterChange.shareFor(level, tap, aim);
        assertThat(WaterChange.after(level, tap, share, 1)).isCloseTo(aim, within(1e-12));
    }

    @Test
    void shareFor_whereNothingOrNotEvenAllWaterHelps_isNoneOrAll() {
        assertThat(WaterChange.shareFor(0.3, 0, 0.5)).isZero();
        assertThat(WaterChange.shareFor(0.3, 0.2, 0.1)).isEqualTo(1);
    }
}
