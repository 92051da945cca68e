package org.tankrounds.readings;

import java.util.List;
import org.tankrounds.web.FieldError;
import org.tankrounds.web.RefusedException;

/** The sender's own name for one submission: bare, or as the quoted string of a structured field (RFC 9651). */
final class IdempotencyKey {
    static final String HEADER = "Idempotency-Key";
    static final int LONGEST = 255;

    private IdempotencyKey() {}

    /** @param lines every line of the header, as sent */
    static String of(List<String> lines) {
        if (lines.isEmpty()) {
            throw refused("The header Idempotency-Key is missing. Send one of 1 to 255 characters that you never use"
                    + " for another reading, such as a random UUID.");
        }
        if (lines.size() > 1) {
            throw refused("The header Idempotency-Key occurs more than once. Send it once.");
        }
        String line = lines.get(0).strip();
        String key = line.startsWith("\"") ? unquoted(line) : line;
        if (!isKey(key)) {
            throw refused("The header Idempotency-Key holds 1 to 255 printable ASCII characters.");
        }
        return key;
    }

    /** Whether a text can be a key: 1 to 255 printable ASCII characters. */
    static boolean isKey(String text) {
        return !text.isBlank() && text.length() <= LONGEST && text.chars().allMatch(c -> c >= 0x20 && c <= 0x7e);
    }

    private static String unquoted(String line) {
        StringBuilder key = new StringBuilder();
        for (int i = 1; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                if (i == line.length() - 1) {
                    return key.toString();
                }
                break;
            }
            if (c == '\\') {
                i++;
                if (i == line.length() || line.charAt(i) != '"' && line.charAt(i) != '\\') {
                    break;
                }
            }
            key.append(line.charAt(i));
        }
        throw refused("The header Idempotency-Key begins with a quotation mark but is not a quoted string.");
    }

    private static RefusedException refused(String title) {
        return new RefusedException(400, title, List.of(new FieldError("/" + HEADER, title)));
    }
}
