package org.tankrounds.rounds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.rounds.Morning.NoSuchMorning;
import org.tankrounds.web.Formats;

class MorningTest {
    private static final ZoneId NEW_YORK = ZoneId.of("America/New_York");
    /** A Wednesday, 9:30 in New York. */
    private static final Instant NOW = Instant.parse("2026-11-25T14:30:00Z");

    @ParameterizedTest
    @CsvSource({
        "2026-11-20,                2026-11-20T13:00:00Z",
        "2026-10-30,                2026-10-30T12:00:00Z",
        "2026-11-25,                2026-11-25T13:00:00Z",
        "2026-11-20T14:05:00-05:00, 2026-11-20T19:05:00Z",
        "2026-11-20T14:05:00 01:00, 2026-11-20T13:05:00Z",
    })
    void aDay_isItsMorningOnTheChaptersClock_andATimeIsItself(String text, Instant asOf) throws NoSuchMorning {
        assertThat(Morning.of(text, NEW_YORK, NOW).asOf()).isEqualTo(asOf);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-11-26", "2026-11-25T14:30:01Z", "2027-03-01", "+999999999-12-31"})
    void theFuture_isRefused_withTheLatestMorningThatCanBeChosen(String text) {
        assertThatThrownBy(() -> Morning.of(text, NEW_YORK, NOW))
                .satisfies(no -> assertThat(sentence(no))
                        .isEqualTo("That morning has yet to come: choose one up to 25 November 2026."));
    }

    @Test
    void beforeTheMorning_todayHasYetToCome() {
        Instant early = Instant.parse("2026-11-25T11:00:00Z");
        assertThatThrownBy(() -> Morning.of("2026-11-25", NEW_YORK, early))
                .satisfies(no -> assertThat(sentence(no)).contains("24 November 2026"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "yesterday", "20.11.2026", "2026-02-30", "2026-11-20T14:05:00", "1999-12-31",
        "-0001-01-01", "2026-11-20T14:05:00+99:00"})
    void whatIsNoDay_isRefused_withAnExample(String text) {
        assertThatThrownBy(() -> Morning.of(text, NEW_YORK, NOW)).isInstanceOf(NoSuchMorning.class)
                .satisfies(no -> assertThat(sentence(no))
                        .isEqualTo("Choose a day from the year 2000 on, written like 2026-11-20."));
    }

    @ParameterizedTest
    @CsvSource({
        "2026-11-25, 2026-11-24, 2026-11-26",
        "2026-11-20, 2026-11-19, 2026-11-23",
        "2026-11-23, 2026-11-20, 2026-11-24",
        "2026-11-22, 2026-11-20, 2026-11-23",
    })
    void weekends_areSteppedOver(LocalDate day, LocalDate before, LocalDate after) {
        Morning morning = Morning.on(day, NEW_YORK);
        assertThat(morning.before().day()).isEqualTo(before);
        assertThat(morning.after().day()).isEqualTo(after);
    }

    private static String sentence(Throwable no) {
        return ((NoSuchMorning) no).sentence(new Formats(NEW_YORK, NOW));
    }
}
