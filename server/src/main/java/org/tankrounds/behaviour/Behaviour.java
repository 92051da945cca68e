package org.tankrounds.behaviour;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What a class can see of its fish without touching the water. */
public enum Behaviour {
    SWIMMING,
    GATHERING,
    BREATHING,
    COLOUR,
    APPETITE,
    SHADOW;

    /** The ways it can be, the usual one first. */
    public List<Seen> ways() {
        return Arrays.stream(Seen.values()).filter(seen -> seen.behaviour() == this).toList();
    }

    /** The name of its field in forms. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
