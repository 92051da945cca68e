package org.tankrounds.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.testing.Water.FINE;
import static org.tankrounds.testing.Water.eggs;
import static org.tankrounds.testing.Water.feedingFish;
import static org.tankrounds.testing.Water.read;
import static org.tankrounds.testing.Water.with;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.testing.Water;
import org.tankrounds.water.Analyte;

/** What is done about a second trouble, and about what feed, warmth and air have to do with each. */
class SeveralTroublesTest {

    /** Where the other trouble is met now, and the warmth is not, nobody carries ice. */
    @Test
    void waterWithinItsLimit_getsNoIce_whateverElseIsBeyond() {
        assertThat(kinds(FINE.withTemperatureC(15).withNitriteMgPerL(0.5).lastRead(0.2).subList(0, 5)))
                .contains(Act.Kind.WATER_CHANGE).doesNotContain(Act.Kind.ICE);
    }

    @Test
    void troubleBesideChlorine_isActedOn() {
        Observation chlorine = read(0.05, Analyte.CHLORINE, 0.5, 0.1);
        assertThat(kinds(with(FINE.withNitriteMgPerL(0.5).lastRead(0.1), chlorine)))
                .contains(Act.Kind.THIOSULFATE, Act.Kind.SALT, Act.Kind.WATER_CHANGE);
        assertThat(kinds(with(FINE.withTemperatureC(19.5).lastRead(0.1), chlorine)))
                .contains(Act.Kind.THIOSULFATE, Act.Kind.CHECK_CHILLER, Act.Kind.ICE);
        assertThat(kinds(with(FINE.withOxygenMgPerL(4).lastRead(0.1), chlorine)))
                .startsWith(Act.Kind.MORE_AIR, Act.Kind.THIOSULFATE);
        assertThat(kinds(with(FINE.lastRead(0.1), chlorine))).containsExactly(Act.Kind.THIOSULFATE);
    }

    @Test
    void limitsPassedBesideAMuchWorseOne_areActedOn() {
        assertThat(kinds(with(FINE.withTotalAmmoniaMgPerL(8).withPh(8).withNitriteMgPerL(0.5).withTemperatureC(19.5)
                .lastRead(0.1), read(0.1, Analyte.ALKALINITY, 80, 5))))
                .contains(Act.Kind.WATER_CHANGE, Act.Kind.SALT, Act.Kind.CHECK_CHILLER, Act.Kind.ICE);
    }

    @Test
    void littleOxygen_isMetWithAirBeforeAllElse() {
        assertThat(kinds(FINE.withOxygenMgPerL(4.5).withTemperatureC(19).withNitriteMgPerL(0.6).lastRead(0.1)).get(0))
                .isEqualTo(Act.Kind.MORE_AIR);
    }

    /** Warm water holds less oxygen, and brown blood carries less (common practice, no source). */
    @Test
    void warmWaterAndNitrite_areMetWithAir_butNotWhereAmmoniaMatters() {
        assertThat(kinds(FINE.withTemperatureC(19).lastRead(0.1))).contains(Act.Kind.MORE_AIR);
        assertThat(kinds(FINE.withNitriteMgPerL(0.6).lastRead(0.1))).contains(Act.Kind.MORE_AIR);
        assertThat(kinds(FINE.withTemperatureC(19).withTotalAmmoniaMgPerL(2).withPh(7.8).lastRead(0.1)))
                .doesNotContain(Act.Kind.MORE_AIR);
        assertThat(kinds(FINE.withNitriteMgPerL(0.1).lastRead(0.1))).doesNotContain(Act.Kind.MORE_AIR);
    }

    /** A rise of 0.13 % in exposure is no reason to withhold it. */
    @ParameterizedTest(name = "{0} °C")
    @ValueSource(doubles = {19, 22, 24, 25})
    void warmWater_isGivenAirHoweverWarmItIs(double temperatureC) {
        assertThat(kinds(FINE.withTemperatureC(temperatureC).withOxygenMgPerL(7).lastRead(0.1)))
                .contains(Act.Kind.MORE_AIR);
    }

    /** Above 20 °C (common practice, no source). */
    @Test
    void veryWarmWater_isGivenNoFeed() {
        assertThat(kinds(FINE.withTemperatureC(21).lastRead(0.1))).contains(Act.Kind.SKIP_FEED, Act.Kind.ICE);
        assertThat(kinds(FINE.withTemperatureC(18.5).lastRead(0.1))).doesNotContain(Act.Kind.SKIP_FEED);
    }

    /** Nobody has said when the eggs came; so they may be fed. */
    @Test
    void muchAmmoniaAlone_whereTheStageIsUnknown_withholdsFeedToo() {
        List<Observation> one = List.of(read(0.1, Analyte.TOTAL_AMMONIA, 4, 0.5));
        assertThat(new Advisor().advise(Water.lookAhead(TankFacts.of("bare").volumeL(190.0), one), one).acts())
                .extracting(Act::kind).contains(Act.Kind.ASK_FOR_READING, Act.Kind.SKIP_FEED);
        assertThat(new Advisor().advise(Water.lookAhead(eggs(), one), one).acts())
                .extracting(Act::kind).doesNotContain(Act.Kind.SKIP_FEED);
    }

    @ParameterizedTest(name = "{0} g")
    @ValueSource(doubles = {3, 6})
    void feedThatJumped_isToldWithTheFast(double grams) {
        assertThat(fastAfter(grams).secondAmount()).hasValue(grams);
        assertThat(fastAfter(grams).secondUnit()).isEqualTo("times");
        assertThat(fastAfter(1.4).secondAmount()).isEmpty();
    }

    /** Monday's note holds the weekend too. */
    @Test
    void feedOfAWeekend_isNoJump() {
        List<Observation> readings = fed(FINE.withTotalAmmoniaMgPerL(8).lastRead(0.1), 4);
        readings.add(read(0.2, Analyte.FEED, 3.2, 0.1));
        assertThat(fast(readings).secondAmount()).isEmpty();
    }

    @Test
    void changeThatIsNotEnough_isToBeFollowedByAnotherReading() {
        Observation alkalinity = read(0.1, Analyte.ALKALINITY, 75, 5);
        Act change = change(with(FINE.withNitriteMgPerL(2).lastRead(0.1), alkalinity));
        assertThat(change.amount()).hasValue(50);
        assertThat(change.asks()).isEqualTo("nitrite");
        assertThat(change(with(FINE.withNitriteMgPerL(0.26).lastRead(0.1), alkalinity)).asks()).isEmpty();
    }

    private static Act change(List<Observation> readings) {
        return of(readings, Act.Kind.WATER_CHANGE);
    }

    private static Act fastAfter(double grams) {
        List<Observation> readings = fed(FINE.withTotalAmmoniaMgPerL(8).lastRead(0.1), 1);
        readings.add(read(0.2, Analyte.FEED, grams, 0.1));
        return fast(readings);
    }

    private static Act fast(List<Observation> readings) {
        return of(readings, Act.Kind.SKIP_FEED);
    }

    /** A gram a day for a fortnight, until so many days ago. */
    private static List<Observation> fed(List<Observation> readings, int untilDaysAgo) {
        List<Observation> fed = new ArrayList<>(readings);
        for (int day = untilDaysAgo; day < 16; day++) {
            fed.add(read(day + 0.2, Analyte.FEED, 1, 0.1));
        }
        return fed;
    }

    private static Act of(List<Observation> readings, Act.Kind kind) {
        return new Advisor().advise(Water.lookAhead(feedingFish(), readings), readings).acts().stream()
                .filter(act -> act.kind() == kind).findFirst().orElseThrow();
    }

    private static List<Act.Kind> kinds(List<Observation> readings) {
        return new Advisor().advise(Water.lookAhead(feedingFish(), readings), readings).acts().stream()
                .map(Act::kind).toList();
    }
}
