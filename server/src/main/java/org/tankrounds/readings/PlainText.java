package org.tankrounds.readings;

import java.util.Optional;
import java.util.function.Consumer;
import org.tankrounds.words.Saying;

/** Text that people write: of bounded length and without characters that no keyboard makes. */
final class PlainText {
    private PlainText() {}

    /**
     * @param fault hears a sentence where the text cannot be taken
     * @return the text without surrounding white space; empty where nothing is left or it cannot be taken
     */
    static Optional<String> check(
            String text, Saying name, int longest, boolean severalLines, Consumer<Saying> fault) {
        String stripped = text.strip();
        if (stripped.codePointCount(0, stripped.length()) > longest) {
            fault.accept(Saying.of("readings.text.tooLong", name, longest,
                    stripped.codePointCount(0, stripped.length())));
            return Optional.empty();
        }
        if (stripped.codePoints().anyMatch(c -> !isText(c, severalLines))) {
            fault.accept(Saying.of("readings.text.noText", name));
            return Optional.empty();
        }
        return stripped.isEmpty() ? Optional.empty() : Optional.of(stripped);
    }

    private static boolean isText(int c, boolean severalLines) {
        if (c == '\n' || c == '\r' || c == '\t') {
            return severalLines;
        }
        int type = Character.getType(c);
        // A lone half of a surrogate pair has no UTF-8 form; U+FFFE and U+FFFF are no characters at all.
        return type != Character.CONTROL && type != Character.SURROGATE && (c & 0xfffe) != 0xfffe;
    }
}
