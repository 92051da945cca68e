package org.tankrounds.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.testing.Water.FINE;
import static org.tankrounds.testing.Water.eggs;
import static org.tankrounds.testing.Water.feedingFish;
import static org.tankrounds.testing.Water.read;
import static org.tankrounds.testing.Water.with;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.forecast.Deed;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Effect;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.LookAhead;
import org.tankrounds.testing.Water;
import org.tankrounds.water.Analyte;

/** What is said of each act: the same futures with it and without it. */
class EffectsTest {

    @Test
    void effect_startsFromTheForecastThatIsShown() {
        List<Observation> readings = FINE.withNitriteMgPerL(0.35).lastRead(0.1);
        LookAhead ahead = Water.lookAhead(feedingFish(), readings);
        for (Effect effect : effects(new Advisor().advise(ahead, readings))) {
            assertThat(effect.chanceWithout()).isEqualTo(ahead.forecast().chance());
            assertThat(effect.exposureWithout()).isEqualTo(ahead.forecast().exposure());
        }
    }

    @Test
    void nitriteTank_isHelpedByFreshWaterAndSalt_andMoreByBoth() {
        List<Observation> readings = with(FINE.withNitriteMgPerL(0.35).lastRead(0.1),
                read(0.1, Analyte.ALKALINITY, 75, 5));
        Advice advice = new Advisor().advise(Water.lookAhead(feedingFish(), readings), readings);
        Effect change = of(advice, Act.Kind.WATER_CHANGE);
        Effect salt = of(advice, Act.Kind.SALT);
        Effect together = advice.together().orElseThrow();
        assertThat(change.chanceWith()).isLessThan(change.chanceWithout() - 0.1);
        assertThat(change.levelWith().orElseThrow()).isLessThan(change.levelWithout().orElseThrow());
        assertThat(salt.chanceWith()).isLessThan(salt.chanceWithout() - 0.1);
        assertThat(together.chanceWith()).isLessThan(Math.min(change.chanceWith(), salt.chanceWith()));
        assertThat(together.exposureWith()).isLessThanOrEqualTo(Math.min(change.exposureWith(), salt.exposureWith()));
    }

    /** Bad water of every kind, read well or badly, in tanks of every age. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {71, 72, 73, 74})
    void actThatWouldHarm_isNeverAdvised(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 25; i++) {
            TankFacts.Builder facts = (random.nextBoolean() ? feedingFish() : eggs())
                    .sourceAlkalinityMgPerL(15 + 240 * random.nextDouble());
            List<Observation> readings = water(random);
            Advice advice = new Advisor().advise(Water.lookAhead(facts, readings), readings);
            for (Effect effect : effects(advice)) {
                assertThat(effect.chanceWith()).as("seed %d, tank %d, %s", seed, i, advice)
                        .isBetween(0.0, effect.chanceWithout());
                assertThat(effect.exposureWith()).as("seed %d, tank %d, %s", seed, i, advice)
                        .isBetween(0.0, effect.exposureWithout());
            }
        }
    }

    /** Whoever does all of it must not be worse off than with the best of it. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {81, 82, 83, 84})
    void allTogether_isNeverWorseThanTheBestAlone(long seed) {
        Random random = new Random(seed);
        int together = 0;
        for (int i = 0; i < 25; i++) {
            TankFacts.Builder facts = feedingFish().sourceAlkalinityMgPerL(15 + 240 * random.nextDouble());
            List<Observation> readings = water(random);
            LookAhead ahead = Water.lookAhead(facts, readings);
            for (Advisor advisor : List.of(new Advisor(), new Advisor(Trusts.full()))) {
                Advice advice = advisor.advise(ahead, readings);
                together += advice.together().isPresent() ? 1 : 0;
                advice.together().ifPresent(all -> advice.remedies().forEach(one -> one.effect().ifPresent(alone ->
                        assertThat(all.isWorseThan(alone)).as("%s of %s", one, advice).isFalse())));
            }
        }
        assertThat(together).isGreaterThan(10);
    }

    @Test
    void advice_ofTheSameTank_isTheSame() {
        List<Observation> readings = water(new Random(75));
        Advice once = new Advisor().advise(Water.lookAhead(feedingFish(), readings), readings);
        Advice again = new Advisor().advise(Water.lookAhead(feedingFish(), readings), readings);
        assertThat(again).isEqualTo(once);
        assertThat(once.remedies()).isNotEmpty();
    }

    @Test
    void eggs_areNeverToldToFast() {
        List<Observation> readings = FINE.withNitriteMgPerL(0.5).withTotalAmmoniaMgPerL(2).lastRead(0.1);
        assertThat(new Advisor().advise(Water.lookAhead(eggs(), readings), readings).acts())
                .isNotEmpty().extracting(Act::kind).doesNotContain(Act.Kind.SKIP_FEED);
    }

    /** A tank that is fine but for its alkalinity: the pH holds for three days, and then it does not. */
    @ParameterizedTest(name = "pH {0}")
    @ValueSource(doubles = {6.4, 6.6, 6.9, 7.2})
    void alkalinityUsedUp_isBroughtBackBeforeThePhFalls(double ph) {
        List<Observation> readings = with(FINE.withPh(ph).withTotalAmmoniaMgPerL(0.1).lastRead(0.1),
                read(0.1, Analyte.ALKALINITY, 0, 9));
        LookAhead ahead = Water.lookAhead(feedingFish().sourceAlkalinityMgPerL(28), readings);
        Advice advice = new Advisor().advise(ahead, readings);
        assertThat(advice.acts()).as("%s", ahead.effect(Deed.bakingSoda(20), Driver.PH))
                .extracting(Act::kind).contains(Act.Kind.BICARBONATE);
    }

    @Test
    void bakingSoda_whereNobodyReadTheAmmonia_waitsForThat() {
        List<Observation> readings = new ArrayList<>(with(FINE.withPh(5.7).lastRead(0.1),
                read(1, Analyte.ALKALINITY, 15, 5)));
        readings.removeIf(o -> o.analyte() == Analyte.TOTAL_AMMONIA);
        List<Act> acts = new Advisor().advise(Water.lookAhead(feedingFish(), readings), readings).acts();
        assertThat(acts).extracting(Act::kind).doesNotContain(Act.Kind.BICARBONATE);
        assertThat(acts).extracting(Act::asks).contains("total_ammonia");
    }

    /** What else may go wrong with the tank is as likely as if the test had found no chlorine. */
    @ParameterizedTest(name = "nitrite {0} mg N/L")
    @ValueSource(doubles = {0.02, 0.15, 0.35})
    void thiosulfate_makesATankNoBetterThanOneWithoutChlorine(double nitriteMgPerL) {
        List<Observation> readings = FINE.withNitriteMgPerL(nitriteMgPerL).lastRead(0.1);
        List<Observation> chlorinated = with(readings, read(0.05, Analyte.CHLORINE, 0.5, 0.1));
        LookAhead ahead = Water.lookAhead(feedingFish(), chlorinated);
        Effect effect = of(new Advisor().advise(ahead, chlorinated), Act.Kind.THIOSULFATE);
        Forecast clean = Water.forecast(feedingFish(), with(readings, read(0.05, Analyte.CHLORINE, 0, 0.1)));
        assertThat(effect.chanceWith()).isBetween(clean.chance() - 1e-9, effect.chanceWithout());
        assertThat(effect.exposureWith()).isBetween(clean.exposure() - 1e-9, effect.exposureWithout());
    }

    private static List<Observation> water(Random random) {
        Water water = FINE.withTemperatureC(8 + 12 * random.nextDouble())
                .withTotalAmmoniaMgPerL(4 * random.nextDouble() * random.nextDouble())
                .withNitriteMgPerL(random.nextDouble() * random.nextDouble())
                .withPh(5.6 + 2.8 * random.nextDouble()).withOxygenMgPerL(4 + 7 * random.nextDouble());
        List<Observation> readings = water.lastRead(2 * random.nextDouble());
        if (random.nextBoolean()) {
            readings.add(read(1, Analyte.ALKALINITY, 3 + 100 * random.nextDouble(), 5));
        }
        return readings;
    }

    /** But of leaving the water, and of feed and air: what is done of these in trouble whatever becomes of the pH. */
    private static List<Effect> effects(Advice advice) {
        List<Effect> effects = new ArrayList<>(advice.together().stream().toList());
        advice.remedies().stream().filter(remedy -> remedy.act().kind() != Act.Kind.LEAVE_WATER
                && remedy.act().kind() != Act.Kind.SKIP_FEED && remedy.act().kind() != Act.Kind.MORE_AIR)
                .forEach(remedy -> remedy.effect().ifPresent(effects::add));
        return effects;
    }

    private static Effect of(Advice advice, Act.Kind kind) {
        return advice.remedies().stream().filter(remedy -> remedy.act().kind() == kind)
                .findFirst().orElseThrow().effect().orElseThrow();
    }
}
