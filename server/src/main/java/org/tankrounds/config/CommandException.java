package org.tankrounds.config;

/** A command that cannot go on, with the sentence that the person at the terminal reads. */
public final class CommandException extends RuntimeException {
    private final int exitCode;

    private CommandException(int exitCode, String sentence) {
        super(sentence);
        this.exitCode = exitCode;
    }

    /** It was called with something that cannot be used: exit code 2. */
    public static CommandException wrongCall(String sentence) {
        return new CommandException(2, sentence);
    }

    /** It was called rightly and could not be done: exit code 1. */
    public static CommandException failed(String sentence) {
        return new CommandException(1, sentence);
    }

    public int exitCode() {
        return exitCode;
    }
}
