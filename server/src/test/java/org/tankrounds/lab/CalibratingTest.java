package org.tankrounds.lab;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tankrounds.forecast.Calibration;
import org.tankrounds.forecast.Calibration.Point;

/** Chances that are too bold, as made up here: what is said at s comes true at 0.2 + 0.6 s. */
class CalibratingTest {

    @Test
    void pointsLieWhereItCameTrue() {
        Calibration found = Calibrating.of(lessons(40_000), lesson -> lesson.signs()[0]);
        assertThat(found.points()).hasSizeGreaterThan(10)
                .allSatisfy(point -> assertThat(point.came()).isCloseTo(0.2 + 0.6 * point.said(), within(0.03)));
    }

    @Test
    void pointsOfFewLessons_stillRise() {
        Calibration found = Calibrating.of(lessons(60), lesson -> lesson.signs()[0]);
        assertThat(found.points()).isSortedAccordingTo(Comparator.comparingDouble(Point::said))
                .isSortedAccordingTo(Comparator.comparingDouble(Point::came));
    }

    private static List<Lesson> lessons(int count) {
        Luck luck = new Luck(11);
        List<Lesson> lessons = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double said = luck.uniform();
            lessons.add(new Lesson(new double[] {said}, luck.happens(0.2 + 0.6 * said), 0));
        }
        return lessons;
    }
}
