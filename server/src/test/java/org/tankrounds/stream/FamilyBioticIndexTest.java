package org.tankrounds.stream;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.stream.FamilyBioticIndex.Water;

class FamilyBioticIndexTest {
    /** Σ(n · t) = 80 + 15 + 8 + 120 + 40 + 72 + 30 = 365 of N = 100, added up by hand. */
    static final Map<Family, Integer> WORKED = Map.of(Family.HEPTAGENIIDAE, 20, Family.EPHEMERELLIDAE, 15,
            Family.PERLIDAE, 8, Family.HYDROPSYCHIDAE, 30, Family.ELMIDAE, 10, Family.CHIRONOMIDAE, 12,
            Family.SIMULIIDAE, 5);

    @Test
    void index_ofTheWorkedSample_isExcellent() {
        FamilyBioticIndex index = FamilyBioticIndex.of(WORKED).orElseThrow();
        assertThat(index.tolerances()).isEqualTo(365);
        assertThat(index.animals()).isEqualTo(100);
        assertThat(index.value()).isEqualTo(3.65);
        assertThat(index.water()).isEqualTo(Water.EXCELLENT);
        assertThat(index.isOfEnoughAnimals()).isTrue();
    }

    /** The published example of an open package of R that cites Hilsenhoff 1988. */
    @Test
    void index_isThatOfThePublishedExample() {
        assertThat(FamilyBioticIndex.of(Map.of(Family.AESHNIDAE, 2, Family.CHLOROPERLIDAE, 15)).orElseThrow().value())
                .isCloseTo(1.235294, within(5e-7));
        assertThat(FamilyBioticIndex.of(Map.of(Family.CAPNIIDAE, 4)).orElseThrow().value()).isEqualTo(1.0);
    }

    /** Hilsenhoff 1988, from memory: the seven classes of the index of families. */
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({"0, EXCELLENT", "375, EXCELLENT", "376, VERY_GOOD", "425, VERY_GOOD", "426, GOOD", "500, GOOD",
            "501, FAIR", "575, FAIR", "576, FAIRLY_POOR", "650, FAIRLY_POOR", "651, POOR", "725, POOR",
            "726, VERY_POOR", "1000, VERY_POOR"})
    void water_isOfTheClassesOf1988(int hundredths, Water water) {
        assertThat(new FamilyBioticIndex(hundredths, 100).water()).isEqualTo(water);
    }

    /** Highest values of the index of genera and species: with those, 4.5 would be very good and 6.5 fairly poor. */
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({"360, EXCELLENT", "450, GOOD", "550, FAIR", "740, VERY_POOR", "850, VERY_POOR"})
    void water_isNotOfTheClassesOfGenera(int hundredths, Water water) {
        assertThat(new FamilyBioticIndex(hundredths, 100).water()).isEqualTo(water);
    }

    /** 3.755 is written as 3.76. */
    @Test
    void water_isThatOfTheIndexAsWritten() {
        assertThat(new FamilyBioticIndex(3755, 1000).water()).isEqualTo(Water.VERY_GOOD);
        assertThat(new FamilyBioticIndex(3754, 1000).water()).isEqualTo(Water.EXCELLENT);
    }

    @Test
    void index_leavesOutWhatIsNoArthropod() {
        Map<Family, Integer> withWorms = Map.of(Family.CAPNIIDAE, 4, Family.OLIGOCHAETA, 4);
        assertThat(FamilyBioticIndex.of(withWorms).orElseThrow().value()).isEqualTo(1.0);
        assertThat(FamilyBioticIndex.withLaterGroups(withWorms).orElseThrow().value()).isEqualTo(4.5);
    }

    @Test
    void index_ofNothing_isNone() {
        assertThat(FamilyBioticIndex.of(Map.of())).isEmpty();
        assertThat(FamilyBioticIndex.of(Map.of(Family.HIRUDINEA, 3))).isEmpty();
        assertThat(FamilyBioticIndex.of(Map.of(Family.PERLIDAE, 0))).isEmpty();
    }

    @Test
    void index_ofFewAnimals_saysSo() {
        assertThat(FamilyBioticIndex.of(Map.of(Family.PERLIDAE, 99)).orElseThrow().isOfEnoughAnimals()).isFalse();
    }

    @Test
    void index_ofCountsBelowNothing_isRefused() {
        assertThatThrownBy(() -> FamilyBioticIndex.of(Map.of(Family.PERLIDAE, -1)))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("-1");
        assertThatThrownBy(() -> new FamilyBioticIndex(11, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Some lines of the published table, one of each order. */
    @ParameterizedTest(name = "{0} bears {1}")
    @CsvSource({"PTERONARCYIDAE, 0", "CAENIDAE, 7", "SIPHLONURIDAE, 7", "PHILOPOTAMIDAE, 3", "LIBELLULIDAE, 9",
            "CORYDALIDAE, 0", "DRYOPIDAE, 5", "CHIRONOMIDAE_RED, 8", "PSYCHODIDAE, 10", "ASELLIDAE, 8",
            "HIRUDINEA, 10"})
    void tolerance_isAsPublished(Family family, int tolerance) {
        assertThat(family.tolerance()).isEqualTo(tolerance);
    }
}
