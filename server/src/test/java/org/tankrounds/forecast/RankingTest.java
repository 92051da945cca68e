package org.tankrounds.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.tankrounds.fish.Stage;

class RankingTest {

    @Test
    void order_isByExposureThenChanceThenCode() {
        List<Forecast> ranked = Ranking.order(List.of(tank("d", 0.9, 5), tank("b", 0.2, 7), tank("c", 0.3, 5),
                tank("a", 0.3, 5), tank("e", 0.1, 700)));
        assertThat(ranked).extracting(Forecast::tank).containsExactly("e", "b", "d", "a", "c");
    }

    @Test
    void everyTankGiven_isRanked() {
        assertThat(Ranking.order(List.of(tank("a", 0, 0), tank("b", 0, 0)))).hasSize(2);
        assertThat(Ranking.order(List.of())).isEmpty();
    }

    private static Forecast tank(String code, double chance, double exposure) {
        return new Forecast(code, Instant.EPOCH, chance, exposure, Driver.SILENCE, OptionalDouble.empty(),
                OptionalDouble.empty(), Stage.EGG, 100, List.of(), List.of());
    }
}
