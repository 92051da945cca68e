package org.tankrounds.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.tankrounds.fish.Stage;
import org.tankrounds.transport.Tempering.Bar;
import org.tankrounds.transport.Tempering.Pace;
import org.tankrounds.transport.Tempering.Step;
import org.tankrounds.water.WaterChange;

class TemperingTest {

    /** At most 1 °C in 15 to 30 minutes for eggs, 1 °C in 10 to 15 minutes for fry: common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "EGG,     SLOW,  30", "EGG,     QUICK, 15",
        "SAC_FRY, SLOW,  30", "SAC_FRY, QUICK, 15",
        "FEEDING, SLOW,  15", "FEEDING, QUICK, 10",
    })
    void fourDegrees_takeFourTimesTheMinutesOfOne(Stage stage, Pace pace, int minutes) {
        List<Step> steps = Tempering.steps(stage, 6, 10, pace);
        assertThat(steps).extracting(Step::minute).containsExactly(minutes, 2 * minutes, 3 * minutes, 4 * minutes);
        assertThat(steps).extracting(Step::temperatureC).containsExactly(7.0, 8.0, 9.0, 10.0);
    }

    /** C = Ctap + (C0 − Ctap)(1 − f), the formula of a water change: a quarter, a third, a half, and over. */
    @Test
    void shares_areWhatBringsEachStep() {
        List<Step> steps = Tempering.steps(Stage.EGG, 6, 10, Pace.QUICK);
        assertThat(steps.get(0).share()).isCloseTo(1 / 4.0, within(1e-12));
        assertThat(steps.get(1).share()).isCloseTo(1 / 3.0, within(1e-12));
        assertThat(steps.get(2).share()).isCloseTo(1 / 2.0, within(1e-12));
        assertThat(steps.get(3).isGoingOver()).isTrue();
        assertThat(steps.subList(0, 3)).noneMatch(Step::isGoingOver);
    }

    @ParameterizedTest(name = "{0} from {1} to {2} °C")
    @CsvSource({"EGG, 4, 9", "EGG, 12.4, 8", "EGG, 10, 9.7", "SAC_FRY, 7.2, 11.9", "FEEDING, 8, 17",
        "FEEDING, 16, 3.3"})
    void mixingStepByStep_isNeverMoreThanADegreeAtATime(Stage stage, double carryingC, double receivingC) {
        for (Pace pace : Pace.values()) {
            double mixedC = carryingC;
            int before = 0;
            for (Step step : Tempering.steps(stage, carryingC, receivingC, pace)) {
                double nextC = WaterChange.after(mixedC, receivingC, step.share(), 1);
                assertThat(nextC).isCloseTo(step.temperatureC(), within(1e-9));
                assertThat(Math.abs(nextC - mixedC)).isLessThanOrEqualTo(1 + 1e-9);
                assertThat(step.fromMinute()).isEqualTo(before);
                assertThat(Math.abs(nextC - mixedC) * Tempering.minutesPerK(stage, pace))
                        .isLessThanOrEqualTo(step.minute() - before + 1e-9);
                before = step.minute();
                mixedC = nextC;
            }
            assertThat(mixedC).isEqualTo(receivingC);
        }
    }

    @Test
    void sameTemperature_isGoingOverAtOnce() {
        assertThat(Tempering.steps(Stage.EGG, 9, 9, Pace.SLOW)).containsExactly(new Step(0, 0, 9, 1));
    }

    /** A total of at most 5 °C: common practice, no source. */
    @ParameterizedTest
    @EnumSource(names = {"EGG", "SAC_FRY"})
    void eggsMoreThanFiveDegreesApart_doNotGoOver(Stage stage) {
        assertThat(Tempering.bar(stage, 5, 10)).isEmpty();
        assertThat(Tempering.bar(stage, 5.1, 10.1)).as("5 °C, whatever the computer makes of it").isEmpty();
        assertThat(Tempering.bar(stage, 4.9, 10)).contains(Bar.TOO_FAR_APART);
        assertThat(Tempering.bar(stage, 12, 6.9)).contains(Bar.TOO_FAR_APART);
        assertThat(Tempering.steps(stage, 4.9, 10, Pace.SLOW)).isEmpty();
    }

    /** Eggs: 3 and 15 °C near the limits (Kwain 1975, confirmed), 13 °C from spawning to emergence (US EPA 2003). */
    @Test
    void eggs_goIntoNoWaterBeyondTheirLimits() {
        assertThat(Tempering.bar(Stage.EGG, 10, 13)).isEmpty();
        assertThat(Tempering.bar(Stage.EGG, 10, 13.1)).contains(Bar.TOO_WARM);
        assertThat(Tempering.bar(Stage.EGG, 5, 3)).isEmpty();
        assertThat(Tempering.bar(Stage.EGG, 5, 2.9)).contains(Bar.TOO_COLD);
    }

    /**
     * Below 18 °C: common practice, no source. Reared at 11.2 °C: half alive after 14 days at 25 °C, none at 26 °C; 12
     * hours of tempering did not help (Huysman et al. 2020, confirmed). Lowest about 0 °C (Currie et al. 1998,
     * confirmed).
     */
    @Test
    void fry_goIntoNoWaterThatIsTooWarm() {
        assertThat(Tempering.bar(Stage.FEEDING, 11.2, 17.9)).isEmpty();
        assertThat(Tempering.bar(Stage.FEEDING, 11.2, 18)).contains(Bar.TOO_WARM);
        assertThat(Tempering.bar(Stage.FEEDING, 11.2, 25)).contains(Bar.DEADLY);
        assertThat(Tempering.bar(Stage.FEEDING, 24.9, 26)).contains(Bar.DEADLY);
        assertThat(Tempering.bar(Stage.FEEDING, 11.2, 0)).contains(Bar.TOO_COLD);
        assertThat(Tempering.steps(Stage.FEEDING, 11.2, 18, Pace.SLOW)).isEmpty();
    }

    /** Fish of 10 g came through 8 to 24 °C at once (N. Am. J. Aquac. 65:67, confirmed): distance alone bars no fry. */
    @Test
    void fryFarApart_areTemperedLonger() {
        assertThat(Tempering.bar(Stage.FEEDING, 8, 17)).isEmpty();
        assertThat(Tempering.steps(Stage.FEEDING, 8, 17, Pace.QUICK)).hasSize(9).last()
                .extracting(Step::minute).isEqualTo(90);
    }

    /** 10 °F (5.6 °C) apart: confirmed from one supplier. */
    @ParameterizedTest(name = "{0} to {1} °C")
    @CsvSource({"11.0, 5.5, false", "11.0, 5.4, true", "8.0, 13.5, false", "8.0, 13.6, true", "9.0, 9.0, false"})
    void suppliers_temperFryFromTenFahrenheitOn(double carryingC, double receivingC, boolean isFar) {
        assertThat(Tempering.FRY_OFTEN_FROM_K).isCloseTo(5.6, within(0.05));
        assertThat(Tempering.isFarForFry(carryingC, receivingC)).isEqualTo(isFar);
    }

    @Test
    void tenFahrenheit_areFarWhereTheyAreReadInFahrenheit() {
        for (int fahrenheit = 42; fahrenheit < 60; fahrenheit++) {
            double cold = (float) ((fahrenheit - 32) / 1.8);
            assertThat(Tempering.isFarForFry((float) ((fahrenheit + 10 - 32) / 1.8), cold)).isTrue();
            assertThat(Tempering.isFarForFry((float) ((fahrenheit + 9.9 - 32) / 1.8), cold)).isFalse();
        }
    }

    /** Mix slowly when total ammonia in the box is above 1 mg/L: its pH rises with fresh water. */
    @Test
    void muchAmmoniaInTheBox_takesTheSlowPace() {
        assertThat(Tempering.paceAt(1)).isEqualTo(Pace.QUICK);
        assertThat(Tempering.paceAt(1.01)).isEqualTo(Pace.SLOW);
        assertThat(Tempering.paceAt(1.2)).isEqualTo(Pace.SLOW);
    }

    @Test
    void noTemperature_isRefused() {
        assertThatThrownBy(() -> Tempering.steps(Stage.EGG, Double.NaN, 9, Pace.SLOW))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
