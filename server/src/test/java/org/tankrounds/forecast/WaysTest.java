package org.tankrounds.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WaysTest {
    private static final List<Way> EACH_HOUR =
            IntStream.range(0, 72).mapToObj(hour -> Way.of(hour, Driver.TEMPERATURE)).toList();

    @ParameterizedTest
    @CsvSource({"0, 0", "0.02, 0", "0.06, 1", "0.35, 7", "0.5, 10", "0.7, 14", "0.97, 19", "1, 20"})
    void soManyOfTwentyGoBeyond_asTheChanceSays(double chance, int count) {
        Ways ways = Ways.of(EACH_HOUR, chance, 0);
        assertThat(ways.beyond()).hasSize(count);
        assertThat(ways.within()).isEqualTo(20 - count);
    }

    @Test
    void theirHours_areTheMiddlesOfEquallyManyPaths() {
        assertThat(Ways.of(EACH_HOUR, 0.2, 0).beyond())
                .extracting(way -> way.afterHours().getAsInt()).containsExactly(9, 27, 45, 63);
    }

    @Test
    void limits_keepTheirShares() {
        List<Way> paths = new ArrayList<>();
        IntStream.range(0, 30).forEach(i -> paths.add(Way.of(0, Driver.NITRITE)));
        IntStream.range(0, 10).forEach(i -> paths.add(Way.of(0, Driver.PH)));
        assertThat(Ways.of(paths, 0.2, 0).beyond()).extracting(way -> way.limit().orElseThrow())
                .containsExactly(Driver.NITRITE, Driver.NITRITE, Driver.NITRITE, Driver.PH);
    }

    /** A chance of 0.28, 0.2 of it what deaths tell of: either 0.1 on the paths or that. */
    @Test
    void whatOnlyDeathsTellOf_isNotLaidToTheWater() {
        assertThat(Ways.of(EACH_HOUR, 0.28, 0.2).beyond()).extracting(way -> way.limit().isPresent())
                .containsExactly(true, true, false, false, false, false);
    }

    @Test
    void troubleOnNoPath_isShownWithoutATime() {
        assertThat(Ways.of(List.of(), 0.25, 0.25).beyond()).hasSize(5).allSatisfy(way -> {
            assertThat(way.afterHours()).isEmpty();
            assertThat(way.limit()).isEqualTo(Optional.empty());
        });
    }
}
