package org.tankrounds.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.tankrounds.testing.Water.FINE;
import static org.tankrounds.testing.Water.feedingFish;
import static org.tankrounds.testing.Water.forecast;
import static org.tankrounds.testing.Water.read;
import static org.tankrounds.testing.Water.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.water.Analyte;

/** What is read of chloride says how much nitrite the fish bear: no slip and no strip may decide that alone. */
class ChlorideTest {
    /** A strip's lowest colour says "less than this", and that fits the tap. */
    @ParameterizedTest(name = "source {0}")
    @ValueSource(doubles = {5, 12})
    void lowestColourOfAChlorideStrip_isNotZero(double sourceMgPerL) {
        TankFacts.Builder facts = feedingFish().chlorideMgPerL(sourceMgPerL);
        List<Observation> calm = FINE.withNitriteMgPerL(0.1).lastRead(0.1);
        Forecast strip = forecast(facts, with(calm, new Observation(
                read(0.2, Analyte.CHLORIDE, 0, 15).at(), Analyte.CHLORIDE, 0, 15, true, false)));
        assertThat(strip.chance()).isEqualTo(forecast(facts, calm).chance());
    }

    /** It leaves only with the water. */
    @Test
    void chlorideThatFellForNoReason_waitsForASecondLook() {
        TankFacts.Builder facts = feedingFish().chlorideMgPerL(40);
        List<Observation> calm = FINE.withNitriteMgPerL(0.1).lastRead(0.1);
        double untold = forecast(facts, calm).chance();
        List<Observation> once = with(calm, read(1.2, Analyte.CHLORIDE, 4, 0));
        assertThat(forecast(facts, once).chance()).isCloseTo(untold, within(0.01));
        assertThat(forecast(facts, with(once, read(0.2, Analyte.CHLORIDE, 5, 0))).chance())
                .isGreaterThan(untold + 0.05);
    }

    /** The reading that puts a slip right is as before. */
    @Test
    void chlorideThatIsBackToTheSources_isBelievedAtOnce() {
        TankFacts.Builder facts = feedingFish().chlorideMgPerL(12);
        List<Observation> run = FINE.withNitriteMgPerL(0.4).lastRead(0.1);
        List<Observation> slip = with(run, read(20.2, Analyte.CHLORIDE, 120, 0));
        assertThat(forecast(facts, with(slip, read(0.2, Analyte.CHLORIDE, 12, 0))).chance())
                .isCloseTo(forecast(facts, run).chance(), within(0.02));
        List<Observation> read = with(run, read(40.2, Analyte.CHLORIDE, 30, 0), read(20.2, Analyte.CHLORIDE, 200, 0));
        assertThat(forecast(facts, with(read, read(0.2, Analyte.CHLORIDE, 31, 0))).chance())
                .isCloseTo(forecast(feedingFish().chlorideMgPerL(31), run).chance(), within(0.03));
    }

    /** Where nobody has told the source, a lone first reading has no more weight than what comes after it. */
    @ParameterizedTest(name = "{0} mg/L, then {1}")
    @CsvSource({"120, 12", "400, 30", "65, 12", "1.2, 12", "45, 5", "30, 4", "45, 0.5"})
    void firstChlorideOfAnUntoldSource_isPutRightByTheNext(double slip, double right) {
        TankFacts.Builder facts = feedingFish().chlorideMgPerL(null);
        List<Observation> run = FINE.withNitriteMgPerL(0.3).lastRead(0.1);
        double said = forecast(facts, with(run, read(5, Analyte.CHLORIDE, right, 0))).chance();
        List<Observation> putRight = with(run, read(40, Analyte.CHLORIDE, slip, 0),
                read(5, Analyte.CHLORIDE, right, 0));
        assertThat(forecast(facts, putRight).chance()).isCloseTo(said, within(0.02));
        List<Observation> changed = with(run, read(41, Analyte.CHLORIDE, slip, 0),
                read(40, Analyte.CHLORIDE, right, 0));
        List<Observation> neighbour = with(run, read(40, Analyte.CHLORIDE, right, 0));
        for (int week = 1; week <= 5; week++) {
            changed = with(changed, read(40 - 7 * week, Analyte.WATER_CHANGE, 20, 0));
            neighbour = with(neighbour, read(40 - 7 * week, Analyte.WATER_CHANGE, 20, 0));
        }
        assertThat(forecast(facts, changed).chance()).isCloseTo(forecast(facts, neighbour).chance(), within(0.02));
    }

    /** A tap of 40 that was once read without its point, or its nought. */
    @Test
    void slipOfThePointAfterTheFirstChloride_waitsForASecondLook() {
        TankFacts.Builder facts = feedingFish().chlorideMgPerL(null);
        List<Observation> run = with(FINE.withNitriteMgPerL(0.3).lastRead(0.1), read(40, Analyte.CHLORIDE, 40, 0),
                read(30, Analyte.CHLORIDE, 40, 0), read(20, Analyte.CHLORIDE, 40, 0));
        assertThat(forecast(facts, with(run, read(36, Analyte.CHLORIDE, 4, 0))).chance())
                .isCloseTo(forecast(facts, run).chance(), within(0.02));
    }

    /** 6 for 60, where a tap of 20 was read once and salt came since. */
    @ParameterizedTest(name = "{0}, salted to {1}, then {2}")
    @CsvSource({"20, 60, 6", "25, 100, 10", "22, 45, 4.5"})
    void slipAmongSalt_waitsForASecondLook(double tap, double salted, double slip) {
        TankFacts.Builder facts = feedingFish().chlorideMgPerL(null);
        List<Observation> run = with(FINE.withNitriteMgPerL(0.3).lastRead(0.1), read(60, Analyte.CHLORIDE, tap, 0),
                read(12, Analyte.CHLORIDE, salted, 0), read(6, Analyte.CHLORIDE, salted, 0));
        assertThat(forecast(facts, with(run, read(2, Analyte.CHLORIDE, slip, 0))).chance())
                .isCloseTo(forecast(facts, run).chance(), within(0.02));
    }

    /** What is read right after salting is no tap's. */
    @Test
    void saltOfAnUntoldSource_isChangedAway() {
        TankFacts.Builder facts = feedingFish().chlorideMgPerL(null);
        List<Observation> run = FINE.withNitriteMgPerL(0.4).lastRead(0.1);
        List<Observation> salted = with(run, read(40, Analyte.CHLORIDE, 65, 0));
        for (int i = 1; i <= 6; i++) {
            run = with(run, read(40 - 6 * i, Analyte.WATER_CHANGE, 40, 0));
            salted = with(salted, read(40 - 6 * i, Analyte.WATER_CHANGE, 40, 0));
        }
        assertThat(forecast(facts, salted).chance())
                .isGreaterThan(forecast(feedingFish().chlorideMgPerL(12), run).chance() - 0.05);
    }

    /** Salt that the engine asked for itself: what is read after a change is what that left, and no tap's. */
    @ParameterizedTest(name = "{0} mg/L, salted to {1}, {3} left after {2} %")
    @CsvSource({"8, 60, 30, 46", "8, 40, 30, 30", ", 100, 50, 54"})
    void saltOfAnUntoldSource_readAfterAChange_isNotTheSources(
            Double tap, double salted, double change, double left) {
        TankFacts.Builder untold = feedingFish().chlorideMgPerL(null);
        List<Observation> run = FINE.withNitriteMgPerL(0.4).lastRead(0.1);
        if (tap != null) {
            run = with(run, read(60, Analyte.CHLORIDE, tap, 0));
        }
        run = with(run, read(50, Analyte.CHLORIDE, salted, 0), read(48, Analyte.WATER_CHANGE, change, 0),
                read(47, Analyte.CHLORIDE, left, 0));
        for (int i = 1; i <= 6; i++) {
            run = with(run, read(47 - 6 * i, Analyte.WATER_CHANGE, 40, 0));
        }
        assertThat(forecast(untold, run).chance())
                .isGreaterThan(forecast(feedingFish().chlorideMgPerL(12), run).chance() - 0.02);
        List<Observation> readAgain = with(run, read(0.2, Analyte.CHLORIDE, 12, 0));
        assertThat(forecast(untold, readAgain).chance())
                .isCloseTo(forecast(feedingFish().chlorideMgPerL(12), readAgain).chance(), within(0.02));
    }

    /** A lost zero after a run of its own. */
    @ParameterizedTest(name = "{0} mg/L")
    @ValueSource(doubles = {20, 30, 40})
    void chlorideOfAnUntoldSource_thatFellForNoReason_waitsForASecondLook(double usual) {
        TankFacts.Builder facts = feedingFish().chlorideMgPerL(null);
        List<Observation> run = FINE.withNitriteMgPerL(0.1).lastRead(0.1);
        for (int week = 1; week <= 4; week++) {
            run = with(run, read(7 * week, Analyte.CHLORIDE, usual, 0));
        }
        assertThat(forecast(facts, with(run, read(0.2, Analyte.CHLORIDE, usual / 10, 0))).chance())
                .isCloseTo(forecast(facts, run).chance(), within(0.01));
    }

    /** Up to the same target again and again, as it is advised: no tap has that. */
    @ParameterizedTest(name = "{0} mg/L, salted to {1} and {2}")
    @CsvSource({"2, 40, 42", "8, 40, 42", "8, 60, 58", ", 60, 58"})
    void saltOfAnUntoldSource_addedTwice_isNotTheSources(Double tap, double first, double second) {
        TankFacts.Builder untold = feedingFish().chlorideMgPerL(null);
        TankFacts.Builder told = feedingFish().chlorideMgPerL(tap == null ? 8 : tap);
        List<Observation> run = FINE.withNitriteMgPerL(0.3).lastRead(0.1);
        if (tap != null) {
            run = with(run, read(60, Analyte.CHLORIDE, tap, 0));
        }
        run = with(run, read(55, Analyte.CHLORIDE, first, 0));
        for (int i = 0; i < 3; i++) {
            run = with(run, read(53 - 3 * i, Analyte.WATER_CHANGE, 30, 0));
        }
        run = with(run, read(44, Analyte.CHLORIDE, second, 0));
        for (int i = 0; i < 7; i++) {
            run = with(run, read(41 - 5 * i, Analyte.WATER_CHANGE, 30, 0));
        }
        assertThat(forecast(untold, run).chance()).isGreaterThan(forecast(told, run).chance() - 0.02);
        List<Observation> readAgain = with(run, read(0.2, Analyte.CHLORIDE, 10, 0));
        assertThat(forecast(untold, readAgain).chance())
                .isCloseTo(forecast(feedingFish().chlorideMgPerL(10), readAgain).chance(), within(0.02));
    }

    /** "Less than 15" is what a tap of 12 shows. */
    @Test
    void lowestColourAfterASlip_isBackToTheSources() {
        TankFacts.Builder facts = feedingFish().chlorideMgPerL(12);
        List<Observation> run = FINE.withNitriteMgPerL(0.4).lastRead(0.1);
        List<Observation> strip = with(run, read(20, Analyte.CHLORIDE, 60, 15),
                new Observation(read(5, Analyte.CHLORIDE, 0, 15).at(), Analyte.CHLORIDE, 0, 15, true, false));
        assertThat(forecast(facts, strip).chance()).isCloseTo(forecast(facts, run).chance(), within(0.02));
    }

    /** What a class reads again and again through its changes is what its tap has. */
    @Test
    void chlorideOfAnUntoldSource_isNotChangedAway() {
        TankFacts.Builder facts = feedingFish().chlorideMgPerL(null);
        List<Observation> run = with(FINE.withNitriteMgPerL(0.3).lastRead(0.1), read(40.2, Analyte.CHLORIDE, 35, 0));
        double chance = forecast(facts, run).chance();
        for (int week = 1; week <= 5; week++) {
            run = with(run, read(40 - 7 * week, Analyte.WATER_CHANGE, 20, 0));
        }
        assertThat(forecast(facts, run).chance()).isLessThan(chance + 0.1);
    }

    /** Half of it goes with half of the water: of 100 mg/L five such changes leave 3 above the source's 12. */
    @Test
    void saltThatWasChangedAway_protectsNoMore() {
        TankFacts.Builder facts = feedingFish().chlorideMgPerL(12);
        List<Observation> run = FINE.withNitriteMgPerL(0.4).lastRead(0.1);
        List<Observation> salted = with(run, read(20.2, Analyte.CHLORIDE, 100, 0));
        List<Observation> changedSince = salted;
        List<Observation> changed = run;
        for (int i = 1; i <= 5; i++) {
            changedSince = with(changedSince, read(20 - 3 * i, Analyte.WATER_CHANGE, 50, 0));
            changed = with(changed, read(20 - 3 * i, Analyte.WATER_CHANGE, 50, 0));
        }
        assertThat(forecast(facts, salted).chance()).isLessThan(0.5);
        assertThat(forecast(facts, changedSince).chance())
                .isCloseTo(forecast(facts.chlorideMgPerL(15), changed).chance(), within(0.06));
    }
}
