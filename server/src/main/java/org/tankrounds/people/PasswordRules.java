package org.tankrounds.people;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.tankrounds.words.Saying;

/**
 * What a password must be, after NIST SP 800-63B-4: long, and not what somebody would try first. Any
 * characters, no rules about digits and capitals, no expiry.
 */
final class PasswordRules {
    static final int SHORTEST = 15;
    static final int LONGEST = 300;

    private static final int LEAST_DISTINCT = 5;
    private static final int LEAST_UNGUESSED = 6;
    private static final int SHORTEST_WORD = 3;
    private static final List<String> GUESSABLE = read();

    private PasswordRules() {}

    /**
     * @param about what others know of the person: name, address, chapter
     * @return a sentence, or empty when it will do
     */
    static Optional<Saying> refusal(String password, List<String> about) {
        String normal = Normalizer.normalize(password, Normalizer.Form.NFC);
        long length = normal.codePoints().count();
        if (length < SHORTEST) {
            return Optional.of(Saying.of("account.password.tooShort", length, SHORTEST));
        }
        if (length > LONGEST) {
            return Optional.of(Saying.of("account.password.tooLong", length, LONGEST));
        }
        if (normal.codePoints().distinct().count() < LEAST_DISTINCT || unguessed(normal, about) < LEAST_UNGUESSED) {
            return Optional.of(Saying.of("account.password.guessable"));
        }
        return Optional.empty();
    }

    /** How many characters are left once everything that can be expected is taken out. */
    private static long unguessed(String password, List<String> about) {
        String left = password.toLowerCase(Locale.ROOT);
        Stream<String> words = Stream.concat(about.stream().flatMap(PasswordRules::words), GUESSABLE.stream());
        for (String word : words.sorted(Comparator.comparingInt(String::length).reversed()).toList()) {
            left = left.replace(word, "");
        }
        return left.codePoints().filter(c -> !Character.isWhitespace(c)).count();
    }

    private static Stream<String> words(String text) {
        return Stream.of(text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"))
                .filter(word -> word.length() >= SHORTEST_WORD);
    }

    private static List<String> read() {
        try (InputStream in = PasswordRules.class.getResourceAsStream("/people/guessable-words.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines()
                    .map(String::strip).filter(word -> !word.isEmpty()).toList();
        } catch (IOException e) {
            throw new IllegalStateException("cannot read the list of guessable words", e);
        }
    }
}
