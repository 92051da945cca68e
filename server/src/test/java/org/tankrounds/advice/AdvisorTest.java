package org.tankrounds.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.tankrounds.testing.Water.FINE;
import static org.tankrounds.testing.Water.eggs;
import static org.tankrounds.testing.Water.feedingFish;
import static org.tankrounds.testing.Water.read;
import static org.tankrounds.testing.Water.with;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.LookAhead;
import org.tankrounds.forecast.SeriesForecast;
import org.tankrounds.testing.Water;
import org.tankrounds.water.Analyte;

/** Amounts against the formulas worked by hand for a tank of 190 L in a room of 21 °C. */
class AdvisorTest {

    @Test
    void steadyTank_needsNothing() {
        assertThat(advise(feedingFish(), FINE.lastRead(0.1))).isEmpty();
    }

    @Test
    void readingThatFitsNoOther_isAskedForAgain() {
        List<Act> acts = advise(feedingFish(), with(FINE.lastRead(1), read(0.1, Analyte.TOTAL_AMMONIA, 10, 2.5)));
        assertThat(acts).anySatisfy(act -> {
            assertThat(act.kind()).isEqualTo(Act.Kind.ASK_FOR_READING);
            assertThat(act.asks()).isEqualTo("total_ammonia");
        });
    }

    @ParameterizedTest(name = "{0} mg N/L")
    @ValueSource(doubles = {0.3, 0.36, 0.42})
    void waterChange_bringsNitriteUnderItsLimit(double nitriteMgPerL) {
        List<Observation> readings = with(FINE.withNitriteMgPerL(nitriteMgPerL).lastRead(0.1),
                read(0.1, Analyte.ALKALINITY, 75, 5));
        Forecast forecast = Water.forecast(feedingFish(), readings);
        Act change = only(advise(feedingFish(), readings), Act.Kind.WATER_CHANGE);
        SeriesForecast nitrite = forecast.series().get(2);
        double held = nitrite.fan().get(0).q50();
        double left = held * (1 - change.amount().getAsDouble() / 100);
        assertThat(left).isLessThan(nitrite.limit().getAsDouble());
        assertThat(change.amount().getAsDouble()).isBetween(10.0, 50.0);
        assertThat(change.amount().getAsDouble() % 5).isZero();
        assertThat(change.secondAmount().getAsDouble())
                .isCloseTo(190 * change.amount().getAsDouble() / 100, within(1e-9));
    }

    /** What a week ago was nitrite may since be a tank gone sour, whose filter fresh water only wakes. */
    @Test
    void waterChange_whereNitriteWasReadDaysAgo_waitsForAReading() {
        List<Act> acts = advise(feedingFish(), FINE.withNitriteMgPerL(0.4).lastRead(4));
        assertThat(acts).extracting(Act::kind).contains(Act.Kind.SALT).doesNotContain(Act.Kind.WATER_CHANGE);
        assertThat(acts).extracting(Act::asks).contains("nitrite");
    }

    @Test
    void waterChange_whereNeitherPhNorAmmoniaIsRead_waitsForThePh() {
        List<Observation> readings = FINE.withNitriteMgPerL(0.4).lastRead(0.1);
        readings.removeIf(o -> o.analyte() == Analyte.PH || o.analyte() == Analyte.TOTAL_AMMONIA);
        List<Act> acts = advise(feedingFish(), readings);
        assertThat(acts).extracting(Act::kind).doesNotContain(Act.Kind.WATER_CHANGE);
        assertThat(acts).extracting(Act::asks).contains("ph");
    }

    /** Fresh alkalinity would wake the filter; so no water is changed before the salt. */
    @Test
    void nitriteUnderItsLimit_whereThePhTellsOfLittleAlkalinity_isMetWithSaltFirst() {
        Water soft = FINE.withPh(6.8).withNitriteMgPerL(0.25).withTotalAmmoniaMgPerL(0.5);
        List<Observation> readings = soft.lastRead(0.1);
        List<Remedy> remedies = new Advisor().advise(Water.lookAhead(feedingFish(), readings), readings).remedies();
        assertThat(remedies.get(0).act().kind()).isEqualTo(Act.Kind.SALT);
        assertThat(remedies).filteredOn(each -> each.act().kind() == Act.Kind.WATER_CHANGE)
                .allSatisfy(each -> assertThat(each.leansOn()).contains(Act.Kind.SALT));
    }

    /** Half of the water of a tank whose alkalinity nobody knows may lift the pH more than it takes ammonia out. */
    @Test
    void waterChange_whereTheAlkalinityDecides_waitsForIt() {
        List<Act> acts = advise(feedingFish(), FINE.withTotalAmmoniaMgPerL(8).lastRead(0.1));
        assertThat(acts).extracting(Act::kind).doesNotContain(Act.Kind.WATER_CHANGE);
        assertThat(acts).extracting(Act::asks).contains("alkalinity");
    }

    @Test
    void feed_isWithheldInTrouble() {
        assertThat(advise(feedingFish(), FINE.withTotalAmmoniaMgPerL(8).lastRead(0.1)))
                .extracting(Act::kind).contains(Act.Kind.SKIP_FEED);
        assertThat(advise(feedingFish(), FINE.withNitriteMgPerL(0.4).lastRead(0.1)))
                .extracting(Act::kind).contains(Act.Kind.SKIP_FEED);
    }

    @Test
    void hopelessWater_isChangedByHalfAtOnceAndNoMore() {
        List<Act> acts = advise(feedingFish(), with(FINE.withTotalAmmoniaMgPerL(8).lastRead(0.1),
                read(0.1, Analyte.ALKALINITY, 80, 5)));
        assertThat(only(acts, Act.Kind.WATER_CHANGE).amount()).hasValue(50);
    }

    /** NaCl per chloride 1.648458: from 12 to 60 mg/L in 190 L. */
    @Test
    void salt_bringsChlorideTo60() {
        List<Act> acts = advise(feedingFish(), FINE.withNitriteMgPerL(0.4).lastRead(0.1));
        assertThat(only(acts, Act.Kind.SALT).amount().getAsDouble())
                .isCloseTo(48 * 1.648458 * 190 / 1000, within(1e-6));
    }

    @Test
    void salt_whereMeasuredChlorideIsEnough_isNotAskedFor() {
        List<Act> acts = advise(feedingFish().chlorideMgPerL(2),
                with(FINE.withNitriteMgPerL(2).lastRead(0.1), read(0.2, Analyte.CHLORIDE, 80, 5)));
        assertThat(acts).extracting(Act::kind).contains(Act.Kind.WATER_CHANGE).doesNotContain(Act.Kind.SALT);
    }

    /**
     * Bare glass, 18.028 W/K, to hold 17 °C for 12 h: 18.028 × 4 K × 43 200 s / (334 000 + 4186 × 17) J/kg =
     * 7.69 kg; from 19.5 °C, as of its last reading, first down to it: 190 × 4186 × 2.5 / 405 162 = 4.91 kg
     * more. Of that one load is carried.
     */
    @Test
    void ice_meltsForTheRoomsHeatAndForWhatTheWaterHasTooMuch() {
        List<Act> acts = advise(feedingFish(), FINE.withTemperatureC(19.5).lastRead(0.1));
        assertThat(only(acts, Act.Kind.ICE).secondAmount().getAsDouble()).isCloseTo(7.69 + 4.91, within(0.01));
        assertThat(acts.get(0).kind()).isEqualTo(Act.Kind.CHECK_CHILLER);
    }

    /** Eggs are held at 12 °C: 18.028 × 9 × 43 200 / (334 000 + 4186 × 12) + 190 × 4186 × 2 / 384 232 kg. */
    @Test
    void ice_forEggs_holdsThemColder() {
        List<Act> acts = advise(eggs(), FINE.withTemperatureC(14).lastRead(0.1));
        assertThat(only(acts, Act.Kind.ICE).secondAmount().getAsDouble()).isCloseTo(18.24 + 4.14, within(0.01));
    }

    /** A smaller tank has the surface of its size: 18.028 × (95 / 190)^(2/3) W/K. */
    @Test
    void ice_forHalfTheVolume_isMoreThanHalf() {
        double whole = only(advise(feedingFish(), FINE.withTemperatureC(19.5).lastRead(0.1)), Act.Kind.ICE)
                .secondAmount().getAsDouble();
        double half = only(advise(feedingFish().volumeL(95), FINE.withTemperatureC(19.5).lastRead(0.1)),
                Act.Kind.ICE).amount().getAsDouble();
        assertThat(half).isCloseTo(7.69 * 0.63 + 4.91 / 2, within(0.01));
        assertThat(half).isGreaterThan(whole / 2);
    }

    /** Baking soda 1.678673 per CaCO3, at most 10 mg/L at once: 3.189 g in 190 L. */
    @Test
    void bicarbonate_raisesLowAlkalinityByLittleAtOnce() {
        List<Act> acts = advise(feedingFish(), with(FINE.withPh(5.7).withTotalAmmoniaMgPerL(0.1).lastRead(0.1),
                read(1, Analyte.ALKALINITY, 15, 5)));
        assertThat(only(acts, Act.Kind.BICARBONATE).amount().getAsDouble())
                .isCloseTo(10 * 1.678673 * 190 / 1000, within(1e-6));
    }

    /** Woken nitrifiers turn what ammonia there is into nitrite at a stroke. */
    @ParameterizedTest(name = "nitrite {0} mg N/L")
    @ValueSource(doubles = {0.25, 10})
    void bicarbonate_whereNitriteWasHighThisWeek_isWithheld(double nitriteMgPerL) {
        List<Act> acts = advise(feedingFish(), with(FINE.withPh(5.7).withTotalAmmoniaMgPerL(0.1).lastRead(0.1),
                read(5, Analyte.NITRITE, nitriteMgPerL, 0.05), read(1, Analyte.ALKALINITY, 15, 5)));
        assertThat(acts).extracting(Act::kind).doesNotContain(Act.Kind.BICARBONATE);
        assertThat(acts).isNotEmpty();
    }

    @Test
    void bicarbonate_whereNitriteIsUnreadForAWeek_waitsForThat() {
        List<Observation> readings = with(FINE.withPh(5.7).withTotalAmmoniaMgPerL(0.1).lastRead(0.1),
                read(1, Analyte.ALKALINITY, 15, 5));
        Instant aWeekAgo = Water.AS_OF.minus(Duration.ofDays(8));
        readings.removeIf(o -> o.analyte() == Analyte.NITRITE && o.at().isAfter(aWeekAgo));
        List<Act> acts = advise(feedingFish(), readings);
        assertThat(acts).extracting(Act::kind).doesNotContain(Act.Kind.BICARBONATE);
        assertThat(acts).extracting(Act::asks).contains("nitrite");
    }

    /** Sour on hard source water, with ammonia high: much fresh water would lift the pH at a stroke. */
    @Test
    void sourTank_whereAFifthOfFreshWaterWouldHarm_isChangedByLessOrNotAtAll() {
        List<Observation> readings = with(FINE.withPh(5.8).withTotalAmmoniaMgPerL(6).lastRead(0.1),
                read(0.1, Analyte.ALKALINITY, 5, 2));
        assertThat(advise(feedingFish().sourceAlkalinityMgPerL(150), readings)).isNotEmpty()
                .extracting(Act::kind).contains(Act.Kind.LEAVE_WATER).doesNotContain(Act.Kind.WATER_CHANGE);
        Act change = only(advise(feedingFish().sourceAlkalinityMgPerL(20),
                with(FINE.withPh(5.8).withTotalAmmoniaMgPerL(2).lastRead(0.1),
                        read(0.1, Analyte.ALKALINITY, 5, 2))), Act.Kind.WATER_CHANGE);
        assertThat(change.amount().getAsDouble()).isBetween(5.0, 20.0);
    }

    /** All alkalinity used up, everything read today: as of a tank on soft water whose changes have stopped. */
    @ParameterizedTest(name = "nitrite {0} mg N/L")
    @ValueSource(doubles = {0.02, 0.1})
    void softWaterUsedUp_whereAllIsReadToday_isGivenMoreThanAnotherReading(double nitriteMgPerL) {
        List<Observation> readings = with(FINE.withPh(6.6).withTotalAmmoniaMgPerL(0.2)
                .withNitriteMgPerL(nitriteMgPerL).lastRead(0.1), read(0.1, Analyte.ALKALINITY, 0, 9));
        List<Act> acts = advise(feedingFish().volumeL(110).eggs(57)
                .sourceAlkalinityMgPerL(28).chlorideMgPerL(14), readings);
        assertThat(acts).isNotEmpty().extracting(Act::asks).doesNotContain("ph", "alkalinity", "total_ammonia");
        assertThat(acts).extracting(Act::kind)
                .containsAnyOf(Act.Kind.BICARBONATE, Act.Kind.WATER_CHANGE, Act.Kind.SKIP_FEED);
    }

    /** Whatever was read within the day is known: then there is something better to do than to read it again. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {51, 52, 53, 54})
    void sourTank_whereAllIsReadToday_isAskedForNoneOfIt(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 20; i++) {
            List<Observation> readings = with(FINE.withPh(5.2 + 1.2 * random.nextDouble())
                    .withTotalAmmoniaMgPerL(8 * random.nextDouble() * random.nextDouble())
                    .withNitriteMgPerL(0.3 * random.nextDouble()).lastRead(0.1),
                    read(0.1, Analyte.ALKALINITY, 100 * random.nextDouble() * random.nextDouble(), 5),
                    read(0.1, Analyte.CHLORIDE, 12, 5));
            List<Act> acts = advise((random.nextBoolean() ? feedingFish() : eggs())
                    .sourceAlkalinityMgPerL(10 + 200 * random.nextDouble()), readings);
            assertThat(acts).as("seed %d, tank %d", seed, i)
                    .filteredOn(act -> act.kind() == Act.Kind.ASK_FOR_READING).extracting(Act::asks)
                    .doesNotContain("ph", "alkalinity", "total_ammonia", "nitrite");
        }
    }

    @Test
    void bicarbonate_whileAmmoniaIsHigh_isWithheld() {
        List<Act> acts = advise(feedingFish(), with(FINE.withPh(5.7).withTotalAmmoniaMgPerL(2).lastRead(0.1),
                read(1, Analyte.ALKALINITY, 15, 5)));
        assertThat(acts).extracting(Act::kind).doesNotContain(Act.Kind.BICARBONATE);
    }

    /** With alkalinity enough it is carbon dioxide that makes water sour; the source brings no more alkalinity. */
    @Test
    void lowPhWithAlkalinityEnough_needsAir() {
        List<Act> acts = advise(feedingFish(),
                with(FINE.withPh(5.7).lastRead(0.1), read(1, Analyte.ALKALINITY, 80, 5)));
        assertThat(acts).extracting(Act::kind).contains(Act.Kind.MORE_AIR)
                .doesNotContain(Act.Kind.BICARBONATE, Act.Kind.WATER_CHANGE);
    }

    @Test
    void lowPhWhileAmmoniaIsHigh_needsFreshWater() {
        List<Act> acts = advise(feedingFish(), with(FINE.withPh(5.7).withTotalAmmoniaMgPerL(2).lastRead(0.1),
                read(1, Analyte.ALKALINITY, 15, 5)));
        assertThat(acts).extracting(Act::kind).contains(Act.Kind.WATER_CHANGE);
    }

    @Test
    void highPh_needsFreshWaterAndASecondReading() {
        List<Act> acts = advise(feedingFish(), FINE.withPh(9.4).withTotalAmmoniaMgPerL(0).lastRead(0.1));
        assertThat(acts).extracting(Act::asks).contains("ph");
        assertThat(acts).extracting(Act::kind).contains(Act.Kind.WATER_CHANGE);
    }

    /** Bad water of every kind on water that is fine, beside a store of things that may have been read. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {61, 62, 63, 64, 65, 66, 67, 68})
    void tankThatSomebodyIsSentTo_isNeverWithoutAdvice(long seed) {
        Random random = new Random(seed);
        for (Driver driver : Driver.values()) {
            for (int i = 0; i < 6; i++) {
                TankFacts.Builder facts = random.nextBoolean() ? feedingFish() : eggs();
                List<Observation> readings = troubled(driver, random);
                LookAhead ahead = Water.lookAhead(facts, readings);
                Forecast forecast = ahead.forecast();
                if (forecast.chance() >= 0.2 || forecast.hoursToLimit().orElse(1) == 0) {
                    assertThat(new Advisor().advise(ahead, readings).acts())
                            .as("seed %d, %s, tank %d: %s", seed, driver, i, forecast.reasons()).isNotEmpty();
                }
            }
        }
    }

    private static List<Observation> troubled(Driver driver, Random random) {
        double much = random.nextDouble();
        double daysAgo = 3 * random.nextDouble();
        List<Observation> readings = new ArrayList<>(switch (driver) {
            case TEMPERATURE -> FINE.withTemperatureC(12 + 14 * much).lastRead(daysAgo);
            case UN_IONISED_AMMONIA -> FINE.withTotalAmmoniaMgPerL(8 * much).lastRead(daysAgo);
            case NITRITE -> FINE.withNitriteMgPerL(4 * much).lastRead(daysAgo);
            case DISSOLVED_OXYGEN -> FINE.withOxygenMgPerL(9 * much).lastRead(daysAgo);
            case PH -> FINE.withPh(random.nextBoolean() ? 4.5 + 2 * much : 8.5 + 2 * much).lastRead(daysAgo);
            case CHLORINE -> with(FINE.lastRead(daysAgo), read(daysAgo / 3, Analyte.CHLORINE, much, 0.1));
            case DEATHS -> with(FINE.lastRead(daysAgo),
                    read(daysAgo, Analyte.DEATHS, 1 + random.nextInt(30), 0.5));
            case SILENCE -> FINE.withTotalAmmoniaMgPerL(2 * much).lastRead(5 + 20 * much);
        });
        if (random.nextBoolean()) {
            readings.add(read(1, Analyte.ALKALINITY, 150 * random.nextDouble(), 5));
        }
        if (random.nextBoolean()) {
            readings.add(read(1, Analyte.CHLORIDE, 100 * random.nextDouble(), 5));
        }
        if (random.nextBoolean()) {
            readings.add(read(0.05, Analyte.TOTAL_AMMONIA, 3 * random.nextDouble(), 0.1));
        }
        return readings;
    }

    @Test
    void bicarbonate_whereThePhIsTooHigh_isNotGiven() {
        List<Act> acts = advise(feedingFish(), with(FINE.withPh(9.4).withTotalAmmoniaMgPerL(0).lastRead(0.1),
                read(1, Analyte.ALKALINITY, 15, 5)));
        assertThat(acts).extracting(Act::kind).doesNotContain(Act.Kind.BICARBONATE);
        assertThat(acts).isNotEmpty();
    }

    @Test
    void lowPhWithoutAlkalinity_asksForIt() {
        List<Act> acts = advise(feedingFish(), FINE.withPh(5.7).lastRead(0.1));
        assertThat(acts).extracting(Act::asks).contains("alkalinity");
    }

    /** "7 to 1", for twice the 0.5 mg/L that a card shows, in 190 L. */
    @Test
    void chlorine_isNeutralisedSevenToOne() {
        List<Act> acts = advise(feedingFish(),
                with(FINE.lastRead(0.1), read(0.05, Analyte.CHLORINE, 0.5, 0.1)));
        assertThat(only(acts, Act.Kind.THIOSULFATE).amount().getAsDouble())
                .isCloseTo(2 * 0.5 * 7.000371 * 190 / 1000, within(1e-6));
    }

    @Test
    void littleOxygen_needsMoreAir() {
        assertThat(advise(feedingFish(), FINE.withOxygenMgPerL(4.5).lastRead(0.1)))
                .extracting(Act::kind).contains(Act.Kind.MORE_AIR);
    }

    @Test
    void unknownVolume_givesTheDoseFor100Litres_andTheChangeWithoutLitres() {
        Act salt = only(advise(feedingFish().volumeL(null), FINE.withNitriteMgPerL(0.4).lastRead(0.1)),
                Act.Kind.SALT);
        assertThat(salt.unit()).isEqualTo(Act.G_PER_100_L);
        Act change = only(advise(feedingFish().volumeL(null), FINE.withNitriteMgPerL(0.4).lastRead(0.1)),
                Act.Kind.WATER_CHANGE);
        assertThat(change.amount()).isPresent();
        assertThat(change.secondAmount()).isEmpty();
    }

    @Test
    void silentTank_isAskedForReadings() {
        List<Act> acts = advise(feedingFish(), FINE.lastRead(10));
        assertThat(acts).extracting(Act::kind).contains(Act.Kind.ASK_FOR_READING);
        assertThat(acts).extracting(Act::asks).contains("temperature", "nitrite");
    }

    @Test
    void deaths_callForALookAtTheFish() {
        List<Act> acts = advise(feedingFish(), with(FINE.lastRead(0.1), read(0.1, Analyte.DEATHS, 12, 0.5)));
        assertThat(only(acts, Act.Kind.LOOK_AT_FISH).driver()).isEqualTo(Optional.of(Driver.DEATHS));
    }

    private static Act only(List<Act> acts, Act.Kind kind) {
        List<Act> found = acts.stream().filter(act -> act.kind() == kind).toList();
        assertThat(found).as("%s in %s", kind, acts).hasSize(1);
        return found.get(0);
    }

    private static List<Act> advise(TankFacts.Builder facts, List<Observation> readings) {
        return new Advisor().advise(Water.lookAhead(facts, readings), readings).acts();
    }
}
