package org.tankrounds.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.tankrounds.testing.Water.AS_OF;
import static org.tankrounds.testing.Water.FINE;
import static org.tankrounds.testing.Water.eggs;
import static org.tankrounds.testing.Water.feedingFish;
import static org.tankrounds.testing.Water.read;
import static org.tankrounds.testing.Water.with;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.belief.BeliefFilter;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankBelief;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.HeatBalance;

/** What a deed does to the water, on the courses of a tank, against formulas worked elsewhere. */
class WhatIfTest {
    private static final double EXACT = 1e-9;

    @Test
    void nothingDone_changesNothing() {
        Courses courses = courses(feedingFish(), FINE.withNitriteMgPerL(0.3).lastRead(0.1));
        Paths same = WhatIf.of(courses, Deed.NOTHING, 72);
        assertThat(same.nitriteMgPerL()).isDeepEqualTo(courses.paths().nitriteMgPerL());
        assertThat(same.unIonisedMgPerL()).isDeepEqualTo(courses.paths().unIonisedMgPerL());
    }

    /**
     * C_n = C_tap + (C_0 − C_tap)(1 − f)^n: three changes of 25 % leave 0.421875; two of them 0.5625, one
     * half 0.5.
     */
    @ParameterizedTest(name = "{0} times {1}")
    @CsvSource({"3, 0.25, 0.421875", "2, 0.25, 0.5625", "1, 0.5, 0.5"})
    void waterChange_dilutes(int times, double share, double left) {
        Deed deed = IntStream.range(0, times).mapToObj(i -> Deed.waterChange(share)).reduce(Deed.NOTHING, Deed::and);
        Courses courses = courses(feedingFish(), FINE.withNitriteMgPerL(0.3).lastRead(0.1));
        Paths changed = WhatIf.of(courses, deed, 72);
        assertThat(changed.nitriteMgPerL()[1][0] / courses.paths().nitriteMgPerL()[1][0])
                .isCloseTo(left, within(1e-9));
        assertThat(changed.nitriteMgPerL()[0][0]).isEqualTo(courses.paths().nitriteMgPerL()[0][0]);
    }

    /**
     * The filter has less to do, and what fish give off goes on: what was taken out comes back, never all of
     * it where alkalinity is as in the source.
     */
    @Test
    void waterTakenOut_comesBackInPart() {
        Courses courses = courses(feedingFish().sourceAlkalinityMgPerL(75), with(
                FINE.withNitriteMgPerL(0.3).lastRead(0.1), read(0.1, Analyte.ALKALINITY, 75, 1)));
        Paths changed = WhatIf.of(courses, Deed.waterChange(0.5), 72);
        double[] left = IntStream.of(1, 24, 72)
                .mapToDouble(h -> changed.nitriteMgPerL()[h][0] / courses.paths().nitriteMgPerL()[h][0]).toArray();
        assertThat(left).isSorted();
        assertThat(left[2]).isBetween(0.55, 0.999);
    }

    /** Eggs give off next to nothing, so nothing comes back. */
    @Test
    void waterOfEggs_staysChanged() {
        Courses courses = courses(eggs(), FINE.withNitriteMgPerL(0.3).lastRead(0.1));
        Paths changed = WhatIf.of(courses, Deed.waterChange(0.5), 72);
        assertThat(changed.nitriteMgPerL()[72][0] / courses.paths().nitriteMgPerL()[72][0]).isBetween(0.49, 0.6);
    }

    /**
     * With carbon dioxide alike, pH = pK1 + log10(HCO3/CO2): twice the alkalinity is 0.301 more. Of the
     * 12.779 mg/L CO2 at pH 7.0, 50 mg/L and 10 °C (Plummer and Busenberg 1982) that makes pH 7.301.
     */
    @Test
    void bakingSoda_liftsThePhByTheLogarithmOfTheAlkalinity() {
        Courses courses = courses(feedingFish(),
                with(FINE.lastRead(0.1), read(1, Analyte.ALKALINITY, 50, EXACT)));
        Paths buffered = WhatIf.of(courses, Deed.bakingSoda(50), 72);
        assertThat(buffered.ph()[5][0] - courses.paths().ph()[5][0]).isCloseTo(0.30103, within(1e-5));
    }

    /**
     * Emerson et al. 1975 at 10 °C: 0.1853 % of the ammonia at pH 7.0, 0.5835 % at 7.5; half a unit is a
     * factor of 3.149.
     */
    @Test
    void higherPh_makesMoreOfTheAmmoniaHarmful() {
        List<Observation> sour = with(FINE.withTemperatureC(10).withPh(7).lastRead(0.1),
                read(1, Analyte.ALKALINITY, 50, EXACT));
        Courses courses = courses(eggs(), sour);
        double alkalinityForHalfAUnit = 50 * (Math.pow(10, 0.5) - 1);
        Paths buffered = WhatIf.of(courses, Deed.bakingSoda(alkalinityForHalfAUnit), 72);
        assertThat(buffered.unIonisedMgPerL()[1][0] / courses.paths().unIonisedMgPerL()[1][0])
                .isCloseTo(0.5835 / 0.1853, within(0.01));
    }

    /** 190 kg from 15 to 12 °C melt 6.2098 kg of ice: c · M · ΔT / (334 000 + c · 12). */
    @Test
    void ice_takesOutTheHeatOfMelting() {
        double coolingK = 6.2098 / HeatBalance.iceToCoolKg(190, 1, 12);
        assertThat(coolingK).isCloseTo(3, within(1e-3));
        Courses courses = courses(eggs(), FINE.withTemperatureC(17).lastRead(0.1));
        Paths cooled = WhatIf.of(courses, Deed.ice(coolingK, 10), 72);
        double fall = courses.paths().temperatureC()[3][0] - cooled.temperatureC()[3][0];
        assertThat(fall).isBetween(2.0, 3.001);
        assertThat(cooled.temperatureC()[72][0]).isCloseTo(courses.paths().temperatureC()[72][0], within(1.5));
    }

    @Test
    void ice_coolsNoFurtherThanIsToBeHeld() {
        Courses courses = courses(feedingFish(), FINE.withTemperatureC(11).lastRead(0.1));
        Paths same = WhatIf.of(courses, Deed.ice(10, 17), 72);
        for (int k = 0; k < same.count(); k++) {
            if (courses.paths().temperatureC()[12][k] < 17) {
                assertThat(same.temperatureC()[12][k])
                        .isCloseTo(courses.paths().temperatureC()[12][k], within(1e-9));
            }
        }
    }

    @Test
    void chillerThatStands_isSetGoing_andOnlyThere() {
        Courses courses = courses(feedingFish(), warming());
        Paths mended = WhatIf.of(courses, Deed.mendedChiller(), 72);
        int stands = 0;
        for (int k = 0; k < mended.count(); k++) {
            if (courses.belief().temperature().stopped()[courses.which()[k]]) {
                stands++;
                assertThat(mended.temperatureC()[48][k])
                        .isCloseTo(courses.belief().temperature().heldC()[courses.which()[k]], within(0.5));
            } else {
                assertThat(mended.temperatureC()[48][k]).isEqualTo(courses.paths().temperatureC()[48][k]);
            }
        }
        assertThat(stands).isGreaterThan(50);
    }

    /** EIFAC 1984 (from memory): 0.15 mg N/L at 5 mg/L chloride, 0.45 from 40 mg/L on. */
    @Test
    void salt_raisesTheNitriteLimitOverHours() {
        Courses courses = courses(feedingFish().chlorideMgPerL(5), FINE.withNitriteMgPerL(0.3).lastRead(0.1));
        Paths salted = WhatIf.of(courses, Deed.salt(55), 72);
        assertThat(salted.chlorideMgPerL()[3]).isCloseTo(5 + 55 / 2.0, within(1e-9));
        double uBefore = courses.paths().u(Driver.NITRITE, 24, 0, Limits.DEFAULT);
        assertThat(salted.u(Driver.NITRITE, 24, 0, Limits.DEFAULT)).isCloseTo(uBefore * 0.15 / 0.45, within(1e-9));
    }

    @Test
    void unfedFish_giveOffLess_andFedAgainAsMuchAsBefore() {
        Courses courses = courses(feedingFish(), FINE.withTotalAmmoniaMgPerL(1).lastRead(0.1));
        Paths fasting = WhatIf.of(courses, Deed.fast(24), 72);
        double[] off = IntStream.of(6, 24)
                .mapToDouble(h -> total(courses.paths(), h) - total(fasting, h)).toArray();
        assertThat(off[0]).isPositive();
        assertThat(off[1]).isGreaterThan(off[0]);
    }

    private static double total(Paths paths, int hour) {
        return paths.unIonisedMgPerL()[hour][0]
                / Courses.unIonisedPerTotal(paths.ph()[hour][0], paths.temperatureC()[hour][0]);
    }

    /**
     * A fasting fish breathes out a quarter to a half less carbon dioxide (from memory). With 4 mg/L of it, 3
     * of them from breath, three tenths less leave 3.1: the pH is log10(4 / 3.1) = 0.11 higher, and a quarter
     * more of eight milligrams of ammonia is more than a day's less.
     */
    @Test
    void unfedFish_breatheOutLess_whichHarmsWhereAmmoniaIsHigh() {
        Courses courses = courses(feedingFish(), with(FINE.withTotalAmmoniaMgPerL(8).lastRead(0.1),
                read(1, Analyte.ALKALINITY, 30, EXACT)));
        Paths fasting = WhatIf.of(courses, Deed.fast(24), 72);
        assertThat(fasting.ph()[24][0] - courses.paths().ph()[24][0]).isBetween(0.05, 0.15);
        assertThat(fasting.unIonisedMgPerL()[24][0]).isGreaterThan(courses.paths().unIonisedMgPerL()[24][0]);
    }

    /** 2 to 8 mg/L of carbon dioxide at pH 7.3 and 11 °C go with 16 to 64 mg/L (Plummer and Busenberg 1982). */
    @Test
    void alkalinityThatNobodyRead_isHeldByItsSpan() {
        double[] held = courses(
                feedingFish().sourceAlkalinityMgPerL(100), FINE.lastRead(0.1)).alkalinityMgPerL();
        double[] ends = {Arrays.stream(held).min().orElseThrow(), Arrays.stream(held).max().orElseThrow()};
        assertThat(ends[0]).isBetween(8.0, 20.0);
        assertThat(ends[1]).isBetween(55.0, 130.0);
    }

    /** Nitrifiers use it up: what was read a week ago is the most that is left. */
    @Test
    void alkalinityReadAWeekAgo_isTheMostThatIsHeld() {
        double[] held = courses(feedingFish(), with(FINE.withPh(7.6).lastRead(0.1),
                read(7, Analyte.ALKALINITY, 20, 5))).alkalinityMgPerL();
        assertThat(Arrays.stream(held).max()).hasValue(25);
    }

    @Test
    void eggs_cannotFast() {
        Courses courses = courses(eggs(), FINE.withTotalAmmoniaMgPerL(1).lastRead(0.1));
        assertThat(WhatIf.of(courses, Deed.fast(24), 72).unIonisedMgPerL())
                .isDeepEqualTo(courses.paths().unIonisedMgPerL());
    }

    /** A first guild that lacked alkalinity wakes: nitrite rises though nothing was fed. */
    @Test
    void bakingSodaInAnExhaustedTank_turnsAmmoniaIntoNitrite() {
        Courses courses = courses(feedingFish(), with(FINE.withPh(6.2).withTotalAmmoniaMgPerL(1).lastRead(0.1),
                read(1, Analyte.ALKALINITY, 5, 2)));
        Paths buffered = WhatIf.of(courses, Deed.bakingSoda(20), 72);
        assertThat(buffered.nitriteMgPerL()[24][0]).isGreaterThan(courses.paths().nitriteMgPerL()[24][0]);
    }

    /** No more nitrite comes of it than there was ammonia. */
    @Test
    void bakingSoda_whereThereIsNoAmmonia_makesHardlyAnyNitrite() {
        Courses courses = courses(feedingFish(), with(FINE.withPh(6.4).withTotalAmmoniaMgPerL(0).lastRead(0.1),
                read(1, Analyte.ALKALINITY, 3, 2)));
        Paths buffered = WhatIf.of(courses, Deed.bakingSoda(20), 72);
        for (int k = 0; k < buffered.count(); k++) {
            assertThat(buffered.nitriteMgPerL()[2][k] - courses.paths().nitriteMgPerL()[2][k])
                    .isLessThanOrEqualTo(2 * courses.totalMgPerL()[2][k]);
        }
    }

    @Test
    void twiceTheAir_leavesHalfTheGapToSaturation() {
        Courses courses = courses(feedingFish(), FINE.withOxygenMgPerL(5).lastRead(0.1));
        Paths aired = WhatIf.of(courses, Deed.moreAir(), 72);
        double saturation = ForwardModel.saturationAt(ForwardModel.saturation(0),
                courses.paths().temperatureC()[10][0]);
        assertThat(saturation - aired.oxygenMgPerL()[10][0])
                .isCloseTo((saturation - courses.paths().oxygenMgPerL()[10][0]) / 2, within(1e-9));
    }

    private static List<Observation> warming() {
        List<Observation> readings = FINE.lastRead(1.1);
        for (int i = 0; i < 5; i++) {
            readings.add(read(0.1 + 0.2 * i, Analyte.TEMPERATURE, 16.5 - i, 0.25));
        }
        return readings;
    }

    private static Courses courses(TankFacts.Builder facts, List<Observation> readings) {
        TankBelief belief = BeliefFilter.believe(facts.build(), readings, AS_OF);
        Paths all = ForwardModel.run(belief);
        int[] picked = new int[all.count()];
        Arrays.setAll(picked, i -> i);
        return Courses.of(belief, all, picked, 100);
    }
}
