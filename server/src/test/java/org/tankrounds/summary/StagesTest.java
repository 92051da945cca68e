package org.tankrounds.summary;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.tankrounds.belief.Observation;
import org.tankrounds.fish.Stage;
import org.tankrounds.readings.ReadingTally;
import org.tankrounds.season.Account;
import org.tankrounds.season.CountEntry;
import org.tankrounds.season.CountKind;
import org.tankrounds.season.CountMethod;
import org.tankrounds.season.Lot;
import org.tankrounds.season.MovedAs;
import org.tankrounds.season.SeenOn;
import org.tankrounds.testing.SomeTank;
import org.tankrounds.water.Analyte;

/** How many outlived each stage, worked out by hand. */
final class StagesTest {
    private static final ZoneId ZONE = ZoneId.of("America/New_York");
    private static final Instant HATCH = at("2025-11-20");
    private static final Instant FEEDING = at("2025-12-15");
    private static final Instant LAST = at("2026-05-20");

    private final List<Observation> deaths = new ArrayList<>();
    private final List<CountEntry> entries = new ArrayList<>();

    @Test
    void eachStage_beginsWithThoseThatOutlivedTheOneBefore() {
        dead("2025-11-10", 20);
        dead("2025-12-01", 9);
        dead("2026-02-01", 1);
        write(CountKind.RELEASED, "2026-05-12", 100, 0);

        Stages stages = stages(LAST, lot(200, "2025-11-04", 0));

        assertThat(stages.of(Stage.EGG)).isEqualTo(new StageSurvival(200, 180, 0, 1, 0));
        assertThat(stages.of(Stage.SAC_FRY)).isEqualTo(new StageSurvival(180, 171, 0, 1, 0));
        assertThat(stages.of(Stage.FEEDING)).as("those released are survivors")
                .isEqualTo(new StageSurvival(171, 170, 0, 1, 0));
    }

    @Test
    void aStageThatIsNotOver_isNotTold_butTheLast() {
        dead("2025-11-10", 20);

        Stages stages = stages(at("2025-12-01"), lot(200, "2025-11-04", 0));

        assertThat(stages.of(Stage.EGG).survived()).isEqualTo(180);
        assertThat(stages.of(Stage.SAC_FRY)).isEqualTo(StageSurvival.NONE);
        assertThat(stages.of(Stage.FEEDING)).isEqualTo(StageSurvival.NONE);
    }

    @Test
    void hatchThatWasCounted_laterThanTemperaturesTell_standsForTheEggsThatHatched_andBeginsTheNextStage() {
        dead("2025-11-10", 20);
        write(CountKind.HATCHED, "2025-11-24", 170, 5);
        dead("2025-12-01", 10);

        Stages stages = stages(LAST, lot(200, "2025-11-04", 0));

        assertThat(stages.of(Stage.EGG)).isEqualTo(new StageSurvival(200, 170, 1, 1, 25));
        assertThat(stages.of(Stage.SAC_FRY).began()).isEqualTo(170);
        assertThat(stages.of(Stage.SAC_FRY).survived()).as("ten were not hatched, and ten died").isEqualTo(170);
    }

    /** They did not outlive the egg: lost once, not once more as fry. */
    @Test
    void deadEggsThatArePickedOutAfterHatchWasCounted_areNotLostTwice() {
        write(CountKind.HATCHED, "2025-11-20", 80, 0);
        dead("2025-11-22", 20);
        write(CountKind.COUNTED, "2025-12-20", 80, 0);

        Stages stages = stages(LAST, lot(100, "2025-11-04", 0));

        assertThat(stages.of(Stage.EGG)).isEqualTo(new StageSurvival(100, 80, 1, 1, 0));
        assertThat(stages.of(Stage.SAC_FRY)).isEqualTo(new StageSurvival(80, 80, 0, 1, 0));
        assertThat(stages.of(Stage.FEEDING)).isEqualTo(new StageSurvival(80, 80, 0, 1, 0));
    }

    @Test
    void moreDeadThanDidNotHatch_areFry() {
        write(CountKind.HATCHED, "2025-11-20", 80, 0);
        dead("2025-11-22", 15);
        dead("2025-11-25", 8);
        dead("2026-01-10", 2);

        Stages stages = stages(LAST, lot(100, "2025-11-04", 0));

        assertThat(stages.of(Stage.SAC_FRY)).isEqualTo(new StageSurvival(80, 77, 0, 1, 0));
        assertThat(stages.of(Stage.FEEDING)).isEqualTo(new StageSurvival(77, 75, 0, 1, 0));
        assertThat(stages.lines().get(Stage.SAC_FRY).stream().mapToInt(Stages.Line::fish).sum()).isEqualTo(77);
    }

    /** Nobody ever wrote that the others died: they are no feeding fish all the same. */
    @Test
    void eggsThatDidNotHatch_neverFeed() {
        write(CountKind.HATCHED, "2025-11-20", 239, 0);
        write(CountKind.RELEASED, "2026-05-12", 230, 0);

        Stages stages = stages(LAST, lot(369, "2025-11-04", 0));

        assertThat(stages.of(Stage.SAC_FRY)).isEqualTo(new StageSurvival(239, 239, 0, 1, 0));
        assertThat(stages.of(Stage.FEEDING)).isEqualTo(new StageSurvival(239, 239, 0, 1, 0));
    }

    @Test
    void aCountOfAll_saysHowManyAreLeftOfThoseThatDidNotHatch() {
        write(CountKind.HATCHED, "2025-11-20", 80, 0);
        write(CountKind.COUNTED, "2025-11-21", 85, 0);
        dead("2025-11-22", 7);

        Stages stages = stages(LAST, lot(100, "2025-11-04", 0));

        assertThat(stages.of(Stage.SAC_FRY)).as("five eggs and two fry").isEqualTo(new StageSurvival(80, 78, 0, 1, 0));
        assertThat(stages.of(Stage.FEEDING).began()).isEqualTo(78);
    }

    @Test
    void hatchedAndDeadTogether_areNeverMoreThanCame() {
        dead("2025-11-10", 10);
        write(CountKind.HATCHED, "2025-11-24", 97, 0);

        Stages stages = stages(LAST, lot(100, "2025-11-04", 0));

        assertThat(stages.of(Stage.EGG).survived()).isEqualTo(90);
        assertThat(stages.of(Stage.SAC_FRY).began()).isEqualTo(90);
    }

    @Test
    void eggsThatLeftAlive_didNotDieWhereTheyWere() {
        write(CountKind.THINNED, "2025-11-05", 100, 0);
        write(CountKind.HATCHED, "2025-11-24", 90, 0);

        Stages stages = stages(LAST, lot(200, "2025-11-04", 0));

        assertThat(stages.of(Stage.EGG).survived()).isEqualTo(190);
        assertThat(stages.of(Stage.SAC_FRY).began()).isEqualTo(90);
    }

    @Test
    void eggsThatWereMoved_areOfTheTankThatTheyCameTo() {
        write(CountKind.MOVED, "2025-11-05", 100, 0);
        write(CountKind.HATCHED, "2025-11-24", 90, 0);

        Stages stages = stages(LAST, lot(200, "2025-11-04", 0));

        assertThat(stages.of(Stage.EGG)).isEqualTo(new StageSurvival(100, 90, 1, 1, 0));
        assertThat(stages.of(Stage.SAC_FRY).began()).isEqualTo(90);
        assertThat(stages.lines().get(Stage.EGG)).extracting(Stages.Line::what)
                .containsExactly(Stages.What.RECEIVED, Stages.What.MOVED_OUT, Stages.What.MISSING);
    }

    /** Two tanks together have each egg once, in each stage. */
    @Test
    void whatWasMoved_isNotCountedTwiceInAChapter() {
        move("2025-11-05", 50, Stage.EGG, 190);
        dead("2025-11-10", 6);
        Stages from = evidence(1, lot(200, "2025-11-04", 0)).stages();
        Stages to = evidence(2).stages();

        assertThat(from.of(Stage.EGG)).isEqualTo(new StageSurvival(150, 144, 0, 1, 0));
        assertThat(to.of(Stage.EGG)).isEqualTo(new StageSurvival(50, 44, 0, 1, 0));
        assertThat(from.plus(to).of(Stage.EGG).began()).isEqualTo(200);
        assertThat(from.plus(to).of(Stage.SAC_FRY).began()).isEqualTo(188);
        assertThat(from.plus(to).of(Stage.FEEDING).began()).isEqualTo(188);
        assertThat(evidence(2).deaths()).extracting(TankEvidence.Deaths::stage).containsExactly(Stage.EGG);
        assertThat(evidence(2).figures().ledger().deadAsEggs()).isEqualTo(6);
    }

    @Test
    void whatWasMovedToOthersOfAnotherStage_makesStagesUntold() {
        move("2025-11-06", 50, Stage.FEEDING, 500);
        assertThat(evidence(2, new Lot(1, 1, 2, 200, at("2025-11-04"), OptionalDouble.of(180), Optional.empty(),
                Optional.empty(), SeenOn.NOTHING, CountMethod.ONE_BY_ONE, 0)).stages()).isEqualTo(Stages.NONE);
    }

    @Test
    void whatACountDidNotFind_didNotOutliveItsStage() {
        write(CountKind.COUNTED, "2025-12-01", 150, 0);

        Stages stages = stages(LAST, lot(200, "2025-11-04", 0));

        assertThat(stages.of(Stage.SAC_FRY)).isEqualTo(new StageSurvival(200, 150, 0, 1, 0));
        assertThat(stages.of(Stage.FEEDING).survived()).isEqualTo(150);
    }

    @Test
    void moreThanCame_areNeverSurvivors() {
        write(CountKind.COUNTED, "2025-12-01", 230, 0);
        Stages stages = stages(LAST, lot(200, "2025-11-04", 0));
        assertThat(stages.of(Stage.SAC_FRY).survived()).isEqualTo(200);
        assertThat(stages.of(Stage.FEEDING).began()).isEqualTo(200);
    }

    @Test
    void eggsThatJoinedOlderFish_makeStagesUntold() {
        dead("2026-02-03", 3);
        assertThat(Stages.of(account(lot(200, "2025-11-04", 0), lot(100, "2026-02-01", 0)).lines(),
                moment -> moment.isBefore(at("2026-02-01")) ? stageAt(moment) : Stage.EGG, LAST))
                .isEqualTo(Stages.NONE);
    }

    @Test
    void linesOfAStage_addUpToThoseThatOutlivedIt() {
        dead("2025-11-10", 20);
        dead("2025-12-01", 9);
        write(CountKind.COUNTED, "2025-12-02", 160, 3);
        write(CountKind.THINNED, "2026-01-20", 60, 0);
        dead("2026-02-01", 4);

        Stages stages = stages(LAST, lot(200, "2025-11-04", 10));

        for (Stage stage : Stage.values()) {
            assertThat(stages.lines().get(stage).stream().mapToInt(Stages.Line::fish).sum()).as(stage.name())
                    .isEqualTo(stages.of(stage).survived());
        }
        assertThat(Map.of(Stage.EGG, 180, Stage.SAC_FRY, 160, Stage.FEEDING, 156)).allSatisfy((stage, survived) ->
                assertThat(stages.of(stage).survived()).isEqualTo(survived));
    }

    @Test
    void aCountThatMayBeOffByMoreThanChance_saysSo() {
        assertThat(new StageSurvival(200, 180, 0, 1, 25).isOffByMoreThanChance()).as("±5 of a width of about ±8")
                .isFalse();
        assertThat(new StageSurvival(200, 180, 0, 1, 400).isOffByMoreThanChance()).isTrue();
        assertThat(new StageSurvival(200, 180, 0, 1, 400).spread()).isEqualTo(20);
    }

    @Test
    void aCountThatBothNumbersComeFrom_hardlyMovesTheShare_butTwoCountsDo() {
        dead("2025-11-10", 20);
        StageSurvival same = stages(LAST, lot(200, "2025-11-04", 10)).of(Stage.EGG);
        assertThat(same.spread()).as("a tenth died, so a tenth of ±10").isEqualTo(1);
        assertThat(same.isOffByMoreThanChance()).isFalse();

        write(CountKind.COUNTED, "2025-11-12", 160, 24);
        StageSurvival two = stages(LAST, lot(200, "2025-11-04", 10)).of(Stage.EGG);
        assertThat(two.survived()).isEqualTo(160);
        assertThat(two.spread()).as("±24, and 80 % of ±10").isEqualTo(26);
        assertThat(two.isOffByMoreThanChance()).isTrue();
    }

    private Stages stages(Instant until, Lot... lots) {
        return Stages.of(account(lots).lines(), StagesTest::stageAt, until);
    }

    /** Of a tank with the deaths of all; what was moved went from tank 1 to tank 2. */
    private TankEvidence evidence(int tankId, Lot... lots) {
        List<Observation> seen = new ArrayList<>(List.of(Observation.of(at("2025-11-05"), Analyte.TEMPERATURE, 11, 0)));
        seen.addAll(deaths);
        seen.add(Observation.of(LAST, Analyte.TEMPERATURE, 11, 0));
        return new TankEvidence(SomeTank.ofNumber(tankId), List.of(lots), entries, Map.of(), List.of(), List.of(), seen,
                ReadingTally.NONE, Map.of(), LAST, Map.of());
    }

    private void move(String day, int fish, Stage stage, double thermalUnitsC) {
        entries.add(new CountEntry(entries.size() + 1, CountKind.MOVED, at(day), 1, Optional.of(2), fish,
                CountMethod.ONE_BY_ONE, 0, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.of(new MovedAs(stage, OptionalDouble.of(thermalUnitsC)))));
    }

    private Account account(Lot... lots) {
        return Account.of(1, List.of(lots), deaths, StagesTest::stageAt, entries, ZONE);
    }

    private static Stage stageAt(Instant moment) {
        return moment.isBefore(HATCH) ? Stage.EGG : moment.isBefore(FEEDING) ? Stage.SAC_FRY : Stage.FEEDING;
    }

    private void dead(String day, int fish) {
        deaths.add(Observation.of(at(day), Analyte.DEATHS, fish, 0));
    }

    private void write(CountKind kind, String day, int fish, int spread) {
        entries.add(new CountEntry(entries.size() + 1, kind, at(day), 1, Optional.empty(), fish, CountMethod.ONE_BY_ONE,
                spread, Optional.of("Lower bridge"), Optional.empty(), Optional.empty(), Optional.empty()));
    }

    private static Lot lot(int eggs, String day, int spread) {
        return new Lot(1, 1, 1, eggs, at(day), OptionalDouble.of(180), Optional.empty(), Optional.empty(),
                SeenOn.NOTHING, CountMethod.ONE_BY_ONE, spread);
    }

    private static Instant at(String day) {
        return Instant.parse(day + "T15:00:00Z");
    }
}
