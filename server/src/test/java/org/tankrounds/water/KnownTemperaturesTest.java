package org.tankrounds.water;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;

/** At which temperature oxygen in % is taken: our own rule, no source. */
class KnownTemperaturesTest {
    private static final Instant NOON = Instant.parse("2026-01-12T12:00:00Z");

    private final KnownTemperatures known = new KnownTemperatures();

    @Test
    void newestBefore_counts_whateverCameFirst() {
        add(-2, 12, false);
        add(-1, 18, false);
        add(-3, 9, false);
        add(1, 5, false);
        assertThat(known.at(NOON)).isEqualTo(18);
    }

    @Test
    void doubtfulOne_countsBesideTheOxygenOnly() {
        add(-2, 18, false);
        add(-1, 27, true);
        assertThat(known.at(NOON)).isEqualTo(18);
        assertThat(known.at(NOON.minus(Duration.ofHours(1)))).as("the same look").isEqualTo(27);
        add(-1, 17, false);
        assertThat(known.at(NOON.minus(Duration.ofHours(1)))).as("one that nobody doubts").isEqualTo(17);
    }

    @Test
    void ofTwoAtOnce_theWarmerCounts() {
        add(0, 18, false);
        add(0, 5, false);
        assertThat(known.at(NOON)).isEqualTo(18);
    }

    @Test
    void whatNoWaterWithFishHas_orIsOlderThanTwoWeeks_isNotKnown() {
        add(-1, 64, true);
        add(-14 * 24, 18, false);
        assertThat(known.at(NOON)).isEqualTo(18);
        assertThat(known.at(NOON.plusSeconds(1))).isNaN();
        assertThat(new KnownTemperatures().at(NOON)).isNaN();
    }

    private void add(int hours, double temperatureC, boolean isDoubtful) {
        known.add(NOON.plus(Duration.ofHours(hours)), temperatureC, isDoubtful);
    }
}
