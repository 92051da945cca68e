package org.tankrounds.lab;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.tankrounds.forecast.Experience;
import org.tankrounds.forecast.Sign;

/**
 * Learning from lessons made up here, of which the truth is known: odds rise with nitrite and fall with age.
 */
class LearningTest {

    @Test
    void experience_ofTheSameLessons_isTheSame() {
        assertThat(Learning.of(lessons(5)).lines()).isEqualTo(Learning.of(lessons(5)).lines());
    }

    @Test
    void experience_survivesBeingWritten() {
        Experience learned = Learning.calibrated(Learning.of(lessons(5)), lessons(9));
        assertThat(Experience.read(entries(learned.lines()))).isEqualTo(learned);
    }

    @Test
    void chance_risesWithASignThatCanOnlyBeBad() {
        Experience learned = Learning.of(lessons(6));
        double before = 0;
        for (double nitrite = 0; nitrite < 2; nitrite += 0.05) {
            double chance = learned.chance(signs(nitrite, 1));
            assertThat(chance).as("at %s", nitrite).isGreaterThanOrEqualTo(before);
            before = chance;
        }
        assertThat(before).isGreaterThan(0.8);
    }

    @Test
    void unknownSign_isJudgedByTheLessonsThatLackedItToo() {
        Experience learned = Learning.of(lessons(7));
        double unknown = learned.chance(signs(Double.NaN, 1));
        assertThat(unknown).isBetween(0.35, 0.65);
    }

    private static Map<String, String> entries(List<String> lines) {
        return lines.stream().map(line -> line.split("=", 2))
                .collect(Collectors.toMap(part -> part[0], part -> part[1]));
    }

    private static List<Lesson> lessons(long seed) {
        Luck luck = new Luck(seed);
        List<Lesson> lessons = new ArrayList<>();
        for (int i = 0; i < 6_000; i++) {
            double nitrite = luck.between(0.0, 2.0);
            double age = luck.between(0.0, 20.0);
            boolean beyond = luck.happens(1 / (1 + Math.exp(-3 * (nitrite - 1) - 0.02 * (age - 10))));
            boolean isRead = luck.happens(0.8);
            lessons.add(new Lesson(signs(isRead ? nitrite : Double.NaN, age), beyond,
                    beyond ? 10 * nitrite : 0));
        }
        return lessons;
    }

    private static double[] signs(double nitriteU, double ageDays) {
        double[] signs = new double[Sign.values().length];
        Arrays.fill(signs, Double.NaN);
        signs[Sign.LOOK_AHEAD_CHANCE.ordinal()] = 0.5;
        signs[Sign.NITRITE_U.ordinal()] = nitriteU;
        signs[Sign.SILENT_DAYS.ordinal()] = ageDays;
        return signs;
    }
}
