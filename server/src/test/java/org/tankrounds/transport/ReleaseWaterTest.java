package org.tankrounds.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.fish.Stage;

class ReleaseWaterTest {

    /** Below 18 °C and 7 mg/L or more: common practice, no source; the permit governs. */
    @ParameterizedTest(name = "{0} °C, {1} mg/L")
    @CsvSource({
        "17.9, 7.0, FIT", "18.0, 7.0, WARM", "17.9, 6.9, AIRLESS", "18.0, 6.9, WARM_AND_AIRLESS",
        "0.5, 14.0, FIT", "24.0, 8.4, WARM", "8.0, 0.0, AIRLESS",
    })
    void water_isFitOnlyBelowEighteenDegrees_andFromSevenMilligramsOn(
            double temperatureC, double oxygenMgPerL, ReleaseWater water) {
        assertThat(ReleaseWater.of(temperatureC, oxygenMgPerL)).isEqualTo(water);
    }

    /** What bars fish from the stream in a plan is the same line. */
    @Test
    void warmWater_isWhatNoFryIsTemperedInto() {
        assertThat(Tempering.bar(Stage.FEEDING, 11, 17.9)).isEmpty();
        assertThat(ReleaseWater.of(17.9, 9)).isEqualTo(ReleaseWater.FIT);
        assertThat(Tempering.bar(Stage.FEEDING, 11, 18)).contains(Tempering.Bar.TOO_WARM);
        assertThat(ReleaseWater.of(18, 9)).isEqualTo(ReleaseWater.WARM);
    }

    @Test
    void whatNobodyCanHaveRead_isRefused() {
        assertThatThrownBy(() -> ReleaseWater.of(Double.NaN, 9)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ReleaseWater.of(9, -0.1)).isInstanceOf(IllegalArgumentException.class);
    }
}
