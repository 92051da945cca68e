package org.tankrounds.water;

import java.util.Objects;

/**
 * How a number was written: its unit and what it counts.
 *
 * @param unit UCUM case-sensitive code, such as {@code mg/L} or {@code [degF]}
 * @param as the form, such as {@code N}, {@code NO2}, {@code CaCO3}; empty where the unit says all
 */
public record UnitForm(String unit, String as) {

    public UnitForm {
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(as, "as");
    }

    /** A unit that needs no form. */
    public static UnitForm of(String unit) {
        return new UnitForm(unit, "");
    }

    /** The CSV spelling: {@code mg/L as N}, or the unit alone. Never fails: judge it by the analyte. */
    public static UnitForm parse(String text) {
        String trimmed = text.strip();
        int at = trimmed.indexOf(" as ");
        return at < 0
                ? new UnitForm(trimmed, "")
                : new UnitForm(trimmed.substring(0, at).strip(), trimmed.substring(at + 4).strip());
    }

    /** The CSV spelling of this unit and form. */
    public String spelling() {
        return as.isEmpty() ? unit : unit + " as " + as;
    }
}
