package org.tankrounds.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** RFC 9110, section 12.5.1. */
final class AcceptTest {
    private static final List<String> OFFERED = List.of("application/json", "text/csv", "application/pdf");

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "*/* | application/json",
        "text/csv | text/csv",
        "TEXT/CSV;q=0.5 | text/csv",
        "text/* | text/csv",
        "application/pdf, */*;q=0.1 | application/pdf",
        "application/json;q=0.2, text/csv;q=0.9 | text/csv",
        "application/json;q=0, */* | text/csv",
        "image/png, application/pdf;q=0.3 | application/pdf",
    })
    void closestAndMostWanted_isChosen(String header, String chosen) {
        assertThat(Accept.choose(header, OFFERED)).contains(chosen);
    }

    @Test
    void nothingWanted_isTheFirst() {
        assertThat(Accept.choose(null, OFFERED)).contains("application/json");
        assertThat(Accept.choose(" ", OFFERED)).contains("application/json");
    }

    @Test
    void nothingAcceptable_isEmpty() {
        assertThat(Accept.choose("image/png", OFFERED)).isEmpty();
        assertThat(Accept.choose("*/*;q=0", OFFERED)).isEmpty();
        assertThat(Accept.choose(";;,,;q=", OFFERED)).isEmpty();
    }
}
