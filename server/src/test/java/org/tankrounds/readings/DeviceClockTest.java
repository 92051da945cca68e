package org.tankrounds.readings;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DeviceClockTest {
    private static final Instant NOW = Instant.parse("2026-01-13T14:00:00Z");

    @ParameterizedTest
    @CsvSource({
        // how far the device is ahead when it sends, how long it kept, how long ago it then was, what is noted
        "PT0S,      PT0S,     PT0S,     ''",
        "PT1M,      PT6H,     PT6H,     ''",
        "PT-2M,     PT6H,     PT6H,     ''",
        "PT3M,      PT6H,     PT6H,     clock_skewed",
        "PT-3H,     PT20M,    PT20M,    clock_skewed",
        "PT24H,     PT20M,    PT20M,    clock_skewed",
        "PT48H,     PT20M,    PT20M,    clock_skewed time_doubtful",
        "PT-48H,    PT20M,    PT20M,    clock_skewed time_doubtful",
        "PT0S,      PT1440H,  PT1440H,  ''",
        "PT0S,      PT1441H,  PT1441H,  time_doubtful",
        "PT0S,      PT-1M,    PT0S,     ''",
        "PT0S,      PT-1H,    PT0S,     time_doubtful",
        "PT0S,      PT300000H, PT0S,    time_doubtful",
    })
    void timeIsCountedBackFromOurs(Duration ahead, Duration kept, Duration ago, String noted) {
        Instant sentAt = NOW.plus(ahead);

        DeviceClock.Taken taken = new DeviceClock(sentAt.minus(kept), sentAt, Optional.empty()).taken(NOW);

        assertThat(taken.at()).isEqualTo(NOW.minus(ago));
        assertThat(taken.flags()).isEqualTo(Stream.of(noted.split(" ")).filter(flag -> !flag.isEmpty()).toList());
    }

    @ParameterizedTest
    @CsvSource({
        // how far it was ahead when they last met, and when it sends
        "PT0S,   PT0S,   ''",
        "PT30S,  PT0S,   ''",
        "PT-48H, PT-48H, clock_skewed time_doubtful",
        "PT3H,   PT0S,   clock_skewed",
        "PT-48H, PT0S,   clock_skewed time_doubtful",
        "PT48H,  PT0S,   clock_skewed time_doubtful",
    })
    void aClockThatWasSetMeanwhile_isDoubted(Duration before, Duration ahead, String noted) {
        Instant sentAt = NOW.plus(ahead);

        DeviceClock.Taken taken = new DeviceClock(sentAt.minus(Duration.ofHours(2)), sentAt, Optional.of(before))
                .taken(NOW);

        assertThat(taken.flags()).isEqualTo(Stream.of(noted.split(" ")).filter(flag -> !flag.isEmpty()).toList());
    }

    @Test
    void theFurthestClocks_areDoubtedAndBreakNothing() {
        List<String> doubtful = List.of("clock_skewed", "time_doubtful");
        Instant first = Instant.parse("-100000-01-01T00:00:00Z");
        Instant last = Instant.parse("+275000-01-01T00:00:00Z");

        assertThat(new DeviceClock(first, last, Optional.empty()).taken(NOW))
                .isEqualTo(new DeviceClock.Taken(NOW, doubtful));
        assertThat(new DeviceClock(last, first, Optional.empty()).taken(NOW))
                .isEqualTo(new DeviceClock.Taken(NOW, doubtful));
        assertThat(new DeviceClock(last, last, Optional.empty()).taken(NOW))
                .isEqualTo(new DeviceClock.Taken(NOW, doubtful));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "yesterday", "2026-01-13T14:00:00", "1768312800000", "+999999999999-01-01T00:00:00Z"})
    void whatCannotBeRead_isAsIfThereWereNone(String written) {
        Optional<DeviceClock> clock = DeviceClock.of(new LogForm(Map.of(
                LogForm.KEPT_AT, written, LogForm.SENT_AT, "2026-01-13T14:00:00.000Z")));

        assertThat(clock).isEmpty();
    }
}
