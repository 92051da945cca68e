package org.tankrounds.web;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Numbers as people type them: with a decimal comma, with thousands separated, with a true minus sign. */
public final class TypedNumber {
    private static final int LONGEST = 20;

    private TypedNumber() {}

    /** Empty for anything but one plain number; "1,234" is refused, because it may mean either. */
    public static OptionalDouble decimal(String text) {
        String number = text.strip().replace('\u2212', '-');
        if (number.length() > LONGEST || number.matches("-?\\d{1,3}(,\\d{3})+")) {
            return OptionalDouble.empty();
        }
        String pointed = number.replace(',', '.');
        boolean plain = pointed.matches("-?(\\d+\\.?\\d*|\\.\\d+)");
        return plain ? OptionalDouble.of(Double.parseDouble(pointed)) : OptionalDouble.empty();
    }

    /** Empty for anything but a whole number from 0; "1,200" and "1 200" are both 1200. */
    public static OptionalInt whole(String text) {
        String number = text.strip();
        if (number.matches("\\d{1,3}([, \u00a0\u202f]\\d{3})+")) {
            number = number.replaceAll("\\D", "");
        }
        return number.matches("\\d{1,9}") ? OptionalInt.of(Integer.parseInt(number)) : OptionalInt.empty();
    }

    /** The shortest way to write a number with at most some decimals: 11, 11.5, 208.2. */
    public static String text(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
