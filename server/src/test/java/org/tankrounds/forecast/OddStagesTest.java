package org.tankrounds.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.tankrounds.testing.Water.FINE;
import static org.tankrounds.testing.Water.feedingFish;
import static org.tankrounds.testing.Water.forecast;
import static org.tankrounds.testing.Water.read;
import static org.tankrounds.testing.Water.with;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.testing.Water;
import org.tankrounds.water.Analyte;

/** Slips of the pen that tell of the fish: none alone makes feeding fish of sac fry, which bear less. */
class OddStagesTest {
    /** Two dead in the box for feed: sac fry in water too warm for them would be feeding fish that bear it. */
    @ParameterizedTest(name = "{0} g")
    @ValueSource(doubles = {2, 500})
    void feedNotedOnceBeforeSwimUp_leavesSacFrySacFry(double grams) {
        TankFacts.Builder sacFry = feedingFish().eggsReceivedAt(Water.AS_OF.minus(Duration.ofDays(8)));
        List<Observation> warm = FINE.withTemperatureC(15).lastRead(0.2).subList(0, 20);
        List<Observation> slip = with(warm, read(0.1, Analyte.FEED, grams, 0));
        assertThat(forecast(sacFry, slip).chance()).isCloseTo(forecast(sacFry, warm).chance(), within(0.02));
        assertThat(forecast(sacFry, with(warm, read(1.1, Analyte.FEED, 2, 0), read(0.1, Analyte.FEED, 2, 0))).chance())
                .as("fed on two days").isLessThan(0.2);
    }

    /** "Since the last note" may be a week or more, and a large tank eats more than most. */
    @ParameterizedTest(name = "{0} g each {1} days")
    @CsvSource({"2, 1", "2, 7", "2, 8", "100, 7"})
    void feedNotedAgain_isFeeding_howeverSeldomAndMuch(double grams, double days) {
        TankFacts.Builder untold = TankFacts.of("untold").volumeL(190).eggs(100);
        List<Observation> warm = FINE.withTemperatureC(15).lastRead(0.2).subList(0, 35);
        assertThat(forecast(untold, warm).chance()).isGreaterThan(0.6);
        assertThat(forecast(untold, with(warm, read(1 + days, Analyte.FEED, grams, 0), read(1, Analyte.FEED, grams, 0)))
                .chance()).isLessThan(0.2);
    }

    /** Fish food that started the filter says nothing of when they began to eat. */
    @Test
    void feedNotedBeforeHatch_hidesNoFeedingThatCameAfter() {
        TankFacts.Builder early = feedingFish().eggsReceivedAt(Water.AS_OF.minus(Duration.ofDays(8)));
        List<Observation> fed = FINE.withTemperatureC(15).lastRead(0.2).subList(0, 20);
        for (int day = 0; day < 4; day++) {
            fed = with(fed, read(day + 0.3, Analyte.FEED, 2, 0));
        }
        List<Observation> started = with(fed, read(30, Analyte.FEED, 2, 0), read(28, Analyte.FEED, 2, 0));
        assertThat(forecast(early, started).chance()).isCloseTo(forecast(early, fed).chance(), within(0.02))
                .isLessThan(0.2);
    }

    /** The season of eggs whose coming nobody told begins with the first look, if others follow. */
    @Test
    void oneLookWithAMistypedDate_beginsNoSeason() {
        TankFacts.Builder untold = TankFacts.of("untold").volumeL(190).eggs(100);
        List<Observation> warm = FINE.withTemperatureC(15).lastRead(0.2).subList(0, 20);
        List<Observation> mistyped = with(warm, read(120, Analyte.TEMPERATURE, 11, 0.5));
        assertThat(forecast(untold, mistyped).chance()).isCloseTo(forecast(untold, warm).chance(), within(0.02));
    }
}
