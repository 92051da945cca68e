package org.tankrounds.readings.files;

/** In which order a date's numbers stand where the year comes last. */
public enum DateOrder {
    DAY_MONTH("dmy"),
    MONTH_DAY("mdy");

    private final String code;

    DateOrder(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }
}
