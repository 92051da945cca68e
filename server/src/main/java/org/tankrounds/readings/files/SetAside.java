package org.tankrounds.readings.files;

/**
 * A row, or one value of it, that is not taken.
 *
 * @param line of the file
 * @param cell what stands there
 */
public record SetAside(int line, String cell, Why why) {

    public enum Why {
        /** Blank, or a word such as ERR. */
        NO_VALUE,
        /** What a digital sensor says that has not measured since it was switched on: 85 °C. */
        POWER_ON,
        /** What a digital sensor says that is not connected: −127 °C. */
        DISCONNECTED,
        NOT_A_NUMBER,
        /** Outside of what water can be. */
        IMPOSSIBLE,
        NO_TIME,
        NO_SUCH_DAY,
        /** In the hour that the clock skips in spring. */
        SKIPPED_HOUR,
        /** Before 2000: the logger's clock was never set. */
        CLOCK_NOT_SET,
        AHEAD,
        /** Another row of the file has another value for the same time. */
        CONTRADICTED
    }
}
