package org.tankrounds.rounds;

import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One reason in words.
 *
 * @param lead starts with the number, its unit and its change
 * @param rest what it looks like, what bounds it, how old it is; may be empty
 */
record Phrase(String lead, String rest) {

    static Phrase of(String lead) {
        return new Phrase(lead, "");
    }

    /** Sentences behind each other; those that are empty are left out. */
    static String joined(String... sentences) {
        return Stream.of(sentences).filter(sentence -> !sentence.isEmpty()).collect(Collectors.joining(" "));
    }

    String whole() {
        return joined(lead, rest);
    }
}
