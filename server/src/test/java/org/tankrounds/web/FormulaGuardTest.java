package org.tankrounds.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The list of ASVS 5.0, 1.2.10, with OWASP's additions. */
final class FormulaGuardTest {
    @ParameterizedTest
    @ValueSource(strings = {
        "=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "  =1", "\u00a0=1", "Room 12\n=1", "Room 12\r=1",
                "\uff1d1"})
    void whatBeginsAFormula_isGuarded(String text) {
        assertThat(FormulaGuard.guard(text)).isEqualTo("'" + text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "Room 12", "A-wing", "3 = three", "Å", "Saint-Exupéry"})
    void plainText_staysAsItIs(String text) {
        assertThat(FormulaGuard.guard(text)).isEqualTo(text);
    }
}
