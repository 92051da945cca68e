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

    /** The published example of an open package of R that cites Hilsenhoff 1988 (confirmed). */
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

    /**
     * Hilsenhoff 1988, doi:10.2307/1467832, as an open package of R has it that cites the paper and the bioassessment
     * manuals of the US EPA (confirmed, second-hand). Copies differ in two: Baetiscidae 3 or 4; Glossosomatidae 0 or,
     * in that package, 1. What is no arthropod was added later by others; Sphaeriidae 6 to 8, of which 8 is taken.
     */
    @ParameterizedTest(name = "{0} of {1} bears {2}")
    @CsvSource({"CAPNIIDAE, PLECOPTERA, 1", "CHLOROPERLIDAE, PLECOPTERA, 1", "LEUCTRIDAE, PLECOPTERA, 0",
            "NEMOURIDAE, PLECOPTERA, 2", "PERLIDAE, PLECOPTERA, 1", "PERLODIDAE, PLECOPTERA, 2",
            "PTERONARCYIDAE, PLECOPTERA, 0", "TAENIOPTERYGIDAE, PLECOPTERA, 2", "BAETIDAE, EPHEMEROPTERA, 4",
            "BAETISCIDAE, EPHEMEROPTERA, 3", "CAENIDAE, EPHEMEROPTERA, 7", "EPHEMERELLIDAE, EPHEMEROPTERA, 1",
            "EPHEMERIDAE, EPHEMEROPTERA, 4", "HEPTAGENIIDAE, EPHEMEROPTERA, 4", "LEPTOPHLEBIIDAE, EPHEMEROPTERA, 2",
            "METRETOPODIDAE, EPHEMEROPTERA, 2", "OLIGONEURIIDAE, EPHEMEROPTERA, 2",
            "POLYMITARCYIDAE, EPHEMEROPTERA, 2", "POTAMANTHIDAE, EPHEMEROPTERA, 4", "SIPHLONURIDAE, EPHEMEROPTERA, 7",
            "TRICORYTHIDAE, EPHEMEROPTERA, 4", "BRACHYCENTRIDAE, TRICHOPTERA, 1", "GLOSSOSOMATIDAE, TRICHOPTERA, 0",
            "HELICOPSYCHIDAE, TRICHOPTERA, 3", "HYDROPSYCHIDAE, TRICHOPTERA, 4", "HYDROPTILIDAE, TRICHOPTERA, 4",
            "LEPIDOSTOMATIDAE, TRICHOPTERA, 1", "LEPTOCERIDAE, TRICHOPTERA, 4", "LIMNEPHILIDAE, TRICHOPTERA, 4",
            "MOLANNIDAE, TRICHOPTERA, 6", "ODONTOCERIDAE, TRICHOPTERA, 0", "PHILOPOTAMIDAE, TRICHOPTERA, 3",
            "PHRYGANEIDAE, TRICHOPTERA, 4", "POLYCENTROPODIDAE, TRICHOPTERA, 6", "PSYCHOMYIIDAE, TRICHOPTERA, 2",
            "RHYACOPHILIDAE, TRICHOPTERA, 0", "SERICOSTOMATIDAE, TRICHOPTERA, 3", "AESHNIDAE, ODONATA, 3",
            "CALOPTERYGIDAE, ODONATA, 5", "COENAGRIONIDAE, ODONATA, 9", "CORDULEGASTRIDAE, ODONATA, 3",
            "CORDULIIDAE, ODONATA, 5", "GOMPHIDAE, ODONATA, 1", "LESTIDAE, ODONATA, 9", "LIBELLULIDAE, ODONATA, 9",
            "MACROMIIDAE, ODONATA, 3", "CORYDALIDAE, MEGALOPTERA, 0", "SIALIDAE, MEGALOPTERA, 4",
            "DRYOPIDAE, COLEOPTERA, 5", "ELMIDAE, COLEOPTERA, 4", "PSEPHENIDAE, COLEOPTERA, 4",
            "ATHERICIDAE, DIPTERA, 2", "BLEPHARICERIDAE, DIPTERA, 0", "CERATOPOGONIDAE, DIPTERA, 6",
            "CHIRONOMIDAE_RED, DIPTERA, 8", "CHIRONOMIDAE, DIPTERA, 6", "DOLICHOPODIDAE, DIPTERA, 4",
            "EMPIDIDAE, DIPTERA, 6", "EPHYDRIDAE, DIPTERA, 6", "MUSCIDAE, DIPTERA, 6", "PSYCHODIDAE, DIPTERA, 10",
            "SIMULIIDAE, DIPTERA, 6", "SYRPHIDAE, DIPTERA, 10", "TABANIDAE, DIPTERA, 6", "TIPULIDAE, DIPTERA, 3",
            "GAMMARIDAE, CRUSTACEA, 4", "TALITRIDAE, CRUSTACEA, 8", "ASELLIDAE, CRUSTACEA, 8",
            "OLIGOCHAETA, ANNELIDA, 8", "HIRUDINEA, ANNELIDA, 10", "PHYSIDAE, MOLLUSCA, 8", "LYMNAEIDAE, MOLLUSCA, 6",
            "SPHAERIIDAE, MOLLUSCA, 8", "TURBELLARIA, TURBELLARIA, 4"})
    void tolerance_isAsPublished(Family family, Order order, int tolerance) {
        assertThat(family.order()).isEqualTo(order);
        assertThat(family.tolerance()).isEqualTo(tolerance);
    }

    /** So that a family that is added comes with its check. */
    @Test
    void families_areThoseOfThePublishedTable() {
        assertThat(Family.values()).hasSize(74);
    }
}
