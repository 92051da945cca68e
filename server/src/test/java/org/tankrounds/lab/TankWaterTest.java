package org.tankrounds.lab;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tankrounds.lab.Mechanics.Acidity;
import org.tankrounds.lab.Mechanics.Heat;
import org.tankrounds.lab.Mechanics.Kinetics;
import org.tankrounds.lab.Mechanics.Thermostat;
import org.tankrounds.lab.Mechanics.Visits;
import org.tankrounds.tankmodel.Wastes;

class TankWaterTest {
    private static final int DAY = 24;
    private static final SchoolCalendar CALENDAR = new SchoolCalendar(new Luck(1));

    /**
     * Mass balance: what was fed is in the water as one form of nitrogen or another, filter full or set back.
     */
    @ParameterizedTest
    @EnumSource
    void nitrogenFed_isAllFoundInTheWater(Kinetics kinetics) {
        Map<Trait, Double> traits = middling();
        traits.put(Trait.THERMAL_UNITS_C, 500.0);
        traits.put(Trait.FILTER_HURT_PER_DAY, 0.05);
        traits.put(Trait.FILTER_ROOM_COD_PER_L, 0.05);
        TankWater tank = new TankWater(traits, with(kinetics), 20, new Luck(3));
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
    @ParameterizedTest
    @EnumSource
    void alkalinity_paysForTheNitrogenOxidised(Kinetics kinetics) {
        Map<Trait, Double> traits = middling();
        traits.put(Trait.ALKALINITY_MG_PER_L, 200.0);
        TankWater tank = new TankWater(traits, with(kinetics), 20, new Luck(3));
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
        TankWater tank = new TankWater(traits, Mechanics.USUAL, 20, new Luck(3));
        for (int hour = 0; hour < 30 * DAY; hour++) {
            tank.pass(hour, CALENDAR);
        }
        double end = traits.get(Trait.ROOM_C) + traits.get(Trait.PUMP_W) / traits.get(Trait.LOSS_W_PER_K);
        assertThat(tank.state().temperatureC()).isCloseTo(end, within(2.5));
    }

    /** Whatever holds, a filter gets ripe: what is left of the ammonia falls after it has risen. */
    @ParameterizedTest
    @EnumSource
    void filter_ripens(Kinetics kinetics) {
        Map<Trait, Double> traits = middling();
        traits.put(Trait.THERMAL_UNITS_C, 500.0);
        traits.put(Trait.FILTER_HURT_PER_DAY, 0.0);
        traits.put(Trait.SEED_COD_PER_L, 0.005);
        traits.put(Trait.ALKALINITY_MG_PER_L, 1_000.0);
        TankWater tank = new TankWater(traits, with(kinetics), 20, new Luck(3));
        double highest = 0;
        for (int hour = 0; hour < 100 * DAY; hour++) {
            tank.feed(hour % DAY == 9 ? 1 : 0);
            tank.pass(hour, CALENDAR);
            highest = Math.max(highest, tank.state().ammoniaMgPerL());
        }
        assertThat(highest).isBetween(0.05, 30.0);
        assertThat(tank.state().ammoniaMgPerL()).isLessThan(0.5 * highest);
    }

    /** A sound chiller that knows only all or nothing keeps the water about its set-point too. */
    @ParameterizedTest
    @EnumSource
    void soundChiller_keepsItsSetPoint(Thermostat thermostat) {
        Map<Trait, Double> traits = middling();
        for (Trait fails : List.of(Trait.CHILLER_STOPS_PER_DAY, Trait.CHILLER_TRIPS_PER_DAY,
                Trait.CHILLER_FADES_PER_DAY, Trait.MIS_SET_PER_DAY)) {
            traits.put(fails, 0.0);
        }
        TankWater tank = new TankWater(traits, new Mechanics(Kinetics.GROWING, Acidity.CARBONATE, Heat.TWO_LUMPS,
                thermostat, Visits.ANY_DAY), 20, new Luck(3));
        for (int hour = 0; hour < 20 * DAY; hour++) {
            tank.pass(hour, CALENDAR);
            assertThat(tank.state().temperatureC()).isCloseTo(traits.get(Trait.SET_POINT_C), within(2.5));
        }
    }

    /** Alkalinity of 100 mg/L holds about 7.6, hardly any lets it fall below 6, whatever the mechanism. */
    @ParameterizedTest
    @EnumSource
    void ph_fallsWithTheAlkalinity(Acidity acidity) {
        Map<Trait, Double> traits = middling();
        assertThat(phAt(100, traits, acidity)).isCloseTo(7.6, within(0.4));
        assertThat(phAt(0.5, traits, acidity)).isLessThan(6.1);
    }

    private static double phAt(double alkalinityMgPerL, Map<Trait, Double> traits, Acidity acidity) {
        traits.put(Trait.ALKALINITY_MG_PER_L, alkalinityMgPerL);
        return new TankWater(traits, new Mechanics(Kinetics.GROWING, acidity, Heat.ONE_LUMP, Thermostat.GRADUAL,
                Visits.ANY_DAY), 20, new Luck(3)).ph();
    }

    private static Mechanics with(Kinetics kinetics) {
        return new Mechanics(kinetics, Acidity.CARBONATE, Heat.ONE_LUMP, Thermostat.GRADUAL, Visits.ANY_DAY);
    }

    private static Map<Trait, Double> middling() {
        Map<Trait, Double> traits = new EnumMap<>(Trait.class);
        for (Trait trait : Trait.values()) {
            traits.put(trait, trait.at(trait.usual(), 0.5));
        }
        return traits;
    }
}
