package org.tankrounds.lab;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tankrounds.forecast.Forecaster;

/**
 * The engine on small seasons of worlds that it has not learned from: a floor that fails when it gets worse.
 */
class EngineInWorldsTest {
    private static final long SEED = 2027;
    private static final int TANKS = 24;
    private static final int EVERY_NTH_MORNING = 18;

    @Test
    void order_isBetterThanThatOfTheNewestReadings() {
        double gain = 0;
        List<Answer> all = new ArrayList<>();
        for (World world : World.NAMED) {
            LabSeason season = LabSeason.played(world, SEED, TANKS, EVERY_NTH_MORNING);
            List<Answer> answers = Evaluation.ofEngine(season, new Forecaster());
            ScoreRow engine = ScoreRow.of(answers);
            ScoreRow latest = ScoreRow.of(Evaluation.ofLatestReadings(season));
            assertThat(engine.auc()).as(world.name()).isGreaterThan(latest.auc());
            gain += (engine.auc() - latest.auc()) / World.NAMED.size();
            all.addAll(answers);
        }
        assertThat(gain).isGreaterThan(0.06);
        ScoreRow overall = ScoreRow.of(all);
        assertThat(overall.aucOfChance()).isGreaterThan(0.82);
        assertThat(overall.skill()).isGreaterThan(0.3);
        assertThat(overall.reliability()).isLessThan(0.01);
    }
}
