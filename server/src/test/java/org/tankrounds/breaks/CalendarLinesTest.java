package org.tankrounds.breaks;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** RFC 5545 3.1: no line longer than 75 octets without its break; a fold is a break and one space. */
class CalendarLinesTest {

    @Test
    void longLine_isFoldedByOctets_andNeverInsideACharacter() {
        String line = "SUMMARY:" + "ñ".repeat(60) + "🐟".repeat(30) + "a".repeat(80);

        String folded = CalendarLines.fold(line + "\r\n");

        assertThat(folded.split("\r\n")).hasSizeGreaterThan(4)
                .allSatisfy(one -> assertThat(one.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75))
                .allSatisfy(one -> assertThat(one).doesNotContain("\ufffd"));
        assertThat(new String(folded.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8).replace("\r\n ", ""))
                .isEqualTo(line + "\r\n");
    }

    @Test
    void lineOf75Octets_staysWhole_andOneMoreIsFolded() {
        assertThat(CalendarLines.fold("a".repeat(75) + "\r\n")).isEqualTo("a".repeat(75) + "\r\n");
        assertThat(CalendarLines.fold("a".repeat(76) + "\r\n")).isEqualTo("a".repeat(75) + "\r\n a\r\n");
    }
}
