package org.tankrounds.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Newton's law of cooling for 190 kg in a room of 22 °C, starting at 10 °C; computed once elsewhere (Python).
 */
class HeatBalanceTest {
    private static final double MASS_KG = 190;
    private static final double ROOM_C = 22;

    @ParameterizedTest(name = "{0} W/K, {1} W")
    @CsvSource({
        // UA, pump, end, hours to 13 / 15 / 18 / 20 °C, °C after 12 / 24 / 64 h
        "18.028, 0,  22.00, 3.53,  6.61,  13.46, 21.96, 17.493, 20.307, 21.935",
        "18.028, 15, 22.83, 3.26,  6.05,  11.97, 18.52, 18.012, 21.022, 22.763",
        "5.044,  15, 24.97, 9.79,  17.80, 33.47, 48.28, 13.588, 16.317, 21.500",
        "2.5005, 15, 28.00, 16.11, 28.75, 51.94, 71.66, 12.286, 14.281, 19.276",
    })
    void stoppedChiller_warmsTheTankAlongTheCurve(
            double lossWPerK, double pumpW, double endC, double hoursTo13, double hoursTo15, double hoursTo18,
            double hoursTo20, double after12, double after24, double after64) {
        double end = HeatBalance.endTemperatureC(ROOM_C, pumpW, lossWPerK);
        double constant = HeatBalance.timeConstantH(MASS_KG, lossWPerK);
        assertThat(end).isCloseTo(endC, within(5.1e-3));
        assertThat(HeatBalance.hoursTo(13, 10, end, constant)).isCloseTo(hoursTo13, within(0.01));
        assertThat(HeatBalance.hoursTo(15, 10, end, constant)).isCloseTo(hoursTo15, within(0.01));
        assertThat(HeatBalance.hoursTo(18, 10, end, constant)).isCloseTo(hoursTo18, within(0.01));
        assertThat(HeatBalance.hoursTo(20, 10, end, constant)).isCloseTo(hoursTo20, within(0.01));
        assertReachedAfter(12, after12, end, constant);
        assertReachedAfter(24, after24, end, constant);
        assertReachedAfter(64, after64, end, constant);
    }

    /** The later on the curve, the more hours its last printed digit is worth. */
    private static void assertReachedAfter(double hours, double temperatureC, double endC, double constantH) {
        assertThat(HeatBalance.hoursTo(temperatureC, 10, endC, constantH))
                .isCloseTo(hours, within(5.1e-4 * constantH / (endC - temperatureC)));
    }

    @Test
    void temperatureBeyondTheEnd_isNeverReached() {
        assertThat(HeatBalance.hoursTo(25, 10, ROOM_C, 30)).isInfinite();
    }

    /** Latent heat of melting 334 kJ/kg and 4186 J/kg/K, worked by hand. */
    @Test
    void ice_coolsByItsMeltingAndItsWarming() {
        double kg = HeatBalance.iceToCoolKg(MASS_KG, 3, 12);
        assertThat(kg).isCloseTo(6.2098, within(5.1e-5));
        assertThat(3 / kg).as("kelvin per kilogram").isCloseTo(0.4831, within(5.1e-5));
        assertThat(HeatBalance.iceToHoldKg(18.028, ROOM_C, 10, 12)).isCloseTo(24.86, within(5.1e-3));
        assertThat(HeatBalance.iceToHoldKg(2.5005, ROOM_C, 10, 12)).isCloseTo(3.449, within(5.1e-3));
    }

    @Test
    void ice_inARoomColderThanTheTank_isNone() {
        assertThat(HeatBalance.iceToHoldKg(18.028, 8, 10, 12)).isZero();
    }
}
