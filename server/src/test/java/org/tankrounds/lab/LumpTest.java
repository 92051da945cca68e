package org.tankrounds.lab;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tankrounds.tankmodel.TankState;

class LumpTest {

    /** Heat balance: what one gains the other loses, until both are alike. */
    @Test
    void heat_isExchangedAndNotLost() {
        Lump lump = new Lump(20);
        TankState water = TankState.fresh(10, 100, 0.1, 0.1);
        double heat = water.temperatureC() + Lump.SHARE * lump.temperatureC();
        for (int hour = 0; hour < 48; hour++) {
            water = lump.besides(water);
            assertThat(water.temperatureC() + Lump.SHARE * lump.temperatureC()).isCloseTo(heat, within(1e-9));
        }
        assertThat(lump.temperatureC()).isCloseTo(water.temperatureC(), within(0.01));
    }
}
