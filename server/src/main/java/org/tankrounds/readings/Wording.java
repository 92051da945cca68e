package org.tankrounds.readings;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.Range;
import org.tankrounds.water.UnitForm;
import org.tankrounds.water.Units;

/** How analytes, units and numbers are called when we speak to people. */
public final class Wording {
    private Wording() {}

    public static String name(Analyte analyte) {
        return switch (analyte) {
            case TEMPERATURE -> "Temperature";
            case PH -> "pH";
            case TOTAL_AMMONIA -> "Ammonia";
            case NITRITE -> "Nitrite";
            case NITRATE -> "Nitrate";
            case DISSOLVED_OXYGEN -> "Dissolved oxygen";
            case ALKALINITY -> "Alkalinity";
            case HARDNESS -> "Hardness";
            case CHLORIDE -> "Chloride";
            case CHLORINE -> "Chlorine";
            case DEATHS -> "Fish found dead";
            case FEED -> "Feed given";
            case WATER_CHANGE -> "Water changed";
        };
    }

    /** As it stands behind a number; empty for pH and counts. */
    public static String unit(UnitForm form) {
        String unit = switch (form.unit()) {
            case "Cel" -> "°C";
            case "[degF]" -> "°F";
            case "[dH]" -> "°dH";
            case "[pH]", "1" -> "";
            default -> form.unit();
        };
        return form.as().isEmpty() ? unit : unit + " as " + as(form.as());
    }

    /** A number as it was written, with its unit. */
    public static String value(EnteredValue entered) {
        String unit = unit(entered.form());
        return (entered.below() ? "below " : "") + entered.value().toPlainString() + (unit.isEmpty() ? "" : " " + unit);
    }

    static String accepted(Analyte analyte) {
        return name(analyte) + " (" + analyte.code() + ") is given in one of: " + analyte.acceptedSpelling() + ".";
    }

    static String possible(
            Analyte analyte, UnitForm form, Range range, DoubleUnaryOperator fromCanonical, BigDecimal given) {
        String unit = unit(form);
        return name(analyte) + " is between " + plain(fromCanonical.applyAsDouble(range.min())) + " and "
                + plain(fromCanonical.applyAsDouble(range.max())) + (unit.isEmpty() ? "" : " " + unit) + "; "
                + given.toPlainString() + " is not possible.";
    }

    /** What classroom tanks show: "0.5 and 26 °C". */
    static String usual(Analyte analyte, UnitForm form) {
        String unit = unit(form);
        double low = Units.fromCanonical(analyte, form, analyte.likely().min(), Double.NaN, 0);
        double high = Units.fromCanonical(analyte, form, analyte.likely().max(), Double.NaN, 0);
        return plain(low) + " and " + plain(high) + (unit.isEmpty() ? "" : " " + unit);
    }

    /** Without needless zeros, at most four digits that count. */
    public static String plain(double number) {
        return new BigDecimal(number).round(new MathContext(3)).stripTrailingZeros().toPlainString();
    }

    static String lower(Analyte analyte) {
        return analyte == Analyte.PH ? "pH" : name(analyte).toLowerCase(Locale.ENGLISH);
    }

    private static String as(String form) {
        return switch (form) {
            case "NH3" -> "NH₃";
            case "NH4" -> "NH₄";
            case "NO2" -> "NO₂";
            case "NO3" -> "NO₃";
            case "CaCO3" -> "CaCO₃";
            default -> form;
        };
    }
}
