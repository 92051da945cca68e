package org.tankrounds.fish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tankrounds.fish.GrowthPace.Weighed;

class GrowthAheadTest {
    private static GrowthPace pace(Weighed... weighed) {
        return GrowthPace.of(List.of(weighed), GrowthAheadTest::warmthSince);
    }

    private static final Instant START = Instant.parse("2027-01-10T12:00:00Z");
    private static final GrowthPace FARM = new GrowthPace(0.12, 0.15, 0.18, true);

    /** Iwama and Tautz 1981, doi:10.1139/f81-087, exponent 1/3: 0.12 g, 10 °C, 90 d, TGC 0.15 → 6.26249 g. */
    @Test
    void length_isReachedWhenThePublishedModelSays() {
        GrowthAhead growth = new GrowthAhead(DateWindow.ofSeen(START), 0.12, 1.1, FARM, warmth(10, 200));
        assertThat(growth.weightG(at(90))).isCloseTo(6.26249, within(0.001));
        DateWindow window = growth.reaches(growth.lengthMm(6.26249));
        assertThat(days(window.expected())).isCloseTo(90, within(0.3));
        assertThat(days(window.earliest())).isCloseTo(90 * 0.15 / 0.18, within(0.5));
        assertThat(days(window.latest())).isCloseTo(90 * 0.15 / 0.12, within(0.5));
    }

    @Test
    void fryThatNobodyMeasured_haveAWideWindow_andAMeasuredOneANarrowOne() {
        DateWindow feeding = new DateWindow(at(0), at(5), at(10), false);
        DateWindow guessed = GrowthAhead.ofFry(feeding, warmth(11, 120)).reaches(50);
        GrowthAhead measured = new GrowthAhead(DateWindow.ofSeen(at(60)), 0.6, 1.1,
                pace(new Weighed(at(5), 0.15), new Weighed(at(60), 0.6)), warmth(11, 120));
        assertThat(measured.pace().own()).isTrue();
        assertThat(width(measured.reaches(50))).isLessThan(0.5 * width(guessed));
    }

    /** A published farm example (second-hand): 10 to 350 g at 11 °C in 200 d is a TGC of 0.222. */
    @Test
    void pace_isThatOfAPublishedExample() {
        GrowthPace pace = pace(new Weighed(at(0), 10), new Weighed(at(200), 350));
        assertThat(pace.usual()).isCloseTo(0.2224, within(5.1e-5));
        assertThat(pace.own()).isTrue();
    }

    @Test
    void weighingsOfAWeek_orFishThatShrank_sayNothingOfPace() {
        assertThat(pace(new Weighed(at(0), 0.5), new Weighed(at(7), 0.6)))
                .isEqualTo(GrowthPace.OF_CLASSROOMS);
        assertThat(pace(new Weighed(at(0), 0.9), new Weighed(at(40), 0.6)))
                .isEqualTo(GrowthPace.OF_CLASSROOMS);
    }

    /** Growth falls off above some 16 °C: warmer water does not count for more. */
    @Test
    void warmWater_countsAsSixteenDegrees() {
        GrowthAhead warm = new GrowthAhead(DateWindow.ofSeen(START), 0.2, 1.1, FARM, warmth(20, 60));
        GrowthAhead edge = new GrowthAhead(DateWindow.ofSeen(START), 0.2, 1.1, FARM, warmth(16, 60));
        assertThat(warm.weightG(at(40))).isEqualTo(edge.weightG(at(40)));
    }

    /**
     * A state agency reports (confirmed) that 3-inch trout grow 0.7 inch a month at 48 to 52 °F and 1.0 inch at 68 °F:
     * the pace of the first makes 1.12 of the second, and would make 1.4 if warm water went on counting. Held wide, as
     * nobody tells how those fish were fed.
     */
    @Test
    void warmWater_growsFishAsAnAgencySaw() {
        double threeInchG = LengthWeight.weightG(3 * LengthWeight.MM_PER_INCH, 1.1);
        double grownG = LengthWeight.weightG(3.7 * LengthWeight.MM_PER_INCH, 1.1);
        double percent = GrowthPace.of(List.of(new Weighed(at(0), threeInchG), new Weighed(at(30), grownG)),
                at -> 10 * days(at)).usual();
        assertThat(percent).as("a farm's 0.13 to 0.20, as such fish are").isBetween(0.13, 0.20);
        GrowthAhead warm = new GrowthAhead(DateWindow.ofSeen(START), threeInchG, 1.1,
                new GrowthPace(percent, percent, percent, true), warmth(20, 40));
        double inches = warm.lengthMm(warm.weightG(at(30))) / LengthWeight.MM_PER_INCH - 3;
        assertThat(inches).isCloseTo(1.0, within(0.2));
    }

    private static double warmthSince(Instant at) {
        return 11 * days(at);
    }

    private static Warmth warmth(double celsius, int days) {
        List<DatedTemperature> trace = new ArrayList<>();
        for (int day = 0; day < days; day++) {
            trace.add(new DatedTemperature(at(day), celsius));
        }
        return Warmth.of(trace, celsius);
    }

    private static double width(DateWindow window) {
        return days(window.latest()) - days(window.earliest());
    }

    private static Instant at(double day) {
        return START.plusSeconds(Math.round(day * 86_400));
    }

    private static double days(Instant at) {
        return Duration.between(START, at).toSeconds() / 86_400.0;
    }
}
