package org.tankrounds.visits;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What is done on a visit. */
public enum Deed {
    LOOKED, READ, CHANGED_WATER, CLEANED, COOLED, DOSED, BROUGHT, TAUGHT, SOMETHING_ELSE;

    /** In forms and the database. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<Deed> ofCode(String code) {
        return Arrays.stream(values()).filter(deed -> deed.code().equals(code)).findFirst();
    }
}
