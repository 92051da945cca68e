package org.tankrounds.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.tankrounds.testing.Water.AS_OF;
import static org.tankrounds.testing.Water.FINE;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.belief.Observation;
import org.tankrounds.testing.Water;
import org.tankrounds.water.Analyte;

/** What a person is told beside a forecast fits the forecast. */
class OutlookTest {

    @ParameterizedTest
    @ValueSource(doubles = {0.02, 0.1, 0.13, 0.15, 0.18, 0.25, 0.5})
    void twentyWays_areSplitAsTheChanceSays(double nitriteMgPerL) {
        Outlook outlook = outlook(FINE.withNitriteMgPerL(nitriteMgPerL).lastRead(1));
        assertThat((double) outlook.ways().beyond().size() / Ways.COUNT)
                .isCloseTo(outlook.forecast().chance(), within(0.5 / Ways.COUNT + 1e-9));
    }

    @Test
    void waysThatCrossALimit_nameTheOneThatTheForecastSpeaksOf() {
        Outlook outlook = outlook(FINE.withNitriteMgPerL(0.5).lastRead(1));
        assertThat(outlook.ways().beyond()).isNotEmpty()
                .allSatisfy(way -> assertThat(way.limit()).contains(Driver.NITRITE));
        assertThat(outlook.ways().beyond().get(0).afterHours()).hasValue(0);
    }

    @Test
    void forecast_isTheSameAsWithoutTheRest() {
        List<Observation> readings = FINE.withTemperatureC(16).lastRead(2);
        assertThat(outlook(readings).forecast()).isEqualTo(Water.forecast(Water.feedingFish(), readings));
    }

    @Test
    void waterThatWarms_isHeldForAStoppedChiller_andSteadyWaterIsNot() {
        List<Observation> warming = new ArrayList<>(FINE.lastRead(3));
        warming.add(Water.read(1, Analyte.TEMPERATURE, 14, 0.25));
        warming.add(Water.read(0.5, Analyte.TEMPERATURE, 16, 0.25));
        assertThat(outlook(warming).held().stoppedChance()).isGreaterThan(0.8);
        assertThat(outlook(FINE.lastRead(1)).held().stoppedChance()).isLessThan(0.1);
        assertThat(outlook(FINE.lastRead(1)).held().setPointC()).isCloseTo(11, within(0.5));
    }

    @Test
    void waterChanges_areHeldAsTheClassMadeThem() {
        List<Observation> readings = new ArrayList<>(FINE.lastRead(1));
        for (int week = 0; week < 4; week++) {
            readings.add(Water.read(2 + 7 * week, Analyte.WATER_CHANGE, 25, 0));
        }
        Held held = outlook(readings).held();
        assertThat(held.changesPerWeek()).isCloseTo(1, within(0.3));
        assertThat(held.changeShare()).isCloseTo(0.25, within(0.001));
    }

    @ParameterizedTest
    @CsvSource({
        "-10, 0.05, 0.01, UNFED",
        "20,  0.60, 0.03, BEHIND",
        "40,  0.60, 0.25, BEHIND",
        "40,  0.20, 0.25, HALF_RIPE",
        "90,  0.15, 0.03, RIPE",
    })
    void filter_isToldByWhatItLeavesInTheWater(double daysFeeding, double ammonia, double nitrite, Ripeness filter) {
        assertThat(Ripeness.of(daysFeeding, ammonia, nitrite)).isEqualTo(filter);
    }

    private static Outlook outlook(List<Observation> readings) {
        return new Forecaster().lookAhead(Water.feedingFish().build(), readings, AS_OF).outlook();
    }
}
