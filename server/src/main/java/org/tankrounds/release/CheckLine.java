package org.tankrounds.release;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What somebody has to look at before fish leave a tank for a stream. */
public enum CheckLine {
    /** The paper itself is in the bag, and its conditions were read. */
    PAPER(false),
    /** The agency knows of the day, where it wants to. */
    AGENCY(false),
    /** They feed and swim as ever; no unexplained deaths, no notice of disease. */
    HEALTHY(false),
    FASTED(false),
    /** Nets, buckets and boots are clean and dry, and were in no other water. */
    CLEAN(false),
    /** The way to the water is open, and whoever owns it knows. */
    ACCESS(false),
    /** Below 18 °C and not rising fast, oxygen 7 mg/L or more. */
    STREAM(true),
    /** Level and current are safe to stand beside. */
    FLOW(true),
    /** Neither thunder nor ice, nor heavy rain upstream. */
    WEATHER(true);

    private final boolean onTheDay;

    CheckLine(boolean onTheDay) {
        this.onTheDay = onTheDay;
    }

    /** Whether an answer of the day before tells nothing. */
    public boolean isOnTheDay() {
        return onTheDay;
    }

    /** In forms, messages and the database. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<CheckLine> ofCode(String code) {
        return Arrays.stream(values()).filter(line -> line.code().equals(code)).findFirst();
    }
}
