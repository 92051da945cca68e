package org.tankrounds.fish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DevelopmentTest {
    private static final Instant RECEIVED = Instant.parse("2026-11-03T12:00:00Z");

    /**
     * The effective-value method of Sparks et al. 2019, doi:10.1139/cjfas-2017-0468, with Crisp's
     * coefficients, computed once elsewhere day by day: 10 d at 7 °C, 10 d at 9 °C, then 11 °C hatches on day
     * 35, at 0.472788 + 14.93 / 28.324.
     */
    @Test
    void varyingTemperature_addsUpToTheHatch() {
        List<DatedTemperature> trace = List.of(read(0, 7), read(9.999, 7), read(10.001, 9), read(19.999, 9),
                read(20.001, 11));
        Development development = follow(OptionalDouble.of(0), trace, Optional.empty(), 40);
        assertThat(days(development.hatchAt())).isCloseTo(34.93, within(0.1));
        assertThat(development.thermalUnitsC()).isCloseTo(10 * 7 + 10 * 9 + 20 * 11, within(0.5));
    }

    /**
     * Leitritz and Lewis 1976, California Fish Bulletin 164 (day counts from memory): what hatcheries count up to
     * hatch, in °F-days and, computed from them, °C-days.
     */
    @ParameterizedTest(name = "{1} d at {0} °F")
    @CsvSource({"40, 80, 640, 355.6", "45, 48, 624, 346.7", "50, 31, 558, 310.0", "55, 24, 552, 306.7",
        "60, 19, 532, 295.6"})
    void thermalUnits_areThoseOfTheHatcheryTable(double fahrenheit, int days, double unitsF, double unitsC) {
        Development development = follow(OptionalDouble.of(0), List.of(read(0, (fahrenheit - 32) / 1.8)),
                Optional.empty(), days);
        assertThat(development.thermalUnitsC()).isCloseTo(unitsC, within(0.051));
        assertThat(1.8 * development.thermalUnitsC()).isCloseTo(unitsF, within(1e-6));
    }

    /** Crisp: 250 °C-days at 10 °C are 0.7773 of the way, and 22.27 % of 32.162 d are left. */
    @Test
    void deliveredEggs_beginWithTheSuppliersUnits() {
        Development development = follow(OptionalDouble.of(250), List.of(read(0, 10)), Optional.empty(), 0);
        assertThat(days(development.hatchAt())).isCloseTo(7.162, within(0.01));
    }

    /** From 0.60 of the way at 11 °C, 11.330 d to hatch by the same formula. */
    @Test
    void deliveredEggs_hatchByTheTanksTemperature() {
        Development development =
                follow(OptionalDouble.of(0.60 * 321.62), List.of(read(0, 11)), Optional.empty(), 0);
        assertThat(days(development.hatchAt())).isCloseTo(11.330, within(0.01));
    }

    @Test
    void firstFeeding_isAt480DegreeDays() {
        Development development = follow(OptionalDouble.of(250), List.of(read(0, 10)), Optional.empty(), 0);
        assertThat(days(development.firstFeedingAt())).isCloseTo((480 - 250) / 10.0, within(0.01));
    }

    @Test
    void unknownHistory_countsAs180DegreeDaysOnTheDayTheyCame() {
        Development development = follow(OptionalDouble.empty(), List.of(read(0, 10)), Optional.empty(), 0);
        assertThat(development.thermalUnitsC()).isEqualTo(180);
        assertThat(days(development.firstFeedingAt())).isCloseTo(30, within(0.01));
    }

    @Test
    void noTemperatureAtAll_isTakenAsTheUsualOne() {
        Development development = follow(OptionalDouble.empty(), List.of(), Optional.empty(), 0);
        assertThat(days(development.firstFeedingAt())).isCloseTo(300 / 11.5, within(0.01));
    }

    @Test
    void recordedFirstFeeding_winsOverTheCount() {
        Instant recorded = RECEIVED.plus(Duration.ofDays(12));
        Development development =
                follow(OptionalDouble.of(250), List.of(read(0, 10)), Optional.of(recorded), 15);
        assertThat(development.firstFeedingAt()).isEqualTo(recorded);
        assertThat(development.stageAt(recorded.minusSeconds(1))).isEqualTo(Stage.SAC_FRY);
        assertThat(development.stageAt(recorded)).isEqualTo(Stage.FEEDING);
        assertThat(development.daysFeedingAt(recorded.plus(Duration.ofDays(3)))).isEqualTo(3);
    }

    /** Commercial egg guidance: 10 to 14 days from hatch to swim-up. Cold water had brought 470 °C-days by then. */
    @Test
    void fryThatWereSeenToHatch_doNotFeedTheNextDay() {
        Instant hatched = RECEIVED.plus(Duration.ofDays(22));
        Development development = Development.of(RECEIVED, OptionalDouble.of(250), List.of(read(0, 10)), 11.5,
                new SeenStages(Optional.empty(), Optional.of(hatched), Optional.empty()), at(24));
        assertThat(development.hatchAt()).isEqualTo(hatched);
        assertThat(development.stageAt(at(24))).isEqualTo(Stage.SAC_FRY);
        assertThat(days(development.firstFeedingAt())).isBetween(31.5, 32.5);
    }

    @Test
    void hatchThatWasSeenEarly_leavesFirstFeedingWhereItWas() {
        Development development = Development.of(RECEIVED, OptionalDouble.of(250), List.of(read(0, 10)), 11.5,
                new SeenStages(Optional.empty(), Optional.of(at(5)), Optional.empty()), at(6));
        assertThat(development.stageAt(at(6))).isEqualTo(Stage.SAC_FRY);
        assertThat(days(development.firstFeedingAt())).isCloseTo(23, within(0.01));
    }

    @Test
    void stage_goesFromEggOverSacFryToFeeding() {
        Development development = follow(OptionalDouble.of(250), List.of(read(0, 10)), Optional.empty(), 0);
        assertThat(development.stageAt(RECEIVED.plus(Duration.ofDays(7)))).isEqualTo(Stage.EGG);
        assertThat(development.stageAt(RECEIVED.plus(Duration.ofDays(8)))).isEqualTo(Stage.SAC_FRY);
        assertThat(development.stageAt(RECEIVED.plus(Duration.ofDays(22)))).isEqualTo(Stage.SAC_FRY);
        assertThat(development.stageAt(RECEIVED.plus(Duration.ofDays(24)))).isEqualTo(Stage.FEEDING);
        assertThat(Stage.SAC_FRY.isBeforeFirstFeeding()).isTrue();
    }

    @Test
    void fishDeliveredFeeding_haveHatchedAndFeedAtOnce() {
        Development development = follow(OptionalDouble.of(600), List.of(), Optional.empty(), 1);
        assertThat(development.hatchAt()).isEqualTo(RECEIVED);
        assertThat(development.stageAt(RECEIVED)).isEqualTo(Stage.FEEDING);
    }

    @Test
    void iceColdWater_neverEndsTheCount() {
        Development development = follow(OptionalDouble.of(100), List.of(read(0, -3)), Optional.empty(), 50);
        assertThat(development.thermalUnitsC()).isEqualTo(100);
        assertThat(development.firstFeedingAt()).isAfter(RECEIVED.plus(Duration.ofDays(400)));
    }

    private static Development follow(OptionalDouble units, List<DatedTemperature> trace,
            Optional<Instant> recorded, double daysOn) {
        return Development.of(RECEIVED, units, trace, 11.5, SeenStages.NONE.withFirstFeedingAt(recorded), at(daysOn));
    }

    private static DatedTemperature read(double day, double temperatureC) {
        return new DatedTemperature(at(day), temperatureC);
    }

    private static Instant at(double day) {
        return RECEIVED.plusSeconds(Math.round(day * 86_400));
    }

    private static double days(Instant at) {
        return Duration.between(RECEIVED, at).toSeconds() / 86_400.0;
    }
}
