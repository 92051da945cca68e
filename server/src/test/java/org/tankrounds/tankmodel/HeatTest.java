package org.tankrounds.tankmodel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.water.HeatBalance;

/**
 * A tank without its chiller, against the closed form computed once elsewhere: room 22 °C, start 10 °C, 190
 * kg.
 */
class HeatTest {
    private static final double MASS_KG = 190;

    @ParameterizedTest(name = "{0} W/K, {1} W")
    @CsvSource({
        // UA, pump, end, hours to 13 / 15 / 18 / 20 °C, °C after 12 / 24 / 64 h
        "18.028, 0,  22.00, 3.53,  6.61,  13.46, 21.96, 17.493, 20.307, 21.935",
        "18.028, 15, 22.83, 3.26,  6.05,  11.97, 18.52, 18.012, 21.022, 22.763",
        "5.044,  15, 24.97, 9.79,  17.80, 33.47, 48.28, 13.588, 16.317, 21.500",
        "2.5005, 15, 28.00, 16.11, 28.75, 51.94, 71.66, 12.286, 14.281, 19.276",
    })
    void stoppedChiller_letsTheRoomIn(
            double lossWPerK, double pumpW, double endC, double hoursTo13, double hoursTo15, double hoursTo18,
            double hoursTo20, double after12, double after24, double after64) {
        TankModel model = tank(lossWPerK, pumpW, Chiller.setTo(10));
        assertThat(warmed(model, 12)).isCloseTo(after12, within(6e-4));
        assertThat(warmed(model, 24)).isCloseTo(after24, within(6e-4));
        assertThat(warmed(model, 64)).isCloseTo(after64, within(6e-4));
        assertThat(warmed(model, hoursTo13)).isCloseTo(13, within(0.01));
        assertThat(warmed(model, hoursTo15)).isCloseTo(15, within(0.01));
        assertThat(warmed(model, hoursTo18)).isCloseTo(18, within(0.01));
        assertThat(warmed(model, hoursTo20)).isCloseTo(20, within(0.01));
        assertThat(warmed(model, 3_000)).isCloseTo(endC, within(0.01));
    }

    @ParameterizedTest(name = "{0} W/K")
    @CsvSource({
        // UA, τ in h, half-time in h of the same computation
        "18.028, 12.25, 8.49", "5.044, 43.80, 30.36", "2.5005, 88.35, 61.24", "1.3434, 164.4, 114.0",
    })
    void halfTime_isReachedHalfWay(double lossWPerK, double timeConstantH, double halfTimeH) {
        assertThat(HeatBalance.timeConstantH(MASS_KG, lossWPerK)).isCloseTo(timeConstantH, within(0.06));
        assertThat(warmed(tank(lossWPerK, 0, Chiller.NONE), halfTimeH)).isCloseTo(16, within(0.003));
    }

    @Test
    void soundChiller_holdsItsSetPoint() {
        TankModel model = tank(TankParameters.BARE_GLASS_W_PER_K, 15, Chiller.setTo(10));
        TankState held = model.after(TankState.fresh(16, 80, 0, 0), new Conditions(0, 9, 22, 1), 2);
        assertThat(held.temperatureC()).isBetween(10.0, 10.5);
    }

    @Test
    void fadingChiller_endsWhereItsRestStillSuffices() {
        TankModel model = tank(TankParameters.BARE_GLASS_W_PER_K, 15, Chiller.setTo(10));
        // 30 % of 300 W against 15 W and 18.028 W/K: 22 − (90 − 15) / 18.028 = 17.84 °C.
        TankState end = model.after(TankState.fresh(10, 80, 0, 0), new Conditions(0, 9, 22, 0.3), 10);
        assertThat(end.temperatureC()).isCloseTo(17.84, within(0.005));
    }

    private static double warmed(TankModel model, double hours) {
        return model.after(TankState.fresh(10, 80, 0, 0), new Conditions(0, 9, 22, 0), hours / 24)
                .temperatureC();
    }

    private static TankModel tank(double lossWPerK, double pumpW, Chiller chiller) {
        return new TankModel(new TankParameters(MASS_KG, lossWPerK, pumpW, chiller,
                Nitrifiers.AMMONIA_OXIDISERS, Nitrifiers.NITRITE_OXIDISERS, 0, 3));
    }
}
