package org.tankrounds.stream;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.stream.GroupScore.Abundance;
import org.tankrounds.stream.GroupScore.Water;

/** Weights and classes: US EPA 1997, Volunteer Stream Monitoring, EPA 841-B-97-003, from memory. */
class GroupScoreTest {
    private static final Map<Kind, Integer> SENSITIVE = Map.of(Kind.STONEFLY, 3, Kind.WATER_PENNY, 9,
            Kind.MAYFLY, 10, Kind.CADDISFLY, 99, Kind.RIFFLE_BEETLE, 100);
    private static final Map<Kind, Integer> SOMEWHAT = Map.of(Kind.CRANE_FLY, 1, Kind.SCUD, 40, Kind.CLAM, 12);
    private static final Map<Kind, Integer> TOLERANT = Map.of(Kind.LEECH, 2);

    /** 2 · 5.0 + 2 · 5.6 + 5.3 = 26.5; 3.2 + 2 · 3.4 = 10.0; 1.2; together 37.7, added up by hand. */
    @Test
    void score_ofTheWorkedSample_isFair() {
        assertThat(GroupScore.of(SENSITIVE).value()).isEqualTo(26.5);
        assertThat(GroupScore.of(SOMEWHAT).value()).isEqualTo(10.0);
        assertThat(GroupScore.of(TOLERANT).value()).isEqualTo(1.2);
        Map<Kind, Integer> all = new LinkedHashMap<>(SENSITIVE);
        all.putAll(SOMEWHAT);
        all.putAll(TOLERANT);
        GroupScore score = GroupScore.of(all);
        assertThat(score.value()).isEqualTo(37.7);
        assertThat(score.water()).isEqualTo(Water.FAIR);
    }

    @ParameterizedTest(name = "{0}, {1}: {2} tenths")
    @CsvSource({"SENSITIVE, RARE, 50", "SENSITIVE, COMMON, 56", "SENSITIVE, DOMINANT, 53",
            "SOMEWHAT_SENSITIVE, RARE, 32", "SOMEWHAT_SENSITIVE, COMMON, 34", "SOMEWHAT_SENSITIVE, DOMINANT, 30",
            "TOLERANT, RARE, 12", "TOLERANT, COMMON, 11", "TOLERANT, DOMINANT, 10"})
    void weight_isThatOfTheManual(Sensitivity sensitivity, Abundance abundance, int tenths) {
        assertThat(GroupScore.weightTenths(sensitivity, abundance)).isEqualTo(tenths);
    }

    @ParameterizedTest(name = "{0} tenths: {1}")
    @CsvSource({"401, GOOD", "400, FAIR", "200, FAIR", "199, POOR", "0, POOR"})
    void water_isOfThreeClasses(int tenths, Water water) {
        assertThat(new GroupScore(tenths).water()).isEqualTo(water);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"1, RARE", "9, RARE", "10, COMMON", "99, COMMON", "100, DOMINANT"})
    void abundance_isRareCommonOrDominant(int animals, Abundance abundance) {
        assertThat(Abundance.of(animals)).isEqualTo(abundance);
    }

    @Test
    void abundance_ofWhatWasNotFound_isRefused() {
        assertThatThrownBy(() -> Abundance.of(0)).isInstanceOf(IllegalArgumentException.class);
    }
}
