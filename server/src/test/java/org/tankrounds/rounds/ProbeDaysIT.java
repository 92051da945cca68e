package org.tankrounds.rounds;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;

/** What a probe that reads every five minutes leaves of a tank's pages. */
class ProbeDaysIT {
    private static final TestApp APP = TestApp.shared();
    private static final Pattern ROWS = Pattern.compile("class=\"tank__when\"");

    private final Cast cast = Cast.add(APP.transactions(), "Probe days");
    private final String tank = "/tanks/" + cast.tankA().code();
    private final Browserless teacher = APP.signedIn(cast.teacherA());
    private final Browserless token = APP.bearer(cast.tankA().token());

    @Test
    void threeDaysOfAProbe_areThreeLines_betweenTheClasssOwn() {
        // New York is five hours behind in January: the days begin at 5:00 UTC.
        send("2026-01-09T05:00:00Z", 3 * 288);
        byHand("2026-01-10T14:00:00Z", "period 3");

        String page = teacher.get(tank).body();
        assertThat(page).contains("288 temperatures, 11 to 13.9\u00a0°C", "temperature 12 °C", ">probe<",
                "Each reading of Fri 9 Jan");
        assertThat(ROWS.matcher(page).results().count()).isEqualTo(4);
        assertThat(page).contains("865 readings between 11.0 and 13.9\u00a0°C");
    }

    @Test
    void theDay_isToldByTheHour_andHasEachReading() {
        send("2026-01-09T05:00:00Z", 288);

        String day = teacher.get(tank + "/days/2026-01-09").body();
        // from 11.0 by 0.01 each: 11.00 to 11.11, on the average 11.055
        assertThat(day).contains("Friday 9 January 2026", "A probe read 288 temperatures, 11 to 13.9\u00a0°C.",
                "11.1 (11 to 11.1)", "temperature 11.00 °C");
        assertThat(Pattern.compile(">Correct</a>").matcher(day).results().count()).isEqualTo(288);
        assertThat(teacher.get(tank + "/days/2026-01-08").status()).isEqualTo(404);
        assertThat(teacher.get(tank + "/days/2026-02-30").status()).isEqualTo(404);
        assertThat(teacher.get(tank + "/days/x").status()).isEqualTo(404);
    }

    @Test
    void theExploringScript_isGivenHourlyMeans() throws Exception {
        send("2026-01-09T05:00:00Z", 288);

        JsonNode temperature = new ObjectMapper().readTree(teacher.get(tank + "/series.json").body()).at("/series/0");
        assertThat(temperature.get("code").asText()).isEqualTo("temperature");
        assertThat(temperature.get("points")).hasSize(25);
    }

    @Test
    void aScriptThatReadsNowAndThen_isListedReadingByReading() {
        send("2026-01-09T05:00:00Z", 3);

        String page = teacher.get(tank).body();
        assertThat(page).contains("temperature 11.00 °C", "temperature 11.02 °C").doesNotContain("Each reading");
    }

    @Test
    void aClassThatReadsBesideAProbe_isNotToldThatTemperatureRisesTestAfterTest() {
        send("2026-01-12T05:00:00Z", 100);
        String form = tank + "/log";
        teacher.get(form);
        String saved = teacher.post(form, "submission_id", UUID.randomUUID().toString(), "form_version", "2",
                "temperature", "12.5", "temperature_unit", "Cel").location();

        assertThat(saved).contains("saved=");
        assertThat(teacher.get(form + saved.substring(saved.indexOf('?'))).body()).contains("Saved")
                .doesNotContain("tests running");
    }

    private void send(String from, int count) {
        long start = Instant.parse(from).getEpochSecond();
        String pack = IntStream.range(0, count)
                .mapToObj(i -> "{\"t\":%d,\"v\":%.2f}".formatted(300 * i, 11 + (i % 288) / 100.0))
                .collect(Collectors.joining(",",
                        "[{\"bn\":\"p:temperature\",\"bu\":\"Cel\",\"bt\":" + start + ",\"v\":11.00},", "]"));
        assertThat(token.send("POST", "/api/v1" + tank + "/senml", "application/senml+json",
                pack.getBytes(StandardCharsets.UTF_8)).status()).isEqualTo(200);
    }

    private void byHand(String at, String by) {
        token.header("Idempotency-Key", UUID.randomUUID().toString()).postJson("/api/v1" + tank + "/readings", """
                {"measuredAt": "%s", "by": "%s", "values": [{"analyte": "temperature", "value": 12, "unit": "Cel"}]}"""
                .formatted(at, by));
    }
}
