package org.tankrounds.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.tankrounds.testing.Water.FINE;
import static org.tankrounds.testing.Water.feedingFish;
import static org.tankrounds.testing.Water.read;
import static org.tankrounds.testing.Water.with;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.forecast.Deed;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Effect;
import org.tankrounds.forecast.LookAhead;
import org.tankrounds.testing.Water;
import org.tankrounds.water.Analyte;

/** Amounts for a tank of 55 US gallons, 208.198 L, against values worked outside this project. */
class AmountsTest {
    private static final double GALLONS_55_L = 208.198;

    /** NaCl = (target − now) · 1.648458 mg/L (atomic masses); 5 → 60 mg/L in 208.198 L: 18.8763 g. */
    @Test
    void salt_from5To60() {
        assertThat(grams(tank().chlorideMgPerL(5), FINE.withNitriteMgPerL(0.3).lastRead(0.1), Act.Kind.SALT))
                .isCloseTo(18.8763, within(1e-4));
    }

    /** NaHCO3 = ΔAlk · 1.678673 · L / 1000 (stoichiometry): +10 mg/L in 208.198 L: 3.49496 g. */
    @Test
    void bakingSoda_for10MgPerL() {
        assertThat(grams(tank(), with(FINE.withPh(5.7).withTotalAmmoniaMgPerL(0.1).lastRead(0.1),
                read(1, Analyte.ALKALINITY, 15, 5)), Act.Kind.BICARBONATE)).isCloseTo(3.49496, within(1e-5));
    }

    /**
     * 2 S2O3²⁻ + Cl2 → S4O6²⁻ + 2 Cl⁻: 100 L at 1.5 mg/L take 1.05006 g of the pentahydrate. A card that
     * shows 0.75 mg/L may hide as much again.
     */
    @Test
    void thiosulfate_for100LitresAtTwice0point75() {
        assertThat(grams(tank().volumeL(100), with(FINE.lastRead(0.1), read(0, Analyte.CHLORINE, 0.75, 0.1)),
                Act.Kind.THIOSULFATE)).isCloseTo(1.05006, within(1e-5));
    }

    /** Half a day takes more (computed in AdvisorTest); what an adult carries in: common practice, no source. */
    @ParameterizedTest(name = "{0} °C")
    @CsvSource({"19.5", "21", "24"})
    void ice_isNoMoreThanOneLoadOf10Kg_andThatIsWhatIsTried(double temperatureC) {
        List<Observation> readings = FINE.withTemperatureC(temperatureC).lastRead(0.1);
        LookAhead ahead = Water.lookAhead(tank(), readings);
        Remedy ice = new Advisor().advise(ahead, readings).remedies().stream()
                .filter(remedy -> remedy.act().kind() == Act.Kind.ICE).findFirst().orElseThrow();
        assertThat(ice.act().amount()).hasValue(10);
        assertThat(ice.act().secondAmount().orElseThrow()).isGreaterThan(10);
        assertThat(ice.act().secondUnit()).isEqualTo("kg");
        // 10 kg · (334 000 + 4186 · 17) J/kg over 208.198 L · 4186 J/(kg K) is 4.6488 K.
        Effect tried = ahead.effect(Deed.ice(4.6488, 17), Driver.TEMPERATURE);
        assertThat(ice.effect().orElseThrow().levelWith().orElseThrow())
                .isCloseTo(tried.levelWith().orElseThrow(), within(1e-3));
    }

    /** 10 mg/L · 1.678673 · 208.198 L / 1000 = 3.49496 g; the salt first: (60 − 14) · 1.648458 · 0.208198 g. */
    @Test
    void bakingSoda_whereNitriteMayRise_isGivenAfterSalt() {
        List<Observation> readings = with(
                FINE.withPh(6.8).withTotalAmmoniaMgPerL(0.2).withNitriteMgPerL(0.05).lastRead(0.1),
                read(0.1, Analyte.ALKALINITY, 15, 2));
        TankFacts.Builder soft = tank().sourceAlkalinityMgPerL(28).chlorideMgPerL(14);
        assertThat(grams(soft, readings, Act.Kind.BICARBONATE)).isCloseTo(3.49496, within(1e-5));
        assertThat(grams(soft, readings, Act.Kind.SALT)).isCloseTo(15.7875, within(1e-4));
    }

    /** 5 to 20 % with harder water (common practice, no source); a fifth of 208.198 L is 41.6396 L. */
    @Test
    void waterChange_whereNitriteMayRise_isAFifthAtMost() {
        List<Observation> readings = with(FINE.withPh(6.8).withTotalAmmoniaMgPerL(0.4).lastRead(0.1),
                read(0.1, Analyte.ALKALINITY, 5, 5));
        LookAhead ahead = Water.lookAhead(tank().sourceAlkalinityMgPerL(28).chlorideMgPerL(14), readings);
        Act change = act(ahead, readings, Act.Kind.WATER_CHANGE);
        assertThat(change.amount()).hasValue(20);
        assertThat(change.secondAmount().orElseThrow()).isCloseTo(41.6396, within(1e-4));
    }

    /** The least of 10, 15 … % after which three of four courses keep under 0.9 of the limit for a day. */
    @ParameterizedTest(name = "nitrite {0} mg N/L")
    @CsvSource({"0.26", "0.27", "0.28"})
    void waterChange_isTheLeastThatIsEnough(double nitriteMgPerL) {
        List<Observation> readings = with(FINE.withNitriteMgPerL(nitriteMgPerL).lastRead(0.1),
                read(0.1, Analyte.ALKALINITY, 75, 5));
        LookAhead ahead = Water.lookAhead(tank(), readings);
        double percent = act(ahead, readings, Act.Kind.WATER_CHANGE).amount().orElseThrow();
        assertThat(ahead.highU(Deed.waterChange(percent / 100), Driver.NITRITE)).isLessThanOrEqualTo(0.9);
        assertThat(ahead.highU(Deed.waterChange((percent - 5) / 100), Driver.NITRITE)).isGreaterThan(0.9);
    }

    /**
     * A tank gone sour on hard source water: a quarter of 240 mg/L on top of three quarters of 20 lifts the
     * pH by half a unit, which is a factor of 3.1 in un-ionised ammonia (Emerson et al. 1975 at 10 °C: 0.1853
     * % at pH 7.0, 0.5835 % at 7.5), more than a quarter of fresh water takes out.
     */
    @Test
    void waterChange_whereTheSourceWouldMakeTheAmmoniaHarmful_isWarnedOf() {
        List<Observation> readings = with(FINE.withPh(7).withTotalAmmoniaMgPerL(8).lastRead(0.1),
                read(1, Analyte.ALKALINITY, 20, 5));
        LookAhead ahead = Water.lookAhead(tank().sourceAlkalinityMgPerL(240), readings);
        assertThat(ahead.effect(Deed.waterChange(0.5), Driver.UN_IONISED_AMMONIA).harms()).isTrue();
        assertThat(new Advisor().advise(ahead, readings).acts()).extracting(Act::kind)
                .contains(Act.Kind.LEAVE_WATER).doesNotContain(Act.Kind.WATER_CHANGE);
    }

    /**
     * The same for 100 L: 2 · 0.1678673 g of soda, for more would lift a pH of 5.8 too fast, (60 − 12) · 0.1648458 g of
     * salt, 1 mg/L · 0.70004 g.
     */
    @Test
    void doses_whereNobodySaidHowMuchWaterThereIs_areFor100Litres() {
        TankFacts.Builder unsized = TankFacts.of("unsized").eggs(100).chlorideMgPerL(12).sourceAlkalinityMgPerL(80)
                .eggsReceivedAt(Water.AS_OF.minus(Duration.ofDays(145))).thermalUnitsC(250);
        List<Observation> sour = with(FINE.withPh(5.8).withTotalAmmoniaMgPerL(0.1).lastRead(0.1),
                read(0.1, Analyte.ALKALINITY, 5, 5));
        assertDose(unsized, sour, Act.Kind.BICARBONATE, 0.3357346);
        assertDose(unsized, FINE.withNitriteMgPerL(0.4).lastRead(0.1), Act.Kind.SALT, 48 * 0.1648458);
        assertDose(unsized, with(FINE.lastRead(0.1), read(0.05, Analyte.CHLORINE, 0.5, 0.1)), Act.Kind.THIOSULFATE,
                0.70004);
    }

    private static void assertDose(TankFacts.Builder facts, List<Observation> readings, Act.Kind kind, double grams) {
        Act act = act(Water.lookAhead(facts, readings), readings, kind);
        assertThat(act.unit()).isEqualTo("g/100 L");
        assertThat(act.amount().orElseThrow()).isCloseTo(grams, within(1e-4));
    }

    /** Bottles of a tenth of the water at most (common practice, no source). */
    @Test
    void ice_ofASmallTank_isNoMoreThanItHasRoomFor() {
        List<Observation> warm = FINE.withTemperatureC(25).lastRead(0.1);
        assertThat(grams(feedingFish().volumeL(40), warm, Act.Kind.ICE)).isEqualTo(4);
    }

    /** With the chlorine gone into the air, or come again, nobody knows what to dose. */
    @Test
    void chlorineReadDaysAgo_isReadAgainFirst() {
        List<Observation> readings = with(FINE.lastRead(0.1), read(2.5, Analyte.CHLORINE, 2, 0.1));
        List<Act> acts = new Advisor().advise(Water.lookAhead(tank(), readings), readings).acts();
        assertThat(acts).extracting(Act::kind).doesNotContain(Act.Kind.THIOSULFATE);
        assertThat(acts).extracting(Act::asks).contains("chlorine");
    }

    /** Ten times 8 mg N/L is more than 60 mg/L of chloride: (100 − 12) · 1.648458 · 0.208198 g. */
    @Test
    void salt_whereNitriteIsVeryHigh_bringsChlorideTo100() {
        assertThat(grams(tank(), FINE.withNitriteMgPerL(8).lastRead(0.1), Act.Kind.SALT))
                .isCloseTo(30.2019, within(1e-3));
    }

    private static double grams(TankFacts.Builder facts, List<Observation> readings, Act.Kind kind) {
        return act(Water.lookAhead(facts, readings), readings, kind).amount().orElseThrow();
    }

    private static Act act(LookAhead ahead, List<Observation> readings, Act.Kind kind) {
        return new Advisor().advise(ahead, readings).acts().stream()
                .filter(act -> act.kind() == kind).findFirst().orElseThrow();
    }

    private static TankFacts.Builder tank() {
        return feedingFish().volumeL(GALLONS_55_L);
    }
}
