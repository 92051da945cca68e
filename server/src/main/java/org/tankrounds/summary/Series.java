package org.tankrounds.summary;

/**
 * What the summary holds against a limit.
 *
 * @see LimitDays for how
 */
enum Series {
    TEMPERATURE("temperature", "°C", "deg_c", 2),
    UN_IONISED_AMMONIA("un_ionised_ammonia", "mg/L as NH3", "mg_l_as_nh3", 5),
    NITRITE("nitrite", "mg/L as N", "mg_l_as_n", 4);

    private final String code;
    private final String unit;
    private final String unitInColumns;
    private final int decimals;

    Series(String code, String unit, String unitInColumns, int decimals) {
        this.code = code;
        this.unit = unit;
        this.unitInColumns = unitInColumns;
        this.decimals = decimals;
    }

    /** In column names and JSON. */
    String code() {
        return code;
    }

    /** For scripts. */
    String unit() {
        return unit;
    }

    String unitInColumns() {
        return unitInColumns;
    }

    /** To which values are rounded, in every format alike. */
    int decimals() {
        return decimals;
    }
}
