package org.tankrounds.lab.evaluation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Six tanks on one morning; the first three go beyond a limit. */
class ReportTest {
    private static final int TANKS = 6;

    @Test
    void heading_saysWhatWasAsked() {
        assertThat(report().heading()).isEqualTo("6 questions about 6 tanks in one world; 50.0 % came true.");
    }

    @Test
    void scores_standBesideThoseOfTheReference() {
        List<String> scores = table("scores").csv();
        assertThat(scores.get(1)).startsWith("all,engine,1.0000,");
        assertThat(scores.get(2)).startsWith("all,latest reading,0.5000,");
        assertThat(table("gains").csv().get(1)).startsWith("latest reading,0.5000,");
    }

    @Test
    void sourceTakenAway_isJudgedByTheTanksThatHadIt() {
        List<String> without = table("without").csv();
        assertThat(without).hasSize(2);
        assertThat(without.get(1)).startsWith("probe,2,1.0000,");
    }

    @Test
    void singleWorld_hasNoTablesOfItsOwn() {
        assertThat(report().tables()).extracting(Table::name)
                .containsExactly("scores", "gains", "without", "reliability", "brier", "alarms");
    }

    @Test
    void text_standsInColumnsUnderItsHeadings() {
        List<String> text = table("reliability").text();
        assertThat(text.get(0)).isEqualTo("What came true of the engine's chances");
        assertThat(text.get(2)).isEqualTo("chance      cases   said  came true           miss");
        assertThat(text.get(3)).isEqualTo("0.0 to 0.1      0      –          –              –");
        assertThat(text.get(12)).isEqualTo("0.9 to 1.0      3  0.900      1.000   0.100 ±0.000");
    }

    private static Table table(String name) {
        return report().tables().stream().filter(table -> table.name().equals(name)).findFirst().orElseThrow();
    }

    /** Without its probe the engine takes tank 0 for the safe one and tank 5 for the one in danger. */
    private static Report report() {
        List<Question> questions = new ArrayList<>();
        List<Answer> engine = new ArrayList<>();
        List<Answer> without = new ArrayList<>();
        List<Answer> reference = new ArrayList<>();
        List<TankCourse> courses = new ArrayList<>();
        for (int tank = 0; tank < TANKS; tank++) {
            boolean beyond = tank < TANKS / 2;
            questions.add(new Question(name(tank), 7, beyond, beyond ? 10 : 0));
            engine.add(new Answer(beyond ? 0.9 : 0.2, beyond ? 5 : 1));
            without.add(new Answer(tank == 0 ? 0.2 : tank == 5 ? 0.9 : beyond ? 0.9 : 0.2, 1));
            reference.add(Answer.ofOrder(1));
            courses.add(new TankCourse(name(tank), 5, List.of()));
        }
        Map<String, Set<LabTank>> touched = new LinkedHashMap<>();
        touched.put("probe", Set.of(name(0), name(5)));
        return new Report(new Examination(1, questions, List.of(new Voice("engine", true, engine),
                new Voice("latest reading", false, reference), new Voice("probe", true, without)), courses,
                touched), 0.5);
    }

    private static LabTank name(int tank) {
        return new LabTank("usual", 1, tank);
    }
}
