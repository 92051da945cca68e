package org.tankrounds.belief;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What is sorted by where it would stand comes out as the language sorts it. */
class RisingOrderTest {

    @Test
    void levelsCloseTogether_rise() {
        double[] levels = new SplittableRandom(1).doubles(2400, 10, 12).toArray();
        levels[7] = 25;
        levels[2000] = -3;
        assertThat(RisingOrder.sorted(levels)).isEqualTo(sorted(levels));
    }

    @Test
    void manyFarFromFew_rise() {
        double[] levels = new SplittableRandom(2).doubles(300).map(draw -> draw < 0.5 ? 0 : draw * 1e-6).toArray();
        levels[150] = 1e12;
        assertThat(RisingOrder.sorted(levels)).isEqualTo(sorted(levels));
    }

    @Test
    void equalNumbers_stayAsTheyStand() {
        assertThat(RisingOrder.of(new double[] {2, 1, 2, 1, 2})).containsExactly(1, 3, 0, 2, 4);
        assertThat(RisingOrder.of(new double[] {5, 5, 5})).containsExactly(0, 1, 2);
    }

    @Test
    void rangeTooNarrowToDivide_rises() {
        assertThat(RisingOrder.of(new double[] {Double.MIN_VALUE, 0})).containsExactly(1, 0);
    }

    @Test
    void noNumbersOrOne_haveAnOrder() {
        assertThat(RisingOrder.of(new double[0])).isEmpty();
        assertThat(RisingOrder.of(new double[] {4})).containsExactly(0);
    }

    private static double[] sorted(double[] numbers) {
        double[] sorted = numbers.clone();
        Arrays.sort(sorted);
        return sorted;
    }
}
