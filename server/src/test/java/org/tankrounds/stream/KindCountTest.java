package org.tankrounds.stream;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.stream.KindCount.Water;

class KindCountTest {
    /** The classes as many volunteers use them (confirmed): above 22, 17 to 22, 11 to 16, below 11. */
    @ParameterizedTest(name = "{0}, {1}, {2}: {3} points, {4}")
    @CsvSource({"7, 1, 0, 23, EXCELLENT", "7, 0, 1, 22, GOOD", "5, 1, 0, 17, GOOD", "5, 0, 1, 16, FAIR",
            "3, 1, 0, 11, FAIR", "3, 0, 1, 10, POOR", "0, 0, 0, 0, POOR"})
    void water_isOfTheClassesOfVolunteers(int sensitive, int somewhat, int tolerant, int points, Water water) {
        KindCount count = new KindCount(sensitive, somewhat, tolerant);
        assertThat(count.points()).isEqualTo(points);
        assertThat(count.water()).isEqualTo(water);
    }

    @Test
    void kinds_areWeighedByHowSensitiveTheyAre() {
        assertThat(KindCount.of(Set.of(Kind.STONEFLY, Kind.MAYFLY, Kind.SCUD, Kind.LEECH)))
                .isEqualTo(new KindCount(2, 1, 1));
    }
}
