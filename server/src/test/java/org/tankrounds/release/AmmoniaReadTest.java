package org.tankrounds.release;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tankrounds.belief.Observation;
import org.tankrounds.water.Analyte;

class AmmoniaReadTest {
    private static final Instant NOON = Instant.parse("2026-04-20T12:00:00Z");

    @Test
    void theNewestCounts_whateverTheOrder_andNothingElseThanAmmonia() {
        assertThat(read(ammonia(2, 1), ammonia(0.4, 30), Observation.of(NOON, Analyte.NITRITE, 5, 0)).mgNPerL())
                .isEqualTo(2);
        assertThat(AmmoniaRead.newest("Room 3", List.of(Observation.of(NOON, Analyte.NITRITE, 5, 0)))).isEmpty();
    }

    @Test
    void whatIsInDoubt_tellsNothing_andWhatWasNotDetected_isNone() {
        Observation doubtful = new Observation(NOON, Analyte.TOTAL_AMMONIA, 40, 0, false, true);
        assertThat(read(doubtful, ammonia(0.4, 30)).mgNPerL()).isEqualTo(0.4);
        assertThat(read(new Observation(NOON, Analyte.TOTAL_AMMONIA, 2, 0, true, false)).asksToMixSlowly()).isFalse();
    }

    /** More than 1 mg/L in the box. */
    @Test
    void moreThanOneMilligram_asksToMixSlowly() {
        assertThat(read(ammonia(1, 1)).asksToMixSlowly()).isFalse();
        assertThat(read(ammonia(1.1, 1)).asksToMixSlowly()).isTrue();
    }

    private static AmmoniaRead read(Observation... observations) {
        return AmmoniaRead.newest("Room 3", List.of(observations)).orElseThrow();
    }

    private static Observation ammonia(double mgNPerL, int hoursAgo) {
        return Observation.of(NOON.minus(Duration.ofHours(hoursAgo)), Analyte.TOTAL_AMMONIA, mgNPerL, 0);
    }
}
