package org.tankrounds.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.tankrounds.fish.Stage;

final class LedgerTest {
    @Test
    void deaths_areTakenFromTheLiving_andKeptByStage() {
        Ledger ledger = Ledger.ofReceived(200)
                .withDeaths(Stage.EGG, 12).withDeaths(Stage.SAC_FRY, 5).withDeaths(Stage.FEEDING, 3);

        assertThat(ledger).isEqualTo(new Ledger(200, 12, 5, 3, 180, 0));
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
    void everyLedger_balances() {
        long seed = 20261125;
        Random random = new Random(seed);
        Ledger sum = Ledger.EMPTY;
        for (int i = 0; i < 500; i++) {
            Ledger tank = Ledger.ofReceived(random.nextInt(400));
            for (int j = random.nextInt(8); j > 0; j--) {
                tank = tank.withDeaths(Stage.values()[random.nextInt(3)], random.nextInt(90));
            }
            sum = sum.plus(tank);
            assertThat(sum.received()).as("seed %d, tank %d", seed, i)
                    .isEqualTo(sum.dead() + sum.alive() + sum.unexplained());
        }
    }

    @Test
    void ledgerThatDoesNotBalance_cannotBeMade() {
        assertThatThrownBy(() -> new Ledger(200, 1, 0, 0, 200, 0))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("balance");
    }
}
