package org.tankrounds.fish;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FeedSizeTest {

    /**
     * Two university extension charts (confirmed): starter to 1.2 inches, crumbles 1 to 4 to 1.5, 2.3, 3.0 and 4.3,
     * then pellets.
     */
    @ParameterizedTest(name = "{0} inches")
    @CsvSource({
        "0.9, STARTER", "1.19, STARTER", "1.2, CRUMBLE_1", "1.49, CRUMBLE_1", "1.5, CRUMBLE_2", "2.29, CRUMBLE_2",
        "2.3, CRUMBLE_3", "2.99, CRUMBLE_3", "3.0, CRUMBLE_4", "4.29, CRUMBLE_4", "4.3, PELLET_3_32_INCH",
        "5.5, PELLET_3_32_INCH"})
    void size_isTheChartsForThatLength(double inches, FeedSize size) {
        assertThat(FeedSize.ofLength(inches * LengthWeight.MM_PER_INCH)).isEqualTo(size);
    }
}
