package org.tankrounds.release;

import java.util.Locale;

/** Why fish that were to be released were not. */
public enum KeptBack {
    SMALL, SICK, DEAD, REASON;

    /** In forms, messages and files. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
