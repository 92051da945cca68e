package org.tankrounds.fish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.fish.LengthWeight.Build;

class LengthWeightTest {
    private static final double G_PER_POUND = 453.59237;

    /** Leitritz and Lewis 1976, California Fish Bulletin 164, feed chart (confirmed): fish per pound. */
    @ParameterizedTest(name = "{0} inches")
    @CsvSource({"1, 2542", "2, 304", "3, 88.3", "4, 37.8", "5, 19.7", "6, 11.6", "8, 4.94", "10, 2.53"})
    void weight_isThatOfTheHatcheryClass(double inches, double fishPerPound) {
        double lengthMm = inches * LengthWeight.MM_PER_INCH;
        double weightG = G_PER_POUND / fishPerPound;
        assertThat(LengthWeight.weightG(lengthMm, LengthWeight.USUAL_CONDITION))
                .isCloseTo(weightG, withinPercentage(6));
        assertThat(LengthWeight.condition(lengthMm, weightG)).isBetween(1.08, 1.17);
    }

    /** The same classes: g of one fish and the condition that they imply, computed once elsewhere to four digits. */
    @ParameterizedTest(name = "{0} inches")
    @CsvSource({
        "1, 2542, 0.1784, 1.0889", "2, 304, 1.4921, 1.1382", "3, 88.3, 5.1369, 1.1610", "4, 37.8, 12.000, 1.1442",
        "5, 19.7, 23.025, 1.1241", "6, 11.6, 39.103, 1.1047", "8, 4.94, 91.820, 1.0944", "10, 2.53, 179.286, 1.0941"})
    void condition_isThatOfTheHatcheryClass(double inches, double fishPerPound, double weightG, double condition) {
        double lengthMm = inches * LengthWeight.MM_PER_INCH;
        assertThat(LengthWeight.condition(lengthMm, G_PER_POUND / fishPerPound)).isCloseTo(condition, within(5.1e-5));
        assertThat(LengthWeight.weightG(lengthMm, condition)).isCloseTo(weightG, withinPercentage(0.035));
        assertThat(LengthWeight.LIKELY_CONDITION.holds(condition)).isTrue();
    }

    /** The same classes, the other way round: what the feed chart calls a class is as usual, and counts as it does. */
    @ParameterizedTest(name = "{0} inches")
    @CsvSource({
        "1, 2542, 0.1784, 1.0889", "2, 304, 1.4921, 1.1382", "3, 88.3, 5.1369, 1.1610", "4, 37.8, 12.000, 1.1442",
        "5, 19.7, 23.025, 1.1241", "6, 11.6, 39.103, 1.1047", "8, 4.94, 91.820, 1.0944", "10, 2.53, 179.286, 1.0941"})
    void hatcheryClass_isAsUsual_andAsManyToThePound(
            double inches, double fishPerPound, double weightG, double condition) {
        assertThat(LengthWeight.fishPerPound(weightG)).isCloseTo(fishPerPound, withinPercentage(0.035));
        assertThat(LengthWeight.build(LengthWeight.condition(inches * LengthWeight.MM_PER_INCH, weightG)))
                .isEqualTo(Build.USUAL);
        assertThat(LengthWeight.build(condition)).isEqualTo(Build.USUAL);
    }

    /** Usual from 1.0 (Piper et al. 1982) to 1.16 (the classes above); thin and round: common practice, no source. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "0.72, THIN", "0.89, THIN", "0.8949, THIN", "0.8951, NEAR_USUAL", "0.90, NEAR_USUAL", "0.99, NEAR_USUAL",
        "1.00, USUAL", "1.07, USUAL", "1.16, USUAL", "1.17, NEAR_USUAL", "1.30, NEAR_USUAL",
        "1.31, ROUND", "1.6, ROUND"})
    void condition_isSaidInAWord(double condition, Build build) {
        assertThat(LengthWeight.build(condition)).isEqualTo(build);
    }

    /** By hand: 100 · 0.85 g / (4.3 cm)³ = 1.069, and 453.59237 / 0.85 = 533.6. */
    @Test
    void smallFry_areCountedByThePoundToo() {
        assertThat(LengthWeight.condition(43, 0.85)).isCloseTo(1.069, within(5e-4));
        assertThat(LengthWeight.fishPerPound(0.85)).isCloseTo(533.6, within(0.05));
    }

    /** Two of 40 and 60 mm, each at 1.1: their mean says 1.23, for 3 · 0.2² = 12 %. */
    @Test
    void fishThatDiffer_makeTheMeansFactorTooHigh() {
        double meanG = (LengthWeight.weightG(40, 1.1) + LengthWeight.weightG(60, 1.1)) / 2;
        assertThat(LengthWeight.condition(50, meanG)).isCloseTo(1.1 * 1.12, within(1e-9));
    }

    @Test
    void whatNoFishHas_isRefused() {
        assertThatThrownBy(() -> LengthWeight.build(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> LengthWeight.build(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> LengthWeight.fishPerPound(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> LengthWeight.fishPerPound(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    /** The coefficient in lb/in³ is 36.127 times the metric one; 36.13 as printed (Piper et al. 1982; confirmed). */
    @Test
    void weight_isTheSameInPoundsAndInches() {
        assertThat(LengthWeight.weightG(3 * LengthWeight.MM_PER_INCH, 1.1))
                .isCloseTo(36.127 * 1.1e-5 * 3 * 3 * 3 * G_PER_POUND, withinPercentage(0.002));
        double poundsByInches = 36.13 * 1.1e-5 * 3 * 3 * 3;
        assertThat(LengthWeight.weightG(3 * LengthWeight.MM_PER_INCH, 1.1))
                .isCloseTo(poundsByInches * G_PER_POUND, withinPercentage(0.02));
    }

    /**
     * Standard weight of rainbow trout of still water, W = 0.0119 L^2.990, and of running water, W = 0.0100 L^3.024,
     * L in cm (confirmed; Simpkins and Hubert 1996 from memory), which is about what fish in good condition weigh.
     */
    @ParameterizedTest(name = "{0} mm")
    @CsvSource({"120", "200", "300"})
    void weight_isNearTheStandardWeight(double lengthMm) {
        assertThat(LengthWeight.weightG(lengthMm, LengthWeight.USUAL_CONDITION))
                .isCloseTo(0.0119 * Math.pow(lengthMm / 10, 2.990), withinPercentage(8))
                .isCloseTo(0.0100 * Math.pow(lengthMm / 10, 3.024), withinPercentage(8));
    }

    /** W = K · L³ / 100 000 at K 1.10, computed once elsewhere. */
    @ParameterizedTest(name = "{0} mm")
    @CsvSource({"25, 0.1719", "30, 0.2970", "40, 0.7040", "50, 1.3750", "75, 4.6406"})
    void length_isFoundBackFromTheWeight(double lengthMm, double weightG) {
        assertThat(LengthWeight.weightG(lengthMm, 1.1)).isCloseTo(weightG, within(5e-5));
        assertThat(LengthWeight.lengthMm(weightG, 1.1)).isCloseTo(lengthMm, within(0.01));
    }

    /** 50 typed as inches, or as centimetres, is no trout. */
    @Test
    void wrongUnit_givesAnUnlikelyCondition() {
        assertThat(LengthWeight.LIKELY_CONDITION.holds(LengthWeight.condition(50, 1.375))).isTrue();
        assertThat(LengthWeight.LIKELY_CONDITION.holds(LengthWeight.condition(50, 137.5))).isFalse();
        assertThatThrownBy(() -> LengthWeight.condition(5, 1.375)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> LengthWeight.lengthMm(0, 1.1)).isInstanceOf(IllegalArgumentException.class);
    }
}
