package org.tankrounds.stream;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;

class StreamSampleTest {
    private static final StreamSample WORKED = new StreamSample(Map.of(StreamGroup.FLAT_MAYFLY, 20,
            StreamGroup.CRAWLING_MAYFLY, 15, StreamGroup.GOLDEN_STONEFLY, 8, StreamGroup.NET_CADDIS, 30,
            StreamGroup.RIFFLE_BEETLE, 10, StreamGroup.MIDGE, 12, StreamGroup.BLACK_FLY, 5));

    /** The worked sample of {@link FamilyBioticIndexTest}, as the sheet tallies it. */
    @Test
    void sample_givesTheIndexAndTheRichnessOfItsFamilies() {
        assertThat(WORKED.index().orElseThrow().value()).isEqualTo(3.65);
        assertThat(WORKED.eptFamilies()).isEqualTo(4);
    }

    /** Heptageniidae, Ephemerellidae, Perlidae, Hydropsychidae, counted by hand. */
    @Test
    void eptFamilies_areThoseOfThreeOrders() {
        assertThat(StreamSample.eptFamilies(FamilyBioticIndexTest.WORKED)).isEqualTo(4);
    }

    /** Mayfly, stonefly and riffle beetle; net-spinner; midge and black fly: 3 · 3 + 2 + 2. */
    @Test
    void kinds_areCoarserThanGroups() {
        assertThat(WORKED.kindCount()).isEqualTo(new KindCount(3, 1, 2));
        assertThat(WORKED.kindCount().points()).isEqualTo(13);
    }

    @Test
    void whatNobodyCouldTell_isCountedAndInNoIndex() {
        StreamSample sample = new StreamSample(Map.of(StreamGroup.GOLDEN_STONEFLY, 4, StreamGroup.STONEFLY_UNSURE, 6,
                StreamGroup.UNKNOWN, 3, StreamGroup.WORM, 2));
        assertThat(sample.animals()).isEqualTo(15);
        assertThat(sample.withoutFamily()).isEqualTo(9);
        assertThat(sample.outsideIndex()).containsOnlyKeys(
                StreamGroup.STONEFLY_UNSURE, StreamGroup.UNKNOWN, StreamGroup.WORM);
        assertThat(sample.index().orElseThrow()).isEqualTo(new FamilyBioticIndex(4, 4));
        assertThat(sample.indexWithLaterGroups().orElseThrow()).isEqualTo(new FamilyBioticIndex(20, 6));
        assertThat(sample.kindCount()).isEqualTo(new KindCount(1, 0, 1));
    }

    @Test
    void kind_isAsAbundantAsItsGroupsTogether() {
        StreamSample sample = new StreamSample(Map.of(StreamGroup.FLAT_MAYFLY, 5, StreamGroup.MAYFLY_UNSURE, 5));
        assertThat(sample.groupScore().tenths()).isEqualTo(56);
    }

    @Test
    void sample_ofNothing_hasNoIndex() {
        StreamSample sample = new StreamSample(Map.of(StreamGroup.SCUD, 0));
        assertThat(sample.index()).isEmpty();
        assertThat(sample.kindCount().points()).isZero();
        assertThat(sample.counts()).isEmpty();
    }

    @Test
    void count_belowNothing_isRefused() {
        assertThatThrownBy(() -> new StreamSample(Map.of(StreamGroup.SCUD, -1)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
