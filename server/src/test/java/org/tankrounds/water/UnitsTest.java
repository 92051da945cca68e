package org.tankrounds.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitsTest {

    /**
     * By the atomic masses N 14.0067, H 1.00794, O 15.9994, computed once elsewhere; °F and °dH by
     * definition.
     */
    @ParameterizedTest(name = "{1} {2} of {0}")
    @CsvSource({
        "TOTAL_AMMONIA, 1,    mg/L as NH3,   0.822447",
        "TOTAL_AMMONIA, 1,    mg/L as NH4,   0.776491",
        "TOTAL_AMMONIA, 0.5,  mg/L as NH3,   0.411223",
        "TOTAL_AMMONIA, 0.5,  mg/L as NH4,   0.388245",
        "TOTAL_AMMONIA, 0.5,  mg/L as N,     0.5",
        "NITRITE,       1,    mg/L as NO2,   0.304457",
        "NITRITE,       0.25, mg/L as NO2,   0.076114",
        "NITRITE,       0.25, mg/L as N,     0.25",
        "NITRATE,       1,    mg/L as NO3,   0.225897",
        "NITRATE,       40,   mg/L as NO3,   9.035867",
        "TEMPERATURE,   32,   [degF],        0",
        "TEMPERATURE,   50,   [degF],        10",
        "TEMPERATURE,   52.3, [degF],        11.277778",
        "TEMPERATURE,   11.3, Cel,           11.3",
        "ALKALINITY,    3,    [dH],          53.544",
        "HARDNESS,      1,    [dH],          17.848",
        "HARDNESS,      60,   mg/L as CaCO3, 60",
    })
    void everyUnit_comesToTheCanonicalOneAndBack(Analyte analyte, double typed, String unit,
            double canonical) {
        UnitForm form = UnitForm.parse(unit);
        assertThat(Units.toCanonical(analyte, form, typed, Double.NaN)).isCloseTo(canonical, within(5.1e-7));
        assertThat(Units.fromCanonical(analyte, form, Units.toCanonical(analyte, form, typed, 10), 10, 0))
                .isCloseTo(typed, within(1e-12));
    }

    /** Percentages of EN 25814's 11.3 mg/L at 10 °C and 10.8 mg/L at 12 °C. */
    @Test
    void oxygenInPercent_dependsOnTheWatersTemperature() {
        UnitForm percent = UnitForm.of("%");
        assertThat(Units.toCanonical(Analyte.DISSOLVED_OXYGEN, percent, 100, 12))
                .isCloseTo(10.8, within(0.05));
        assertThat(Units.toCanonical(Analyte.DISSOLVED_OXYGEN, percent, 50, Double.NaN))
                .isCloseTo(11.3 / 2, within(0.025));
        assertThat(Units.toCanonical(Analyte.DISSOLVED_OXYGEN, percent, 50, 53)).as("°F taken for °C")
                .isCloseTo(11.3 / 2, within(0.025));
    }

    /** NIST Special Publication 811, appendix B: one US gallon is 3.785 412 L; 55 of them are the common aquarium. */
    @Test
    void litres_inUsGallons() {
        assertThat(Units.usGallons(208.198)).isCloseTo(55, within(1e-4));
    }

    @Test
    void stepInFahrenheit_isADifferenceWithoutTheOffset() {
        assertThat(Units.stepToCanonical(Analyte.TEMPERATURE, UnitForm.of("[degF]"), 1.8, 10, 0))
                .isCloseTo(1, within(1e-12));
        assertThat(Units.stepToCanonical(Analyte.NITRITE, new UnitForm("mg/L", "NO2"), 0.2, 10, 0))
                .isCloseTo(0.060891, within(5.1e-7));
    }

    @Test
    void formOfAnotherAnalyte_isRefusedWithWhatIsAccepted() {
        assertThatThrownBy(() -> Units.toCanonical(Analyte.NITRITE, new UnitForm("mg/L", "NH3"), 1, 10))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("mg/L as N, mg/L as NO2");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"mg/L as N, mg/L, N", "mg/L, mg/L, ''", "' mg/L as CaCO3 ', mg/L, CaCO3", "[pH], [pH], ''"})
    void writtenUnit_isTakenApartAtAs(String written, String unit, String as) {
        UnitForm form = UnitForm.parse(written);
        assertThat(form).isEqualTo(new UnitForm(unit, as));
        assertThat(form.spelling()).isEqualTo(written.strip());
    }
}
