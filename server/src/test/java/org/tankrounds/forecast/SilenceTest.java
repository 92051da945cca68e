package org.tankrounds.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.testing.Water.FINE;
import static org.tankrounds.testing.Water.feedingFish;
import static org.tankrounds.testing.Water.forecast;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.testing.Water;

/** A tank that nobody reads drifts in our eyes towards what tanks in general do, and never towards safe. */
class SilenceTest {
    private static final double[] DAYS = {1, 3, 7, 14, 28};

    @Test
    void safeTank_becomesDoubtfulDayByDayTowardsTanksInGeneral() {
        double[] chance = chances(FINE);
        for (int i = 1; i < chance.length; i++) {
            assertThat(chance[i]).as("after %s days", DAYS[i]).isGreaterThanOrEqualTo(chance[i - 1]);
        }
        assertThat(chance[1]).as("after 3 days").isLessThan(0.15);
        assertThat(chance[4]).as("after 28 days").isGreaterThan(2 * chance[0])
                .isGreaterThan(tanksInGeneral() / 3);
    }

    @Test
    void safeTank_neverPassesTanksInGeneral() {
        for (double chance : chances(FINE)) {
            assertThat(chance).isLessThan(tanksInGeneral() * 1.1);
        }
    }

    @Test
    void troubledTank_staysAboveASafeOneAndAboveTanksInGeneral() {
        double[] safe = chances(FINE);
        double[] troubled = chances(FINE.withNitriteMgPerL(0.6));
        for (int i = 0; i < DAYS.length; i++) {
            assertThat(troubled[i]).as("after %s days", DAYS[i]).isGreaterThan(safe[i]);
            assertThat(troubled[i]).as("after %s days", DAYS[i]).isGreaterThan(tanksInGeneral() * 0.9);
        }
        assertThat(troubled[4]).as("after 28 days").isLessThan(troubled[0]);
    }

    @ParameterizedTest
    @ValueSource(doubles = {5, 10, 20})
    void silentTank_isRankedOverTheSameTankReadToday(double days) {
        Forecast silent = forecast(feedingFish(), FINE.lastRead(days));
        Forecast read = forecast(feedingFish(), FINE.lastRead(0.1));
        assertThat(Ranking.order(List.of(read, silent))).first().isSameAs(silent);
        assertThat(silent.driver()).isEqualTo(Driver.SILENCE);
        assertThat(silent.readingAgeHours()).hasValue(days * 24);
    }

    private static double tanksInGeneral() {
        return forecast(feedingFish(), List.of()).chance();
    }

    private static double[] chances(Water water) {
        double[] chances = new double[DAYS.length];
        for (int i = 0; i < DAYS.length; i++) {
            chances[i] = forecast(feedingFish(), water.lastRead(DAYS[i])).chance();
        }
        return chances;
    }
}
