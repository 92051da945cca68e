package org.tankrounds.readings.files;

/** The file holds nothing that could be previewed; what to do about it is said by whoever shows it. */
public final class UnreadableFileException extends RuntimeException {

    public enum Trouble {
        EMPTY,
        /** A workbook of a spreadsheet program, or an archive. */
        ZIP,
        OLD_WORKBOOK,
        PDF,
        NOT_TEXT,
        TOO_MANY_LINES,
        LINE_TOO_LONG,
        NO_ROWS,
        /** Times of day without a day, or days in a few rows only. */
        NO_TIMES,
        /** Commas stand both between columns and in numbers. */
        COMMAS_IN_NUMBERS
    }

    private final Trouble trouble;

    public UnreadableFileException(Trouble trouble) {
        super(trouble.name());
        this.trouble = trouble;
    }

    public Trouble trouble() {
        return trouble;
    }
}
