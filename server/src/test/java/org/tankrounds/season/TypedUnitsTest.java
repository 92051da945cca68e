package org.tankrounds.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Speech;

class TypedUnitsTest {

    /**
     * Leitritz and Lewis 1976, California Fish Bulletin 164 (day counts from memory): °F-days to hatch as hatcheries
     * count them, days · (°F − 32), and the °C-days that they are.
     */
    @ParameterizedTest(name = "{0} °F-days")
    @CsvSource({"640, 355.6", "624, 346.7", "558, 310.0", "552, 306.7", "532, 295.6"})
    void unitsOfASupplierThatCountsInFahrenheit_areTakenAsCelsius(String typed, double unitsC) {
        assertThat(read(typed, "degF.d")).isCloseTo(unitsC, within(0.051));
    }

    @ParameterizedTest(name = "{0} °C-days")
    @CsvSource({"355.6", "310"})
    void unitsInCelsius_areTakenAsTyped(String typed) {
        assertThat(read(typed, "Cel.d")).isEqualTo(Double.parseDouble(typed));
    }

    private static double read(String typed, String scale) {
        FormInput form = FormInput.showing(Speech.PLAIN, Map.of("thermal_units", typed, "thermal_units_in", scale));
        return TypedUnits.of(form).orElseThrow();
    }
}
