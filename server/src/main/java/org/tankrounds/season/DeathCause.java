package org.tankrounds.season;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What the dead of a day are put down to, as far as somebody at a tank can tell (common practice, no source). */
public enum DeathCause {
    AMMONIA_OR_NITRITE,
    TOO_WARM,
    LITTLE_OXYGEN,
    CHLORINE,
    SOUR_OR_ALKALINE,
    /** On eggs. */
    FUNGUS,
    WEAK_OR_DEFORMED,
    NEVER_FED,
    DISEASE_SUSPECTED,
    ACCIDENT,
    /** Somebody looked, and could not tell. */
    NOT_KNOWN;

    /** In forms, files and the database. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<DeathCause> ofCode(String code) {
        return Arrays.stream(values()).filter(cause -> cause.code().equals(code)).findFirst();
    }
}
