package org.tankrounds.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class TypedNumberTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "12.5 | 12.5", "12,5 | 12.5", ".5 | 0.5", "7. | 7", "-3 | -3", "\u22123 | -3", " 55 | 55"})
    void decimal_asPeopleTypeIt(String typed, double value) {
        assertThat(TypedNumber.decimal(typed)).hasValue(value);
    }

    @ParameterizedTest
    @ValueSource(strings =
            {"", "x", "1e3", "NaN", "Infinity", "1 2", "1.2.3", "1,000", "0,375", "0x10", "12 L", "1,2,3"})
    void decimal_refusesWhatMayMeanSomethingElse(String typed) {
        assertThat(TypedNumber.decimal(typed)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|',
            value = {"200 | 200", "1,200 | 1200", "1 200 | 1200", "12,000 | 12000", "0 | 0"})
    void whole_asPeopleTypeIt(String typed, int value) {
        assertThat(TypedNumber.whole(typed)).hasValue(value);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "-1", "1.5", "1,5", "99999999999", "ten"})
    void whole_refusesTheRest(String typed) {
        assertThat(TypedNumber.whole(typed)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"11.0, 1, 11", "208.1976, 1, 208.2", "0.04, 1, 0", "-0.04, 1, 0", "1000, 0, 1000",
            "1200000, 1, 1200000"})
    void text_isShort(double value, int decimals, String text) {
        assertThat(TypedNumber.text(value, decimals)).isEqualTo(text);
    }
}
