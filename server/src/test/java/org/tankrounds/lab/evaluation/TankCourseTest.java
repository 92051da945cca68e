package org.tankrounds.lab.evaluation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.lab.LabSeason;
import org.tankrounds.lab.TankSeason;

class TankCourseTest {
    private final float[] excess = new float[LabSeason.HOURS];

    @Test
    void episode_beginsAfterThreeDaysOfCalm() {
        beyond(1_000, 1_010);
        beyond(1_050, 1_060);
        beyond(1_140, 1_150);
        assertThat(episodes()).containsExactly(1_000, 1_140);
    }

    @Test
    void singleHour_isNoEpisode() {
        beyond(1_000, 1_001);
        assertThat(episodes()).isEmpty();
    }

    @Test
    void months_areThoseWithEggs() {
        assertThat(course().months()).isEqualTo((LabSeason.HOURS - 600) / 720.0);
    }

    private void beyond(int from, int until) {
        Arrays.fill(excess, from, until, 0.2f);
    }

    private List<Integer> episodes() {
        return course().episodes();
    }

    private TankCourse course() {
        return TankCourse.of(new LabTank("usual", 1, 0), new TankSeason(
                TankFacts.of("T000").build(), List.of(), 600, excess, new short[LabSeason.HOURS],
                new float[LabSeason.HOURS]));
    }
}
