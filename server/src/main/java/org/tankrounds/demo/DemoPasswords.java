package org.tankrounds.demo;

import java.security.SecureRandom;

/** Passwords that can be read out across a table: three words that no language has, and a number. */
final class DemoPasswords {
    private static final String CONSONANTS = "bdfgklmnprstvz";
    private static final String VOWELS = "aeiou";
    private static final int WORDS = 3;
    private static final int SYLLABLES = 3;

    private final SecureRandom random = new SecureRandom();

    /** About 62 bits, such as {@code tavoli-kemuna-rosipe-42}. */
    String next() {
        StringBuilder password = new StringBuilder();
        for (int word = 0; word < WORDS; word++) {
            for (int syllable = 0; syllable < SYLLABLES; syllable++) {
                password.append(one(CONSONANTS)).append(one(VOWELS));
            }
            password.append('-');
        }
        return password.append(10 + random.nextInt(90)).toString();
    }

    private char one(String letters) {
        return letters.charAt(random.nextInt(letters.length()));
    }
}
