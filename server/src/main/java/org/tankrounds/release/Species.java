package org.tankrounds.release;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Which fish an approval is for. Classes raise the first of them. */
public enum Species {
    /** Oncorhynchus mykiss. */
    RAINBOW_TROUT,
    /** Salvelinus fontinalis. */
    BROOK_TROUT,
    /** Salmo trutta. */
    BROWN_TROUT,
    /** Oncorhynchus clarkii. */
    CUTTHROAT_TROUT,
    /** Salmo salar. */
    ATLANTIC_SALMON,
    /** Oncorhynchus tshawytscha. */
    CHINOOK_SALMON,
    /** Oncorhynchus kisutch. */
    COHO_SALMON,
    ANOTHER;

    /** In forms and the database. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Species> ofCode(String code) {
        return Arrays.stream(values()).filter(species -> species.code().equals(code)).findFirst();
    }
}
