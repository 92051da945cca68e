package org.tankrounds.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.transport.ClosedBox.Crowding;

class ClosedBoxTest {

    /** 100 fish of 1.375 g, 19 L, 11 to 7 mg/L, 300 mg/kg/h (from memory): worked by hand, 76 ÷ 41.25. */
    @Test
    void hundredFishInNineteenLitres_haveOxygenForLessThanTwoHours() {
        assertThat(new ClosedBox(19, 137.5).hours(11)).isCloseTo(1.842, within(5.1e-4));
        assertThat(new ClosedBox(19, 137.5).hours(11, 7, 600)).isCloseTo(0.921, within(5.1e-4));
    }

    @Test
    void oxygenThatIsLowAlready_lastsNoTime() {
        assertThat(new ClosedBox(19, 137.5).hours(6.5)).isZero();
    }

    /** At most 10 to 20 g/L for two hours at most, with air, a lid and an ice bottle: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"19, 137.5, 7.237, ROOMY", "10, 100, 10, ROOMY", "10, 150, 15, TIGHT", "10, 200, 20, TIGHT",
        "10, 201, 20.1, TOO_TIGHT"})
    void density_isHeldAgainstPractice(double waterL, double biomassG, double gPerL, Crowding crowding) {
        ClosedBox box = new ClosedBox(waterL, biomassG);
        assertThat(box.densityGPerL()).isCloseTo(gPerL, within(5e-4));
        assertThat(box.crowding()).isEqualTo(crowding);
    }

    /** What the page asks for where a box is too tight: 201 g at 10 g/L. */
    @Test
    void water_forFishThatAreTooTight() {
        assertThat(ClosedBox.waterForL(201, ClosedBox.ROOMY_G_PER_L)).isCloseTo(20.1, within(1e-9));
        assertThat(ClosedBox.waterForL(137.5, 20)).isCloseTo(6.875, within(1e-9));
    }

    @Test
    void boxWithoutWaterOrFish_isNone() {
        assertThatThrownBy(() -> new ClosedBox(0, 100)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new ClosedBox(19, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
