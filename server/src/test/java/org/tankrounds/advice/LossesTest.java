package org.tankrounds.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.testing.Water.FINE;
import static org.tankrounds.testing.Water.feedingFish;
import static org.tankrounds.testing.Water.read;
import static org.tankrounds.testing.Water.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.belief.Observation;
import org.tankrounds.testing.Water;
import org.tankrounds.water.Analyte;

/** Fish that die en masse, one in twenty or ten in a day (common practice, no source). */
class LossesTest {

    @Test
    void massDeathsAfterAChange_askForChlorineAndThenThePh_beforeMoreWater() {
        List<Act> acts = advise(with(FINE.withNitriteMgPerL(0.4).lastRead(0.7), read(0.5, Analyte.WATER_CHANGE, 50, 0),
                read(0.1, Analyte.DEATHS, 12, 0.5)));
        assertThat(acts.get(0).kind()).isEqualTo(Act.Kind.MORE_AIR);
        assertThat(acts).extracting(Act::kind).contains(Act.Kind.TEST_WATER_FIRST, Act.Kind.SKIP_FEED,
                Act.Kind.LOOK_AT_FISH, Act.Kind.CALL_FOR_HELP).doesNotContain(Act.Kind.WATER_CHANGE);
        assertThat(acts).filteredOn(act -> act.kind() == Act.Kind.ASK_FOR_READING).extracting(Act::asks)
                .startsWith("chlorine", "ph");
    }

    @Test
    void massDeaths_withoutAChange_doNotForbidOne() {
        List<Act> acts = advise(with(FINE.lastRead(0.1), read(0.1, Analyte.DEATHS, 12, 0.5)));
        assertThat(acts).extracting(Act::kind).contains(Act.Kind.CALL_FOR_HELP)
                .doesNotContain(Act.Kind.TEST_WATER_FIRST);
        assertThat(acts).extracting(Act::asks).contains("chlorine").doesNotContain("ph");
    }

    /** It did not kill those that were dead before. */
    @Test
    void massDeathsBeforeAChange_doNotForbidAnother() {
        List<Act> acts = advise(with(FINE.withNitriteMgPerL(1).lastRead(0.2), read(0.1, Analyte.ALKALINITY, 80, 5),
                read(0.15, Analyte.DEATHS, 30, 0.5), read(0.08, Analyte.WATER_CHANGE, 50, 0)));
        assertThat(acts).extracting(Act::kind).contains(Act.Kind.CALL_FOR_HELP, Act.Kind.WATER_CHANGE)
                .doesNotContain(Act.Kind.TEST_WATER_FIRST);
    }

    @ParameterizedTest(name = "{0} of 100")
    @CsvSource({"2, false", "4, false", "6, true", "30, true"})
    void help_isCalledFor_fromOneInTwentyOn(int dead, boolean isCalled) {
        List<Act> acts = advise(with(FINE.lastRead(0.1), read(0.1, Analyte.DEATHS, dead, 0.5)));
        assertThat(acts.stream().anyMatch(act -> act.kind() == Act.Kind.CALL_FOR_HELP)).isEqualTo(isCalled);
    }

    /** Air lifts the pH, which is no help where oxygen is enough and ammonia kills. */
    @Test
    void massDeathsByAmmonia_whereOxygenIsReadAndEnough_areNotGivenAir() {
        List<Act> acts = advise(with(FINE.withTotalAmmoniaMgPerL(6).withPh(7.8).lastRead(0.1),
                read(0.1, Analyte.DEATHS, 30, 0.5)));
        assertThat(acts).extracting(Act::kind).contains(Act.Kind.CALL_FOR_HELP, Act.Kind.SKIP_FEED)
                .doesNotContain(Act.Kind.MORE_AIR);
    }

    /** What the courses tell of it counts, where there is something to tell by. */
    @Test
    void massDeathsByAmmonia_whereOxygenIsUnread_areNotGivenAirThatMakesMoreOfItHarmful() {
        List<Act> acts = advise(diedIn(unread(FINE.withTotalAmmoniaMgPerL(6).withPh(7.8))));
        assertThat(acts).extracting(Act::kind).contains(Act.Kind.CALL_FOR_HELP, Act.Kind.SKIP_FEED)
                .doesNotContain(Act.Kind.MORE_AIR);
    }

    @Test
    void massDeaths_whereNeitherOxygenNorAmmoniaIsKnown_areGivenAir() {
        List<Observation> readings = diedIn(unread(FINE.withTotalAmmoniaMgPerL(6).withPh(7.8)).stream()
                .filter(each -> each.analyte() != Analyte.TOTAL_AMMONIA).toList());
        assertThat(advise(readings).get(0).kind()).isEqualTo(Act.Kind.MORE_AIR);
    }

    @Test
    void massDeathsByAmmonia_whereOxygenIsReadAndShort_areGivenAir() {
        List<Observation> readings = with(diedIn(unread(FINE.withTotalAmmoniaMgPerL(6).withPh(7.8))),
                read(0.05, Analyte.DISSOLVED_OXYGEN, 3, 0.5));
        assertThat(advise(readings).get(0).kind()).isEqualTo(Act.Kind.MORE_AIR);
    }

    private static List<Observation> unread(Water water) {
        return water.lastRead(0.1).stream().filter(each -> each.analyte() != Analyte.DISSOLVED_OXYGEN).toList();
    }

    private static List<Observation> diedIn(List<Observation> readings) {
        return with(readings, read(0.1, Analyte.DEATHS, 30, 0.5));
    }

    @Test
    void massDeathsByChlorine_areGivenAirAndThiosulfateAndHelp() {
        List<Act> acts = advise(with(FINE.lastRead(0.1), read(0.1, Analyte.DEATHS, 30, 0.5),
                read(0.05, Analyte.CHLORINE, 0.2, 0.1)));
        assertThat(acts.get(0).kind()).isEqualTo(Act.Kind.MORE_AIR);
        assertThat(acts.get(1).kind()).isEqualTo(Act.Kind.THIOSULFATE);
        assertThat(acts).extracting(Act::kind).contains(Act.Kind.CALL_FOR_HELP, Act.Kind.SKIP_FEED);
    }

    private static List<Act> advise(List<Observation> readings) {
        return new Advisor().advise(Water.lookAhead(feedingFish(), readings), readings).acts();
    }
}
