package org.tankrounds.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.testing.Water;
import org.tankrounds.water.Analyte;

/** A probe that reads every other hour while the chiller stands: each reading tells a little more. */
class SlowWarmingTest {
    private static final Instant STOPS = Instant.parse("2026-11-24T15:00:00Z");
    private static final int READ_BEFORE_H = 96;
    private static final int FOLLOWED_H = 72;
    private static final double START_C = 10.5;
    private static final double ROOM_C = 20.5;
    private static final double TIME_CONSTANT_H = 30;
    private static final double PROBE_STEP_C = 0.1;
    /** The readings' steps make the warming look a little faster and slower. */
    private static final double RIPPLE = 0.12;

    static Stream<TankFacts.Builder> tanks() {
        return Stream.of(TankFacts.of("bare").volumeL(190),
                Water.feedingFish().eggsReceivedAt(STOPS.minus(Duration.ofDays(145))),
                Water.eggs().eggsReceivedAt(STOPS.minus(Duration.ofDays(1))));
    }

    @ParameterizedTest(name = "tank {index}")
    @MethodSource("tanks")
    void warmingReadFinely_raisesTheChanceHourByHour(TankFacts.Builder facts) {
        double highest = 0;
        for (int hour = 0; hour <= FOLLOWED_H; hour++) {
            double chance = chanceAt(hour, facts);
            assertThat(chance).as("%d h after the chiller stopped", hour).isGreaterThan(highest - RIPPLE);
            highest = Math.max(highest, chance);
        }
        assertThat(chanceAt(12, facts)).isGreaterThan(0.7);
        assertThat(chanceAt(0, facts)).isLessThan(0.3);
    }

    private static double chanceAt(int hour, TankFacts.Builder facts) {
        List<Observation> readings = new ArrayList<>();
        for (int h = -READ_BEFORE_H; h <= hour; h += 2) {
            double c = h < 0 ? START_C : ROOM_C - (ROOM_C - START_C) * Math.exp(-h / TIME_CONSTANT_H);
            double read = Math.rint(c / PROBE_STEP_C) * PROBE_STEP_C;
            readings.add(Observation.of(after(h), Analyte.TEMPERATURE, read, PROBE_STEP_C / 2));
        }
        return new Forecaster().forecast(facts.build(), readings, after(hour)).chance();
    }

    private static Instant after(int hours) {
        return STOPS.plus(Duration.ofHours(hours));
    }
}
