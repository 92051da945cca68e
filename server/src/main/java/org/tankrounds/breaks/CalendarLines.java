package org.tankrounds.breaks;

import java.nio.charset.StandardCharsets;

/** Lines of a calendar file, folded as RFC 5545 3.1 has it: no longer than 75 octets, without the break. */
final class CalendarLines {
    private static final int MOST_OCTETS = 75;
    private static final String BREAK = "\r\n";

    private CalendarLines() {}

    /** @param text whole lines, each with its break */
    static String fold(String text) {
        StringBuilder folded = new StringBuilder(text.length() * 2);
        for (String line : text.split(BREAK)) {
            fold(line, folded);
            folded.append(BREAK);
        }
        return folded.toString();
    }

    /** Never inside a character: programs that unfold after decoding would find none there. */
    private static void fold(String line, StringBuilder folded) {
        int octets = 0;
        for (int at = 0; at < line.length(); at = line.offsetByCodePoints(at, 1)) {
            String character = Character.toString(line.codePointAt(at));
            int size = character.getBytes(StandardCharsets.UTF_8).length;
            if (octets + size > MOST_OCTETS) {
                folded.append(BREAK).append(' ');
                octets = 1;
            }
            folded.append(character);
            octets += size;
        }
    }
}
