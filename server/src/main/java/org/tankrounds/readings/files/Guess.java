package org.tankrounds.readings.files;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * What was understood of a file, in one respect.
 *
 * @param value empty where it is asked, or where it does not matter
 * @param source what it rests on
 */
public record Guess<T>(Optional<T> value, Source source) {

    public enum Source {
        /** The file says so. */
        FOUND,
        /** Somebody said so. */
        SAID,
        /** Nobody knows yet: it is asked. */
        ASKED,
        /** Nothing hangs on it. */
        NO_MATTER
    }

    static <T> Guess<T> found(T value) {
        return new Guess<>(Optional.of(value), Source.FOUND);
    }

    static <T> Guess<T> said(T value) {
        return new Guess<>(Optional.of(value), Source.SAID);
    }

    static <T> Guess<T> asked() {
        return new Guess<>(Optional.empty(), Source.ASKED);
    }

    static <T> Guess<T> noMatter() {
        return new Guess<>(Optional.empty(), Source.NO_MATTER);
    }

    /** What somebody said, and only without that what the file says. */
    static <T> Guess<T> of(Optional<T> said, Supplier<Guess<T>> file) {
        return said.map(Guess::said).orElseGet(file);
    }

    public boolean isAsked() {
        return source == Source.ASKED;
    }
}
