package org.tankrounds.release;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.tankrounds.words.Saying;

/** What is asked once before a release is written down; keeping the form once more says yes to all of it. */
final class DayQuestions {
    private static final String BETWEEN = ";";

    /** A question beside the box that it is about. */
    record Question(String field, Saying what) {}

    private final Set<String> answered;
    private final List<String> asked = new ArrayList<>();
    private final List<Question> open = new ArrayList<>();

    /** @param answered as the form carried it along */
    DayQuestions(String answered) {
        this.answered = Arrays.stream(answered.split(BETWEEN)).collect(Collectors.toSet());
    }

    /** @param about what it is about: asked again once that is something else */
    void ask(String about, String field, Saying what) {
        asked.add(about);
        if (!answered.contains(about)) {
            open.add(new Question(field, what));
        }
    }

    List<Question> open() {
        return List.copyOf(open);
    }

    /** For the form to carry along. */
    String asked() {
        return String.join(BETWEEN, asked);
    }
}
