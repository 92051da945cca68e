package org.tankrounds.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.tankrounds.fish.DateWindow;
import org.tankrounds.web.Formats;

class DaysTest {
    private static final ZoneId ZONE = ZoneId.of("America/New_York");
    private static final Instant NOW = Instant.parse("2026-11-26T15:00:00Z");
    private static final Instant FAR_END = Instant.parse("2030-01-01T00:00:00Z");

    private final Days days = new Days(new Formats(ZONE, NOW), ZONE);

    @Test
    void aDayOfThisSeason_hasNoYear() {
        assertThat(days.date(at("2027-06-09"))).isEqualTo("9 June");
        assertThat(days.shortDate(at("2026-09-09"))).isEqualTo("9 Sep");
        assertThat(window("2026-12-09", "2026-12-13", FAR_END)).isEqualTo("9 to 13 December");
    }

    @Test
    void aDayThatMightBeOfAnotherYear_hasIt() {
        assertThat(days.date(at("2027-11-27"))).isEqualTo("27 November 2027");
        assertThat(days.date(at("2025-11-04"))).isEqualTo("4 November 2025");
        assertThat(days.shortDate(at("2028-01-02"))).isEqualTo("2 Jan 2028");
    }

    @Test
    void aWindow_hasItsYearOnce_orBoth() {
        assertThat(window("2028-03-09", "2028-03-13", FAR_END)).isEqualTo("9 to 13 March 2028");
        assertThat(window("2028-03-09", "2028-04-13", FAR_END)).isEqualTo("9 March to 13 April 2028");
        assertThat(window("2027-08-09", "2028-02-13", FAR_END)).isEqualTo("9 August 2027 to 13 February 2028");
        assertThat(window("2028-03-09", "2028-03-09", FAR_END)).isEqualTo("9 March 2028");
        assertThat(window("2028-03-09", "2028-03-13", at("2027-06-30"))).isEqualTo("from 9 March 2028");
    }

    private String window(String from, String until, Instant end) {
        return days.window(new DateWindow(at(from), at(from), at(until), false), end);
    }

    private static Instant at(String day) {
        return Instant.parse(day + "T15:00:00Z");
    }
}
