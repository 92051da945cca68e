package org.tankrounds.web;

import java.util.Arrays;

/** The scale on which somebody reads temperatures. */
public enum Scale {
    CELSIUS("Cel", "°C"),
    FAHRENHEIT("[degF]", "°F");

    private final String unit;
    private final String sign;

    Scale(String unit, String sign) {
        this.unit = unit;
        this.sign = sign;
    }

    /** UCUM code. */
    public String unit() {
        return unit;
    }

    public String sign() {
        return sign;
    }

    public double of(double celsius) {
        return this == CELSIUS ? celsius : celsius * 9 / 5 + 32;
    }

    public double toCelsius(double read) {
        return this == CELSIUS ? read : (read - 32) * 5 / 9;
    }

    /** Of a difference between two temperatures: 2 °C apart is 3.6 °F apart. */
    public double ofDifference(double celsius) {
        return this == CELSIUS ? celsius : celsius * 9 / 5;
    }

    public static Scale ofUnit(String unit) {
        return Arrays.stream(values()).filter(scale -> scale.unit.equals(unit)).findFirst().orElse(CELSIUS);
    }
}
