package org.tankrounds.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.testing.Water.FINE;
import static org.tankrounds.testing.Water.eggs;
import static org.tankrounds.testing.Water.feedingFish;
import static org.tankrounds.testing.Water.read;
import static org.tankrounds.testing.Water.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.forecast.LookAhead;
import org.tankrounds.testing.Water;
import org.tankrounds.water.Analyte;

/** Oxygen is severely short for salmonids at 4 mg/L, for their early stages at 7 (US EPA 1986, from memory). */
class BreathTest {

    @ParameterizedTest(name = "oxygen {0}, ammonia {1}, pH {2}, eggs {3}")
    @CsvSource({"5.8, 1, 7.6, false", "6.0, 2, 7.3, false", "7.5, 1, 7.8, true", "8.0, 0.5, 7.8, true"})
    void oxygenAboutItsLimit_isNoReasonToMakeMuchMoreAmmoniaHarmful(
            double oxygenMgPerL, double ammonia, double ph, boolean areEggs) {
        TankFacts.Builder facts = areEggs ? eggs() : feedingFish();
        List<Observation> readings = with(FINE.withOxygenMgPerL(oxygenMgPerL).withTotalAmmoniaMgPerL(ammonia).withPh(ph)
                .lastRead(0.1), read(0.1, Analyte.ALKALINITY, 80, 5));
        assertThat(new Advisor().advise(Water.lookAhead(facts, readings), readings).remedies())
                .filteredOn(each -> each.act().kind() == Act.Kind.MORE_AIR)
                .allSatisfy(each -> assertThat(each.effect().orElseThrow().harms()).isFalse());
    }

    /** Brown blood carries less oxygen, warm fish need more, and some have died: below its limit is then short. */
    @ParameterizedTest(name = "nitrite {0}, temperature {1}, dead {2}")
    @CsvSource({"2, 11, 0", "0.02, 20, 0", "0.02, 11, 12", "2, 20, 25"})
    void oxygenBelowItsLimit_whereFishNeedMoreOrGetLess_isMetWithAirWhateverAmmoniaThereIs(
            double nitrite, double temperatureC, double dead) {
        List<Observation> readings = with(FINE.withOxygenMgPerL(5).withTotalAmmoniaMgPerL(3).withPh(7.7)
                .withNitriteMgPerL(nitrite).withTemperatureC(temperatureC).lastRead(0.1),
                read(0.1, Analyte.ALKALINITY, 80, 5), read(0.1, Analyte.DEATHS, dead, 0));
        assertThat(new Advisor().advise(Water.lookAhead(feedingFish(), readings), readings).acts().get(0).kind())
                .isEqualTo(Act.Kind.MORE_AIR);
    }

    /** A little below its limit it is no reason to make much ammonia harmful, whatever else is wrong. */
    @ParameterizedTest(name = "oxygen {0}, nitrite {1}, temperature {2}, ammonia {3}, dead {4}, eggs {5}")
    @CsvSource({"5.5, 0.4, 11, 8, 0, false", "5.8, 0.37, 11, 8, 0, false", "5.8, 0.02, 18.2, 8, 0, false",
        "5.8, 0.02, 11, 8, 6, false", "5.0, 0.5, 11, 12, 0, false", "7.5, 0.5, 11, 6, 0, true"})
    void adviceWhereOxygenIsALittleShort_doesNoHarmInAll(double oxygenMgPerL, double nitrite, double temperatureC,
            double ammonia, double dead, boolean areEggs) {
        List<Observation> readings = with(FINE.withOxygenMgPerL(oxygenMgPerL).withTotalAmmoniaMgPerL(ammonia).withPh(7)
                .withNitriteMgPerL(nitrite).withTemperatureC(temperatureC).lastRead(0.1),
                read(0.1, Analyte.ALKALINITY, 80, 5), read(0.1, Analyte.DEATHS, dead, 0));
        LookAhead ahead = Water.lookAhead(areEggs ? eggs() : feedingFish(), readings);
        Advice advice = new Advisor().advise(ahead, readings);
        List<Act> air = advice.acts().stream().filter(act -> act.kind() == Act.Kind.MORE_AIR).toList();
        assertThat(air.isEmpty() || advice.together().isPresent()).as(advice.acts().toString()).isTrue();
    }

    @Test
    void oxygenSeverelyShort_isMetWithAirWhateverAmmoniaThereIs() {
        List<Observation> readings = with(FINE.withOxygenMgPerL(3.5).withTotalAmmoniaMgPerL(2).withPh(7.6)
                .lastRead(0.1), read(0.1, Analyte.ALKALINITY, 80, 5));
        assertThat(new Advisor().advise(Water.lookAhead(feedingFish(), readings), readings).acts().get(0).kind())
                .isEqualTo(Act.Kind.MORE_AIR);
    }
}
