package org.tankrounds.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.tankrounds.belief.Observation;
import org.tankrounds.fish.Stage;
import org.tankrounds.testing.SomeTank;
import org.tankrounds.water.Analyte;

/** In which stage of life those die that came to a tank as a lot, and those that were moved there. Water of 10 °C. */
final class LotHistoryTest {
    private static final int HERE = 1;
    private static final int THERE = 2;

    private final List<Observation> seen = new ArrayList<>(
            List.of(Observation.of(at("2025-11-05"), Analyte.TEMPERATURE, 10, 0)));
    private final List<CountEntry> entries = new ArrayList<>();
    private final List<Lot> lots = new ArrayList<>();

    /** 250 °C-days at the move: by the published regressions they hatch near 350, and feed at 480. */
    @Test
    void eggsThatWereMovedHere_areEggs_untilTheyHatchHere() {
        moved("2025-11-10", 50, Stage.EGG, 250);
        dead("2025-11-12", 5);
        dead("2025-11-28", 3);
        dead("2025-12-20", 1);

        Ledger ledger = history().account(entries).ledger();
        assertThat(ledger.deadAsEggs()).isEqualTo(5);
        assertThat(ledger.deadAsSacFry()).isEqualTo(3);
        assertThat(ledger.deadFeeding()).isEqualTo(1);
        assertThat(ledger.alive()).isEqualTo(41);
        assertThat(history().with(entries).developmentAt(at("2025-11-12")).orElseThrow().firstFeedingAt())
                .isBetween(at("2025-12-02"), at("2025-12-04"));
    }

    @Test
    void whatSomebodySaw_winsOverWhatTheTankTheyLeftHadComeTo() {
        moved("2025-11-10", 50, Stage.SAC_FRY, 250);
        assertThat(stage("2025-11-10")).isEqualTo(Stage.SAC_FRY);
        assertThat(stage("2025-12-01")).isEqualTo(Stage.SAC_FRY);
        assertThat(stage("2025-12-05")).isEqualTo(Stage.FEEDING);

        entries.clear();
        moved("2025-11-10", 50, Stage.EGG, 420);
        assertThat(stage("2025-11-10")).as("the last eggs of that day").isEqualTo(Stage.EGG);
        assertThat(stage("2025-11-11")).isEqualTo(Stage.SAC_FRY);
        assertThat(stage("2025-11-22")).isEqualTo(Stage.FEEDING);

        entries.clear();
        moved("2025-11-10", 50, Stage.FEEDING, 420);
        assertThat(stage("2025-11-10")).isEqualTo(Stage.FEEDING);
    }

    /** So they were taken before anybody was asked. */
    @Test
    void whereNobodySaid_feedingFishWereMoved() {
        entries.add(new CountEntry(1, CountKind.MOVED, at("2025-11-10"), THERE, Optional.of(HERE), 50,
                CountMethod.ONE_BY_ONE, 0, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
        assertThat(stage("2025-11-10")).isEqualTo(Stage.FEEDING);
        assertThat(stage("2025-11-08")).isEqualTo(Stage.FEEDING);
        assertThat(history().with(entries).isMixed()).isFalse();
    }

    @Test
    void whatJoinsOthersOfItsStage_isReckonedWithThem_andOfAnotherStageNobodyCanTell() {
        lots.add(lot(200, "2025-11-04", 180));
        moved("2025-11-06", 50, Stage.EGG, 300);
        assertThat(history().with(entries).isMixed()).isFalse();
        assertThat(stage("2025-11-18")).as("as the tank's own").isEqualTo(Stage.EGG);

        moved("2025-11-07", 10, Stage.FEEDING, 500);
        assertThat(history().with(entries).isMixed()).isTrue();
    }

    @Test
    void whatComesToATankThatIsEmptyByThen_beginsAnew() {
        moved("2025-11-06", 50, Stage.FEEDING, 500);
        left("2025-11-08", 50);
        moved("2025-11-10", 40, Stage.EGG, 200);
        dead("2025-11-12", 4);

        assertThat(history().with(entries).isMixed()).isFalse();
        assertThat(history().account(entries).ledger().deadAsEggs()).isEqualTo(4);
    }

    @Test
    void whatIsMovedAway_isAsFarAsTheTankHadCome() {
        lots.add(lot(200, "2025-11-04", 180));
        assertThat(history().movedAs(at("2025-11-14"), entries, Optional.empty()).stage()).isEqualTo(Stage.EGG);
        assertThat(history().movedAs(at("2025-11-14"), entries, Optional.empty()).thermalUnitsC().orElseThrow())
                .as("ten days of 10 °C").isBetween(275.0, 285.0);
        assertThat(history().movedAs(at("2025-12-01"), entries, Optional.empty()).stage()).isEqualTo(Stage.SAC_FRY);
        assertThat(history().movedAs(at("2025-12-01"), entries, Optional.of(Stage.EGG)).stage()).isEqualTo(Stage.EGG);
    }

    /** From tank to tank to tank, eggs stay as old as they are. */
    @Test
    void whatCameByAMove_andMovesOn_keepsItsAge() {
        moved("2025-11-10", 50, Stage.EGG, 250);
        MovedAs on = history().movedAs(at("2025-11-12"), entries, Optional.empty());
        assertThat(on.stage()).isEqualTo(Stage.EGG);
        assertThat(on.thermalUnitsC().orElseThrow()).isBetween(269.0, 271.0);
    }

    /** A lot without an hour is of noon, and the class counts in the morning. */
    @Test
    void eggsCountFromTheBeginningOfTheirDay() {
        lots.add(lot(100, "2025-11-04", 180));
        assertThat(history().accountUntil(Instant.parse("2025-11-04T13:00:00Z"), entries).ledger().came())
                .isEqualTo(100);
        assertThat(history().accountUntil(Instant.parse("2025-11-03T23:00:00Z"), entries).ledger().came()).isZero();
    }

    private Stage stage(String day) {
        return history().with(entries).stageAt(at(day));
    }

    private LotHistory history() {
        return LotHistory.of(SomeTank.ofNumber(HERE), lots, seen, at("2026-05-20"));
    }

    private void moved(String day, int fish, Stage stage, double thermalUnitsC) {
        entries.add(new CountEntry(entries.size() + 1, CountKind.MOVED, at(day), THERE, Optional.of(HERE), fish,
                CountMethod.ONE_BY_ONE, 0, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty())
                .as(new MovedAs(stage, OptionalDouble.of(thermalUnitsC))));
    }

    private void left(String day, int fish) {
        entries.add(new CountEntry(entries.size() + 1, CountKind.RELEASED, at(day), HERE, Optional.empty(), fish,
                CountMethod.ONE_BY_ONE, 0, Optional.of("Lower bridge"), Optional.empty(), Optional.empty(),
                Optional.empty()));
    }

    private void dead(String day, int fish) {
        seen.add(Observation.of(at(day), Analyte.DEATHS, fish, 0));
    }

    private static Lot lot(int eggs, String day, double thermalUnitsC) {
        return new Lot(1, 1, HERE, eggs, at(day), OptionalDouble.of(thermalUnitsC), Optional.empty(), Optional.empty(),
                SeenOn.NOTHING, CountMethod.ONE_BY_ONE, 0);
    }

    private static Instant at(String day) {
        return Instant.parse(day + "T15:00:00Z");
    }
}
