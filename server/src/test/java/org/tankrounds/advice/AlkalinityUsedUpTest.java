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
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.forecast.Deed;
import org.tankrounds.forecast.Effect;
import org.tankrounds.forecast.LookAhead;
import org.tankrounds.testing.Water;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.Carbonate;

/** Soft water whose changes have stopped: nothing holds the pH, and what ammonia there is may turn into nitrite. */
class AlkalinityUsedUpTest {

    private static final double VOLUME_L = 110;

    @ParameterizedTest(name = "pH {0}, ammonia {1}, nitrite {2}")
    @CsvSource({"6.6, 0.2, 0.1", "6.8, 0.2, 0.2", "6.6, 0.4, 0.03", "6.6, 0.4, 0.2", "6.8, 0.7, 0.03",
        "6.8, 0.7, 0.1", "6.8, 1.5, 0.03", "6.6, 1.5, 0.2"})
    void tank_isGivenSalt_andEitherAlkalinityOrTheReasonWhyNot(double ph, double ammonia, double nitrite) {
        List<Act> acts = new Advisor().advise(soft(ph, ammonia, nitrite), readings(ph, ammonia, nitrite)).acts();
        assertThat(acts).as("%s", acts).extracting(Act::kind).contains(Act.Kind.SALT, Act.Kind.SKIP_FEED)
                .containsAnyOf(Act.Kind.BICARBONATE, Act.Kind.WATER_CHANGE, Act.Kind.LEAVE_ALKALINITY)
                .doesNotContain(Act.Kind.LOOK_AT_FISH);
        assertThat(acts).filteredOn(act -> act.kind() == Act.Kind.WATER_CHANGE)
                .allSatisfy(act -> assertThat(act.amount().orElseThrow()).isBetween(5.0, 50.0));
        List<Act.Kind> kinds = acts.stream().map(Act::kind).toList();
        if (kinds.contains(Act.Kind.BICARBONATE)) {
            assertThat(kinds.indexOf(Act.Kind.SALT)).isLessThan(kinds.indexOf(Act.Kind.BICARBONATE));
            assertThat(kinds).doesNotContain(Act.Kind.LEAVE_ALKALINITY);
        }
    }

    /** A rise in exposure of less than a hundredth is no reason to let the pH fall. */
    @Test
    void tank_whoseLittleAmmoniaCannotMakeMuchNitrite_isGivenAlkalinityAtOnce() {
        assertThat(new Advisor().advise(soft(6.6, 0.1, 0.1), readings(6.6, 0.1, 0.1)).acts()).extracting(Act::kind)
                .contains(Act.Kind.BICARBONATE).doesNotContain(Act.Kind.LEAVE_ALKALINITY);
    }

    @ParameterizedTest(name = "pH {0}, ammonia {1}, nitrite {2}")
    @CsvSource({"6.6, 0.2, 0.1", "6.8, 0.4, 0.03", "6.8, 0.7, 0.03"})
    void nothingThatBringsAlkalinityBack_harmsByItself(double ph, double ammonia, double nitrite) {
        for (Remedy remedy : new Advisor().advise(soft(ph, ammonia, nitrite), readings(ph, ammonia, nitrite))
                .remedies()) {
            if (remedy.act().kind() != Act.Kind.SKIP_FEED) {
                assertThat(remedy.effect().filter(Effect::harms)).as("%s", remedy).isEmpty();
            }
        }
    }

    /** What else may be wrong with it is no answer to what is used up. */
    @Test
    void doubtfulChiller_doesNotHideIt() {
        List<Observation> warming = with(
                FINE.withPh(6.6).withTotalAmmoniaMgPerL(0.4).withNitriteMgPerL(0.03).lastRead(1.1),
                read(1.1, Analyte.ALKALINITY, 5, 5), read(0.1, Analyte.TEMPERATURE, 15, 0.25));
        List<Act> acts = new Advisor().advise(Water.lookAhead(tank(), warming), warming).acts();
        assertThat(acts).extracting(Act::kind).contains(Act.Kind.CHECK_CHILLER, Act.Kind.SALT)
                .containsAnyOf(Act.Kind.WATER_CHANGE, Act.Kind.LEAVE_ALKALINITY);
    }

    /** Water no harder than the tank's brings nothing. */
    @Test
    void change_fromASourceAsSoftAsTheTank_isNotHauled() {
        List<Act> acts = new Advisor().advise(
                Water.lookAhead(tank().sourceAlkalinityMgPerL(4), readings(6.6, 0.4, 0.03)),
                readings(6.6, 0.4, 0.03)).acts();
        assertThat(acts).extracting(Act::kind).doesNotContain(Act.Kind.WATER_CHANGE);
    }

    /** Salt against nitrite is needed whether or not alkalinity can be brought back. */
    @Test
    void nitriteFarBeyondItsLimit_isGivenSalt_whereNothingBringsAlkalinityBack() {
        List<Observation> readings = with(FINE.withTemperatureC(27).withNitriteMgPerL(0.5).lastRead(0.1).stream()
                .filter(each -> each.analyte() != Analyte.PH).toList(), read(0.1, Analyte.ALKALINITY, 5, 2));
        assertThat(new Advisor().advise(Water.lookAhead(tank().sourceAlkalinityMgPerL(8).chlorideMgPerL(2), readings),
                readings).acts()).extracting(Act::kind).contains(Act.Kind.SALT);
    }

    /** Its filter has stopped for want of alkalinity, read or not; salt is there before it wakes. */
    @Test
    void sourTankWithMuchAmmonia_isLeft_withSaltAndWithoutFeed() {
        List<Observation> unread = FINE.withPh(5.8).withTotalAmmoniaMgPerL(5).lastRead(0.1);
        assertThat(List.of(unread, with(unread, read(0.1, Analyte.ALKALINITY, 5, 2)))).allSatisfy(readings ->
                assertThat(new Advisor().advise(Water.lookAhead(feedingFish(), readings), readings).acts())
                        .extracting(Act::kind).contains(Act.Kind.LEAVE_WATER, Act.Kind.SALT, Act.Kind.SKIP_FEED)
                        .doesNotContain(Act.Kind.WATER_CHANGE));
    }

    /** By no more than half a unit at once (common practice, no source). */
    @ParameterizedTest(name = "pH {0}, alkalinity {1} mg/L")
    @CsvSource({"5.4, 1", "5.8, 2", "6.2, 3", "6.6, 5"})
    void nothingThatBringsAlkalinityBack_liftsThePhByMoreThanFishBear(double ph, double alkalinity) {
        List<Observation> readings = with(FINE.withPh(ph).withTotalAmmoniaMgPerL(0.05).withNitriteMgPerL(0.01)
                .lastRead(0.1), read(0.1, Analyte.ALKALINITY, alkalinity, 1));
        LookAhead ahead = Water.lookAhead(tank(), readings);
        assertThat(new Advisor().advise(ahead, readings).acts())
                .filteredOn(act -> act.kind() == Act.Kind.BICARBONATE || act.kind() == Act.Kind.WATER_CHANGE)
                .isNotEmpty().allSatisfy(act -> assertThat(ahead.liftsPh(deed(act))).isLessThanOrEqualTo(0.5));
    }

    /** However little it does in three days, and without a word of ammonia that nobody found. */
    @ParameterizedTest(name = "pH {0}")
    @ValueSource(doubles = {5.4, 5.2, 5.0, 4.5})
    void sourWaterWithAlkalinityEnough_isAiredOrChanged(double ph) {
        List<Observation> readings = with(FINE.withPh(ph).withTotalAmmoniaMgPerL(0).withNitriteMgPerL(0).lastRead(0.1),
                read(0.1, Analyte.ALKALINITY, 80, 5));
        assertThat(new Advisor().advise(Water.lookAhead(feedingFish(), readings), readings).acts())
                .extracting(Act::kind).containsAnyOf(Act.Kind.MORE_AIR, Act.Kind.WATER_CHANGE)
                .doesNotContain(Act.Kind.LEAVE_ALKALINITY);
    }

    private static Deed deed(Act act) {
        double amount = act.amount().orElseThrow();
        return act.kind() == Act.Kind.WATER_CHANGE ? Deed.waterChange(amount / 100)
                : Deed.bakingSoda(amount / Carbonate.bicarbonateG(1, VOLUME_L));
    }

    private static List<Observation> readings(double ph, double ammonia, double nitrite) {
        return with(FINE.withPh(ph).withTotalAmmoniaMgPerL(ammonia).withNitriteMgPerL(nitrite).lastRead(0.1),
                read(0.1, Analyte.ALKALINITY, 5, 5));
    }

    private static LookAhead soft(double ph, double ammonia, double nitrite) {
        return Water.lookAhead(tank(), readings(ph, ammonia, nitrite));
    }

    private static TankFacts.Builder tank() {
        return feedingFish().volumeL(VOLUME_L).eggs(57).sourceAlkalinityMgPerL(28).chlorideMgPerL(14);
    }
}
