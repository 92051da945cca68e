package org.tankrounds.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.testing.Water.FINE;
import static org.tankrounds.testing.Water.eggs;
import static org.tankrounds.testing.Water.feedingFish;
import static org.tankrounds.testing.Water.read;
import static org.tankrounds.testing.Water.with;

import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.forecast.Driver;
import org.tankrounds.testing.Water;
import org.tankrounds.water.Analyte;

/** A list is read as a whole: nobody is told to do a thing and to leave it. */
class HarmonyTest {

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {91, 92, 93})
    void noList_saysTwoThingsThatContradict(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 40; i++) {
            TankFacts.Builder facts = (random.nextBoolean() ? feedingFish() : eggs())
                    .sourceAlkalinityMgPerL(20 + 180 * random.nextDouble());
            List<Observation> readings = with(new Water(8 + 14 * random.nextDouble(),
                    5 * random.nextDouble() * random.nextDouble(), 2 * random.nextDouble() * random.nextDouble(),
                    5.4 + 3.6 * random.nextDouble(), 4 + 7 * random.nextDouble()).lastRead(0.1),
                    read(0.1, Analyte.ALKALINITY, 40 * random.nextDouble(), 3));
            assertInHarmony(new Advisor().advise(Water.lookAhead(facts, readings), readings).acts());
        }
    }

    /** Half of the water changed against nitrite brings alkalinity back. */
    @ParameterizedTest(name = "source {0}, pH {1}, ammonia {2}, nitrite {3}, alkalinity {4}")
    @CsvSource({"40, 5.7, 1.83, 0.77, 25", "80, 5.7, 2, 0.8, 25", "60, 5.7, 1, 1.2, 25", "40, 5.9, 2, 1.2, 40"})
    void sourTankWithNitrite_isNotToldToChangeAndToAddNothing(
            double source, double ph, double ammonia, double nitrite, double alkalinity) {
        assertInHarmony(acts(feedingFish().sourceAlkalinityMgPerL(source),
                FINE.withPh(ph).withTotalAmmoniaMgPerL(ammonia).withNitriteMgPerL(nitrite), alkalinity));
    }

    /** Soda lifts the pH as the source water would. */
    @Test
    void waterLeftForThePh_isNotGivenSodaInstead() {
        assertInHarmony(acts(feedingFish().sourceAlkalinityMgPerL(150), new Water(21, 0.11, 0.01, 8.4, 6.7), 3));
    }

    /** Salt before alkalinity is no answer where none follows. */
    @Test
    void saltBeforeAlkalinity_whereNoneFollows_isToldWithTheReason() {
        assertInHarmony(acts(feedingFish(), FINE.withPh(8.6).withTotalAmmoniaMgPerL(0.83).withNitriteMgPerL(0.04)
                .withTemperatureC(19), 15));
    }

    private static void assertInHarmony(List<Act> acts) {
        Set<Act.Kind> kinds = acts.stream().map(Act::kind).collect(Collectors.toSet());
        if (kinds.contains(Act.Kind.LEAVE_ALKALINITY)) {
            assertThat(kinds).as("%s", acts).doesNotContain(Act.Kind.WATER_CHANGE, Act.Kind.BICARBONATE);
            assertThat(acts).filteredOn(act -> act.kind() == Act.Kind.MORE_AIR).allSatisfy(
                    act -> assertThat(act.driver().orElseThrow()).isIn(Driver.DISSOLVED_OXYGEN, Driver.DEATHS));
        }
        if (kinds.contains(Act.Kind.LEAVE_WATER)) {
            assertThat(kinds).as("%s", acts).doesNotContain(Act.Kind.WATER_CHANGE, Act.Kind.BICARBONATE);
        }
        if (acts.stream().anyMatch(act -> act.kind() == Act.Kind.SALT && act.isAgainst(Driver.PH))) {
            assertThat(kinds).as("%s", acts).containsAnyOf(Act.Kind.WATER_CHANGE, Act.Kind.BICARBONATE,
                    Act.Kind.LEAVE_ALKALINITY, Act.Kind.LEAVE_WATER);
        }
    }

    private static List<Act> acts(TankFacts.Builder facts, Water water, double alkalinityMgPerL) {
        List<Observation> readings = with(water.lastRead(0.1), read(0.1, Analyte.ALKALINITY, alkalinityMgPerL, 5));
        return new Advisor().advise(Water.lookAhead(facts, readings), readings).acts();
    }
}
