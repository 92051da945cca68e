package org.tankrounds.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.tankrounds.calendar.Ages.Age;
import org.tankrounds.fish.DateWindow;
import org.tankrounds.fish.GrowthAhead;
import org.tankrounds.fish.Warmth;
import org.tankrounds.season.CountMethod;
import org.tankrounds.season.FishSample;
import org.tankrounds.season.Lot;
import org.tankrounds.season.SeenOn;

/** Which of a tank's fish came of which eggs. */
class AgesTest {
    private static final ZoneId ZONE = ZoneId.of("America/New_York");
    private static final Instant FIRST = Instant.parse("2026-11-03T15:00:00Z");

    @Test
    void newEggs_areAllThere_andTheOlderAreTheRest() {
        assertThat(ages(184, lot(1, 0, 200), lot(2, 17, 100)))
                .extracting(age -> age.lot().lotId(), Age::fish).containsExactly(tuple(1, 84), tuple(2, 100));
    }

    /** As the newest of them is where dates are asked for. */
    @Test
    void eggsOfAWeek_areOneAge_andADayMoreMakesTwo() {
        assertThat(ages(290, lot(1, 0, 200), lot(2, 7, 100)))
                .extracting(age -> age.lot().lotId(), Age::fish).containsExactly(tuple(2, 290));
        assertThat(ages(290, lot(1, 0, 200), lot(2, 8, 100))).hasSize(2);
    }

    @Test
    void threeAges_areCountedFromTheNewest() {
        assertThat(ages(250, lot(3, 40, 50), lot(1, 0, 200), lot(2, 20, 100)))
                .extracting(age -> age.lot().lotId(), Age::fish)
                .containsExactly(tuple(1, 100), tuple(2, 100), tuple(3, 50));
    }

    @Test
    void whereNobodyOlderCanBeLeft_thereIsOneAge() {
        assertThat(ages(90, lot(1, 0, 200), lot(2, 20, 100)))
                .extracting(age -> age.lot().lotId(), Age::fish).containsExactly(tuple(2, 90));
        assertThat(ages(0, lot(1, 0, 200), lot(2, 20, 100)))
                .extracting(age -> age.lot().lotId(), Age::fish).containsExactly(tuple(2, 0));
    }

    /** Fry of 0.15 g that grow at 0.05 and 11 °C weigh 0.63 g after 60 days, and 0.21 g after 12. */
    @Test
    void measuredFish_areOfTheAgeWhoseSizeTheyHave() {
        List<GrowthAhead> fry = List.of(feedingFrom(0), feedingFrom(48));
        assertThat(Ages.nearest(sample(60, 0.5), fry)).isZero();
        assertThat(Ages.nearest(sample(60, 0.25), fry)).isEqualTo(1);
        assertThat(Ages.nearest(sample(40, 0.16), fry)).as("the younger do not feed yet").isZero();
        assertThat(Ages.nearest(sample(-5, 0.16), fry)).isEqualTo(-1);
    }

    private static List<Age> ages(int alive, Lot... come) {
        return Ages.of(Arrays.asList(come), alive, ZONE);
    }

    private static Lot lot(int lotId, int day, int eggs) {
        return new Lot(lotId, 1, 1, eggs, FIRST.plus(Duration.ofDays(day)), OptionalDouble.of(180), Optional.empty(),
                Optional.empty(), SeenOn.NOTHING, CountMethod.ONE_BY_ONE, 0);
    }

    private static GrowthAhead feedingFrom(int day) {
        Instant fed = FIRST.plus(Duration.ofDays(day));
        return GrowthAhead.ofFry(new DateWindow(fed, fed, fed, true), Warmth.of(List.of(), 11));
    }

    private static FishSample sample(int day, double weightG) {
        return new FishSample(1, FIRST.plus(Duration.ofDays(day)), 10, 40, OptionalDouble.of(10 * weightG));
    }
}
