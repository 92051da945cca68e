package org.tankrounds.release;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * What somebody found who looked.
 *
 * @param by their name
 */
public record CheckAnswer(Word word, Instant at, String by) {

    public enum Word {
        YES, NO, UNKNOWN;

        /** In forms, messages and the database. */
        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static Optional<Word> ofCode(String code) {
            return Arrays.stream(values()).filter(word -> word.code().equals(code)).findFirst();
        }
    }

    /** What it says of a line on the day of the release: what has to be seen on that day was not seen before it. */
    public Word wordOn(CheckLine line, LocalDate day, ZoneId zone) {
        boolean stale = line.isOnTheDay() && at.atZone(zone).toLocalDate().isBefore(day);
        return stale && word == Word.YES ? Word.UNKNOWN : word;
    }
}
