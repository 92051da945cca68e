package org.tankrounds.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.tankrounds.fish.Stage;

final class LedgerTest {
    @Test
    void deaths_areTakenFromTheLiving_andKeptByStage() {
        Ledger ledger = Ledger.ofReceived(200)
                .withDeaths(Stage.EGG, 12).withDeaths(Stage.SAC_FRY, 5).withDeaths(Stage.FEEDING, 3);

        assertThat(ledger).isEqualTo(new Ledger(200, 0, 12, 5, 3, 0, 0, 0, 180, 0));
        assertThat(ledger.dead()).isEqualTo(20);
    }

    @Test
    void moreDeathsThanEggs_standAsUnexplained() {
        Ledger ledger = Ledger.ofReceived(10).withDeaths(Stage.EGG, 13);

        assertThat(ledger.alive()).isZero();
        assertThat(ledger.unexplained()).isEqualTo(-3);
    }

    @Test
    void oneTanksSurplus_doesNotHideBehindAnothersLiving() {
        Ledger both = Ledger.ofReceived(10).withDeaths(Stage.EGG, 13).plus(Ledger.ofReceived(100));

        assertThat(both.alive()).isEqualTo(100);
        assertThat(both.unexplained()).isEqualTo(-3);
    }

    @Test
    void whatLeavesAlive_survived_andMovesAreNobodysLoss() {
        Ledger from = Ledger.ofReceived(100).withDeaths(Stage.EGG, 10).withMovedOut(20).withThinned(5).withReleased(60);
        Ledger to = Ledger.EMPTY.withMovedIn(20).withDeaths(Stage.FEEDING, 2);

        assertThat(from.alive()).isEqualTo(5);
        assertThat(from.survived()).isEqualTo(90);
        assertThat(to.came()).isEqualTo(20);
        assertThat(to.survived()).isEqualTo(18);
        assertThat(from.plus(to).movedAway()).isZero();
        assertThat(from.plus(to).came()).isEqualTo(100);
        assertThat(from.plus(to).survived()).isEqualTo(88);
    }

    @Test
    void whatACountFindsMoreOrLess_isUnexplained() {
        assertThat(Ledger.ofReceived(100).withCounted(93).unexplained()).isEqualTo(7);
        assertThat(Ledger.ofReceived(100).withCounted(104).unexplained()).isEqualTo(-4);
        assertThat(Ledger.ofReceived(60).withDeaths(Stage.EGG, 3).withCounted(60).survived())
                .as("nobody survived who was found dead").isEqualTo(57);
        assertThat(Ledger.ofReceived(100).withCounted(93).withReleased(93).alive()).isZero();
    }

    @Test
    void ledgerThatDoesNotBalance_cannotBeMade() {
        assertThatThrownBy(() -> new Ledger(200, 0, 1, 0, 0, 0, 0, 0, 200, 0))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("balance");
    }
}
