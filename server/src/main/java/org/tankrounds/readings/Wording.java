package org.tankrounds.readings;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.function.DoubleUnaryOperator;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.Range;
import org.tankrounds.water.UnitForm;
import org.tankrounds.water.Units;
import org.tankrounds.words.Saying;

/** How analytes, units and numbers are called when we speak to people. */
public final class Wording {
    private Wording() {}

    public static Saying name(Analyte analyte) {
        return Saying.of("readings.name." + analyte.code());
    }

    /** As it stands within a sentence. */
    public static Saying inSentence(Analyte analyte) {
        return Saying.of("readings.inSentence." + analyte.code());
    }

    /** As it stands behind a number; empty for pH and counts. */
    public static Saying unit(UnitForm form) {
        return form.as().isEmpty() ? Saying.asIs(sign(form))
                : Saying.of("readings.unitAs", sign(form), as(form.as()));
    }

    /** Beside a label: "mg/L, total, as N". */
    static Saying unitBesideLabel(Analyte analyte, UnitForm form) {
        boolean total = analyte == Analyte.TOTAL_AMMONIA && !form.as().isEmpty();
        return total ? Saying.of("readings.unitTotalAs", sign(form), as(form.as())) : unit(form);
    }

    /** A number as it was written, with its unit. */
    public static Saying value(EnteredValue entered) {
        Saying number = withUnit(entered.value().toPlainString(), entered.form());
        return entered.below() ? Saying.of("readings.below", number) : number;
    }

    static Saying accepted(Analyte analyte) {
        return Saying.of("readings.accepted", name(analyte), analyte.code(), analyte.acceptedSpelling());
    }

    static Saying possible(
            Analyte analyte, UnitForm form, Range range, DoubleUnaryOperator fromCanonical, BigDecimal given) {
        return Saying.of("readings.notPossible", name(analyte), plain(fromCanonical.applyAsDouble(range.min())),
                withUnit(plain(fromCanonical.applyAsDouble(range.max())), form), given.toPlainString());
    }

    /** What classroom tanks show: "0.5 and 26 °C". */
    static Saying usual(Analyte analyte, UnitForm form) {
        double low = Units.fromCanonical(analyte, form, analyte.likely().min(), Double.NaN, 0);
        double high = Units.fromCanonical(analyte, form, analyte.likely().max(), Double.NaN, 0);
        return Saying.of("readings.between", plain(low), withUnit(plain(high), form));
    }

    private static Saying withUnit(String number, UnitForm form) {
        return sign(form).isEmpty() ? Saying.asIs(number) : Saying.of("readings.withUnit", number, unit(form));
    }

    private static String sign(UnitForm form) {
        return switch (form.unit()) {
            case "Cel" -> "°C";
            case "[degF]" -> "°F";
            case "[dH]" -> "°dH";
            case "[pH]", "1" -> "";
            default -> form.unit();
        };
    }

    /** Without needless zeros, at most four digits that count. */
    public static String plain(double number) {
        return new BigDecimal(number).round(new MathContext(3)).stripTrailingZeros().toPlainString();
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
