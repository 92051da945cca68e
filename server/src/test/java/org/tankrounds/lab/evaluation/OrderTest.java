package org.tankrounds.lab.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Scores of an order, with values computed once elsewhere (Python) from the published definitions. */
class OrderTest {

    @Test
    void auc_countsTiesAHalf() {
        double[] chance = {.1, .1, .1, .4, .4, .4, .4, .8, .8, .8};
        boolean[] cameTrue = {false, false, true, false, false, true, true, true, true, false};
        assertThat(Auc.of(chance, cameTrue)).isCloseTo(0.64, within(1e-12));
    }

    @Test
    void auc_ofAnOrder() {
        double[] score = {.9, .8, .7, .6, .55, .5, .4, .3, .2, .1};
        boolean[] cameTrue = {true, false, true, true, false, false, true, false, false, false};
        assertThat(Auc.of(score, cameTrue)).isCloseTo(19 / 24.0, within(1e-12));
    }

    @Test
    void auc_whereAllCameOutAlike_isNoNumber() {
        assertThat(Auc.of(new double[] {.1, .2}, new boolean[] {false, false})).isNaN();
    }

    /** A unit met twice counts as if its cases stood there twice. */
    @Test
    void auc_ofAResampling_isThatOfTheCasesWrittenOut() {
        double[] score = {.9, .2, .4, .6};
        boolean[] cameTrue = {true, false, true, false};
        double resampled = new Auc(score, cameTrue, new int[] {0, 0, 1, 1}).at(new int[] {2, 1});
        double writtenOut = Auc.of(new double[] {.9, .2, .9, .2, .4, .6},
                new boolean[] {true, false, true, false, true, false});
        assertThat(resampled).isEqualTo(writtenOut);
    }

    /** Gains 3, 2, 0 put in the order 2, 3, 0: (2 + 3/log2 3) / (3 + 2/log2 3), by hand. */
    @Test
    void ndcg_discountsByThePlace() {
        double worked = (2 + 3 / 1.5849625007) / (3 + 2 / 1.5849625007);
        assertThat(FirstPlaces.ndcg(new double[] {2, 3, 0}, 3)).isCloseTo(worked, within(1e-9));
        assertThat(FirstPlaces.ndcg(new double[] {3, 2, 0}, 3)).isEqualTo(1);
    }

    @Test
    void ndcg_looksAtTheFirstPlacesOnly() {
        assertThat(FirstPlaces.ndcg(new double[] {0, 0, 0, 5}, 3)).isZero();
    }

    @Test
    void worstFirst_looksAtTheFirstPlaceOnly() {
        assertThat(FirstPlaces.isWorstFirst(new double[] {5, 2, 1})).isTrue();
        assertThat(FirstPlaces.isWorstFirst(new double[] {2, 5, 1})).isFalse();
        assertThat(FirstPlaces.isWorstFirst(new double[] {5, 0, 5})).isTrue();
    }

    /** Tanks 0 to 5 are one chapter, 6 and 7 another; mornings without harm and chapters of one do not count. */
    @Test
    void chapters_areRankedByThemselves() {
        List<Question> questions = new ArrayList<>();
        List<Answer> answers = new ArrayList<>();
        double[] harm = {0, 4, 0, 0, 0, 0, 1, 9};
        double[] exposure = {1, 7, 0, 0, 0, 0, 6, 5};
        for (int tank = 0; tank < 8; tank++) {
            questions.add(new Question(new LabTank("usual", 1, tank), 7, harm[tank] > 0, harm[tank]));
            answers.add(new Answer(0.5, exposure[tank]));
            questions.add(new Question(new LabTank("usual", 1, tank), 31, false, 0));
            answers.add(new Answer(0.5, exposure[tank]));
        }
        questions.add(new Question(new LabTank("usual", 1, 12), 7, true, 3));
        answers.add(new Answer(0.5, 3));
        Answered answered = Answered.of(questions, new Voice("engine", true, answers));
        Resampled worst = Measure.WORST_OF_SIX.of(answered);
        assertThat(worst.units()).isEqualTo(3);
        assertThat(worst.at(new int[] {1, 1, 1})).isEqualTo(0.5);
        assertThat(worst.at(new int[] {1, 0, 0})).isEqualTo(1);
    }

    @Test
    void equalExposures_areOrderedByChance() {
        List<Question> questions = List.of(new Question(new LabTank("usual", 1, 0), 7, false, 0),
                new Question(new LabTank("usual", 1, 1), 7, true, 2));
        Answered answered = Answered.of(questions,
                new Voice("engine", true, List.of(new Answer(0.1, 3), new Answer(0.2, 3))));
        assertThat(Measure.WORST_OF_SIX.of(answered).at(new int[] {1})).isEqualTo(1);
    }
}
