package org.tankrounds.season;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What can be written down of the number of fish in a tank, beside eggs that came and deaths that were read. */
public enum CountKind {
    /** To another tank of the chapter, in the same season. */
    MOVED(true),
    /** Taken out before the release, so that the rest has room. */
    THINNED(true),
    RELEASED(true),
    /** All that are there were counted again. */
    COUNTED(false),
    /** How many hatched: what was counted of them changes no balance. */
    HATCHED(false);

    private final boolean leaves;

    CountKind(boolean leaves) {
        this.leaves = leaves;
    }

    /** Whether the fish leave the tank by it. */
    boolean leaves() {
        return leaves;
    }

    /** In addresses, forms and the database. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<CountKind> ofCode(String code) {
        return Arrays.stream(values()).filter(kind -> kind.code().equals(code)).findFirst();
    }
}
