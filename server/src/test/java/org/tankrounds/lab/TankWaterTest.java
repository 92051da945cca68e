package org.tankrounds.lab;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tankrounds.tankmodel.Wastes;

class TankWaterTest {
    private static final int DAY = 24;
    private static final SchoolCalendar CALENDAR = new SchoolCalendar(new Luck(1));

    /**
     * Mass balance: what was fed is in the water as one form of nitrogen or another, filter full or set back.
     */
    @Test
    void nitrogenFed_isAllFoundInTheWater() {
        Map<Trait, Double> traits = middling();
        traits.put(Trait.THERMAL_UNITS_C, 500.0);
        traits.put(Trait.FILTER_HURT_PER_DAY, 0.05);
        traits.put(Trait.FILTER_ROOM_COD_PER_L, 0.05);
        TankWater tank = new TankWater(traits, 20, new Luck(3));
        double fedG = 0;
        for (int hour = 0; hour < 90 * DAY; hour++) {
            fedG += hour % DAY == 9 && hour < 60 * DAY ? tank.feed(1) : 0;
            tank.pass(hour, CALENDAR);
        }
        double nitrogenG = tank.state().nitrogenMgPerL() * traits.get(Trait.VOLUME_L) / 1000;
        assertThat(fedG).isGreaterThan(1);
        assertThat(nitrogenG)
                .isCloseTo(Wastes.nitrogenGPerDay(fedG, traits.get(Trait.PROTEIN)), within(1e-9));
    }

    /** All alkalinity is lost in the ammonia step: 7.14 g CaCO3 per g N (NH4 + 2 O2 → NO3 + 2 H + H2O). */
    @Test
    void alkalinity_paysForTheNitrogenOxidised() {
        Map<Trait, Double> traits = middling();
        traits.put(Trait.ALKALINITY_MG_PER_L, 200.0);
        TankWater tank = new TankWater(traits, 20, new Luck(3));
        for (int hour = 0; hour < 60 * DAY; hour++) {
            tank.pass(hour, CALENDAR);
        }
        double oxidised = tank.state().nitriteMgPerL() + tank.state().nitrateMgPerL();
        assertThat(oxidised).isGreaterThan(0.05);
        assertThat(200 - tank.state().alkalinityMgPerL()).isCloseTo(7.14 * oxidised, within(1e-9));
    }

    @Test
    void tankWithoutAChiller_goesToItsRoomsTemperature() {
        Map<Trait, Double> traits = middling();
        traits.put(Trait.COOLING_W, 0.0);
        traits.put(Trait.SET_BACK_K, 0.0);
        TankWater tank = new TankWater(traits, 20, new Luck(3));
        for (int hour = 0; hour < 30 * DAY; hour++) {
            tank.pass(hour, CALENDAR);
        }
        double end = traits.get(Trait.ROOM_C) + traits.get(Trait.PUMP_W) / traits.get(Trait.LOSS_W_PER_K);
        assertThat(tank.state().temperatureC()).isCloseTo(end, within(2.5));
    }

    private static Map<Trait, Double> middling() {
        Map<Trait, Double> traits = new EnumMap<>(Trait.class);
        for (Trait trait : Trait.values()) {
            traits.put(trait, trait.at(trait.usual(), 0.5));
        }
        return traits;
    }
}
