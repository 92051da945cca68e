package org.tankrounds.lab.evaluation;

import java.util.ArrayList;
import java.util.List;

/**
 * One that answers: the engine, the engine without a source, or a plain reference.
 *
 * @param tellsChance whether its chances are meant as such; else they are an order only
 * @param answers in the order of the questions
 */
public record Voice(String name, boolean tellsChance, List<Answer> answers) {

    public Voice {
        answers = List.copyOf(answers);
    }

    /** Some of its answers, oldest first. */
    Voice at(int[] picked) {
        List<Answer> some = new ArrayList<>(picked.length);
        for (int i : picked) {
            some.add(answers.get(i));
        }
        return new Voice(name, tellsChance, some);
    }
}
