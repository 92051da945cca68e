package org.tankrounds.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.tankrounds.testing.Water.FINE;
import static org.tankrounds.testing.Water.feedingFish;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.belief.Observation;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.MassDeaths;
import org.tankrounds.testing.Water;

/**
 * A sheet on the wall against values worked outside this project (Python): Newton's law of cooling with 4186 J/kg/K,
 * 334 kJ/kg of melting ice, 18.028 W/K of bare glass and 5.044 W/K with an inch of foam for 190 L, scaled with the
 * surface, a room of 21 °C.
 */
class StandingAmountsTest {

    @ParameterizedTest(name = "{0} L, {1}")
    @CsvSource({
        // litres, stage, hours bare with the pump's 15 W, hours foamed without, kg for half a day, kg for 2 K
        "190,     EGG,     3.5836,  13.9483, 18.2423, 4.1399",
        "190,     FEEDING, 13.8161, 56.9087, 7.6889,  3.9260",
        "208.198, SAC_FRY, 3.7125,  14.3801, 19.3893, 4.5364",
        "208.198, FEEDING, 14.3545, 58.6705, 8.1723,  4.3021",
    })
    void withoutAChiller_hoursAndIceFollowTheVolume(
            double volumeL, Stage stage, double bareGlassH, double foamedH, double holdKg, double coolKg) {
        StandingAmounts amounts = new StandingAmounts(volumeL, 10);
        assertThat(amounts.warming(stage).bareGlassH()).isCloseTo(bareGlassH, within(1e-3));
        assertThat(amounts.warming(stage).foamedH()).isCloseTo(foamedH, within(1e-3));
        assertThat(amounts.iceToHoldKg(stage)).isCloseTo(holdKg, within(1e-4));
        assertThat(amounts.iceToCoolKg(2, stage)).isCloseTo(coolKg, within(1e-4));
    }

    @Test
    void waterAsWarmAsItsLimit_isThereAtOnce() {
        assertThat(new StandingAmounts(190, 13.5).warming(Stage.EGG)).isEqualTo(new StandingAmounts.Warming(0, 0));
    }

    /** US EPA Region 10, 2003: 13 °C for eggs and fry in the gravel, 18 °C for juveniles. */
    @Test
    void limits_areThoseOfTheForecast() {
        assertThat(StandingAmounts.limitC(Stage.EGG)).isEqualTo(13);
        assertThat(StandingAmounts.limitC(Stage.FEEDING)).isEqualTo(18);
    }

    /** A tenth of the water, 10 kg, half of the water: common practice, no source. 2 L bottles hold 1.8 kg of ice. */
    @ParameterizedTest(name = "{0} L")
    @CsvSource({"60, 6, 3, 30, 3", "208.198, 10, 5, 104.099, 11", "500, 10, 5, 250, 25"})
    void amountsAtOnce_areBounded(double volumeL, double iceKg, int bottles, double halfL, int buckets) {
        StandingAmounts amounts = new StandingAmounts(volumeL, 10);
        assertThat(amounts.iceAtOnceKg()).isEqualTo(iceKg);
        assertThat(StandingAmounts.bottlesWithin(amounts.iceAtOnceKg())).isEqualTo(bottles);
        assertThat(amounts.changeL(StandingAmounts.MOST_CHANGED_PERCENT)).isCloseTo(halfL, within(1e-9));
        assertThat(StandingAmounts.buckets(halfL)).isEqualTo(buckets);
    }

    @Test
    void theSheet_neverSaysMoreThanTheAdviceOfTheDay() {
        List<Observation> readings = FINE.withTemperatureC(22).lastRead(0.1);
        Act ice = new Advisor().advise(Water.lookAhead(feedingFish(), readings), readings).acts().stream()
                .filter(act -> act.kind() == Act.Kind.ICE).findFirst().orElseThrow();
        StandingAmounts amounts = new StandingAmounts(190, 11);
        assertThat(ice.amount().orElseThrow()).isEqualTo(amounts.iceAtOnceKg());
        assertThat(ice.secondAmount().orElseThrow())
                .isGreaterThan(amounts.iceToHoldKg(Stage.FEEDING) + amounts.iceToCoolKg(2, Stage.FEEDING));
    }

    /** One in twenty or ten, one in ten, and never fewer than three: common practice, no source. */
    @ParameterizedTest(name = "{0} fish")
    @CsvSource({"20, 3, 3", "59, 3, 6", "100, 5, 10", "190, 10, 19", "400, 10, 40"})
    void manyDead_dependOnHowManyThereAre(int fish, int many, int pressing) {
        assertThat(MassDeaths.fewestOf(fish)).hasValue(many);
        assertThat(MassDeaths.fewestThatPressOf(fish)).hasValue(pressing);
    }

    @Test
    void twoFish_areNoMass() {
        assertThat(MassDeaths.fewestOf(2)).isEmpty();
    }

    @Test
    void noWater_isRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new StandingAmounts(0, 10))
                .withMessageContaining("volume");
    }
}
