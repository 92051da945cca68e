package org.tankrounds.summary;

import java.util.function.Function;

/**
 * A column of a table that several formats share. Units stand in its name.
 *
 * @param about what a reader of the file has to know beyond the name; empty for nothing
 * @param value a String, Integer, BigDecimal, Instant or LocalDate; null where there is none
 */
record Column<T>(String name, Kind kind, String about, Function<T, Object> value) {

    enum Kind {
        TEXT,
        /** Adds up over rows. */
        COUNT,
        NUMBER,
        SHARE,
        TIME,
        DAY
    }

    /** Whose name says all. */
    Column(String name, Kind kind, Function<T, Object> value) {
        this(name, kind, "", value);
    }
}
