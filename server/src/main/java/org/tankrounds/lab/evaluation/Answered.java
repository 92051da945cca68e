package org.tankrounds.lab.evaluation;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * One voice's answers as columns, beside what came of each question.
 *
 * @param said as it was said
 * @param chance the same; of a voice that only orders, what {@link Isotone} makes of it with hindsight, so
 *         that no plain reference is beaten merely for want of a scale
 */
record Answered(
        List<Question> questions, double[] said, double[] chance, double[] exposure, boolean[] beyond) {

    static Answered of(List<Question> questions, Voice voice) {
        double[] said = voice.answers().stream().mapToDouble(Answer::chance).toArray();
        boolean[] beyond = new boolean[said.length];
        for (int i = 0; i < beyond.length; i++) {
            beyond[i] = questions.get(i).beyond();
        }
        return new Answered(questions, said, voice.tellsChance() ? said : Isotone.chances(said, beyond),
                voice.answers().stream().mapToDouble(Answer::exposure).toArray(), beyond);
    }

    /** To which chapter of so many tanks each question belongs, counted from 0. */
    int[] chapters(int tanks) {
        Map<LabTank, Integer> known = new HashMap<>();
        return questions.stream().map(question -> question.tank().chapter(tanks)).mapToInt(chapter -> {
            known.putIfAbsent(chapter, known.size());
            return known.get(chapter);
        }).toArray();
    }

    int size() {
        return said.length;
    }
}
