package org.tankrounds.readings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LogFormTest {
    @Test
    void fingerprint_isTheSame_howeverOftenAndFromWhicheverClockItIsSent() {
        LogForm typed = new LogForm(Map.of("temperature", "52", "by", "period 3"));
        LogForm sentLater = typed.with(LogForm.SUBMISSION, "a").with(LogForm.KEPT_AT, "2026-01-13T08:00:00.000Z")
                .with(LogForm.SENT_AT, "2026-01-13T14:00:00.000Z").with("device_zone", "America/New_York")
                .with("device_offset", "-300").with("build", "03170e6e11db").with(LogForm.VERSION, "2")
                .with("sure_temperature", "yes 52 [degF]");

        assertThat(sentLater.fingerprint()).isEqualTo(typed.fingerprint());
        assertThat(typed.with("temperature", "53").fingerprint()).isNotEqualTo(typed.fingerprint());
        assertThat(typed.with("kit", "Strips").fingerprint()).isNotEqualTo(typed.fingerprint());
    }

    @ParameterizedTest
    @CsvSource({"'', true", "1, true", "2, true", "3, true", "4, true", "5, false", "0, false", "-1, false",
            "new, false", "99999999999, false"})
    void versions_theCurrentAndThoseBefore_areKnown(String version, boolean known) {
        Faults faults = new Faults();

        new LogForm(Map.of(LogForm.VERSION, version)).checkVersion(faults);

        assertThat(faults.none()).isEqualTo(known);
    }
}
