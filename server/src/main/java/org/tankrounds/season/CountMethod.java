package org.tankrounds.season;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How a number of eggs or fish came about, and how far it may be off (common practice, no source). */
public enum CountMethod {
    /** One by one. */
    ONE_BY_ONE(0),
    /** All together, by the weight of a sample that was counted. */
    WEIGHED(0.05),
    /** Eggs by the measure or the trough. */
    BY_VOLUME(0.1),
    /** By the eye. */
    GUESSED(0.2);

    private final double share;

    CountMethod(double share) {
        this.share = share;
    }

    /** Eggs or fish more or less that 19 of 20 such counts stay within, where nobody said otherwise. */
    public int usualSpread(int fish) {
        return (int) Math.ceil(share * fish);
    }

    /** In forms and the database. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<CountMethod> ofCode(String code) {
        return Arrays.stream(values()).filter(method -> method.code().equals(code)).findFirst();
    }
}
