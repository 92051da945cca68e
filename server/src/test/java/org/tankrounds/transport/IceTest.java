package org.tankrounds.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class IceTest {

    /** m = M c ΔT / (334,000 + c T + 2100 · 18) with c = 4186 J/kg/K, worked by hand: 190 kg from 15 to 12 °C. */
    @Test
    void ice_bringsWaterDownByItsMelting_andThatOfAFreezerFurther() {
        assertThat(Ice.afterC(190, 15, 6.2098, Ice.MELTING_C)).isCloseTo(12, within(5.1e-5));
        assertThat(Ice.afterC(190, 15, 5.6536, Ice.FREEZER_C)).isCloseTo(12, within(5.1e-5));
        assertThat(Ice.afterC(190, 15, 6.2098, Ice.FREEZER_C)).isLessThan(11.8);
    }

    /** (20 · 4186 · 11 − 334,000 − 2100 · 18) / (21 · 4186) = 6.247 °C, and 6.677 °C of melting ice, worked by hand. */
    @Test
    void oneKilogram_isMuchForABox() {
        assertThat(Ice.afterC(20, 11, 1, Ice.FREEZER_C)).isCloseTo(6.247, within(5.1e-4));
        assertThat(Ice.afterC(20, 11, 1, Ice.MELTING_C)).isCloseTo(6.677, within(5.1e-4));
        assertThat(Ice.afterC(20, 11, 0, Ice.FREEZER_C)).isCloseTo(11, within(1e-12));
    }

    @Test
    void moreIceThanMelts_leavesWaterAtItsMelting() {
        assertThat(Ice.afterC(20, 11, 10, Ice.FREEZER_C)).isZero();
    }

    @Test
    void whatIsNoIceInNoWater_isRefused() {
        assertThatThrownBy(() -> Ice.afterC(0, 11, 1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Ice.afterC(20, -1, 1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Ice.afterC(20, 11, -1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Ice.afterC(20, 11, 1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Ice.afterC(Double.NaN, 11, 1, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    /** 18.028 and 2.5005 W/K in a room of 22 °C for 12 hours, worked by hand. */
    @Test
    void iceThatHoldsACold_growsWithWhatComesIn() {
        assertThat(Ice.toHoldKg(18.028, 22, 10, 12)).isCloseTo(24.86, within(5.1e-3));
        assertThat(Ice.toHoldKg(2.5005, 22, 10, 12)).isCloseTo(3.449, within(5.1e-3));
        assertThat(Ice.toHoldKg(2.5005, 8, 10, 12)).as("colder outside").isZero();
    }

    /** Glass of 6.35 mm at 1.0 W/m/K more makes of it the 1.01728 and 0.54654 W/m²/K of foamed tanks (from memory). */
    @Test
    void foamBox_isAFoamedTankWithoutItsGlass() {
        double glass = 0.00635 / 1.0;
        assertThat(1 / (1 / Ice.foamBoxLossWPerK(1, 25.4) + glass)).isCloseTo(1.01728, within(5.1e-6));
        assertThat(1 / (1 / Ice.foamBoxLossWPerK(1, 50.8) + glass)).isCloseTo(0.54654, within(5.1e-6));
    }
}
