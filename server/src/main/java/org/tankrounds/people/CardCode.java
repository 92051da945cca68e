package org.tankrounds.people;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.tankrounds.web.Secrets;

/**
 * What is printed on a class card: nine characters, told and typed in three groups of three. Capitals and digits that
 * look like no other and spell no words; 19 of them, so 38 bits. The first group only names the card: wrong codes are
 * counted by it, so that guessing is slowed down however many guess, and one class's slips slow down no other class.
 */
record CardCode(String text) {
    private static final String ALPHABET = "34679CDFHJKMNPRTWXY";
    private static final int GROUP = 3;
    private static final int LENGTH = 3 * GROUP;

    static CardCode next() {
        return new CardCode(Secrets.drawn(LENGTH, ALPHABET.toCharArray()));
    }

    /** Small letters, and whatever stands between the characters, are as good; empty where it can be no code. */
    static Optional<CardCode> of(String typed) {
        String text = typed.toUpperCase(Locale.ROOT).replaceAll("[\\s\\p{Punct}\\p{Pd}]", "");
        boolean code = text.length() == LENGTH && text.chars().allMatch(c -> ALPHABET.indexOf(c) >= 0);
        return code ? Optional.of(new CardCode(text)) : Optional.empty();
    }

    /** As it is printed: {@code CK7-PM4-RXW}. */
    String shown() {
        return String.join("-", text.split("(?<=\\G.{" + GROUP + "})"));
    }

    /** Under which wrong codes are counted. */
    byte[] account() {
        return Secrets.sha256("class card " + text.substring(0, GROUP));
    }

    /** What is kept of it: whoever reads the database would have to guess each code slowly. */
    byte[] hash(PasswordHashes hashes) {
        return hashes.under(Arrays.copyOf(account(), 16), text);
    }
}
