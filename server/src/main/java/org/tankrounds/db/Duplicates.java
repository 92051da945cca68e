package org.tankrounds.db;

import org.jooq.exception.DataAccessException;

/** Whether a write failed because a row with the same unique value is there already. */
public final class Duplicates {
    private static final String UNIQUE_VIOLATION = "23505";

    private Duplicates() {}

    public static boolean caused(DataAccessException e) {
        return UNIQUE_VIOLATION.equals(e.sqlState());
    }
}
