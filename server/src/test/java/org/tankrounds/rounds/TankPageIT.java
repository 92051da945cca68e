package org.tankrounds.rounds;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;

/** The pictures and the numbers of one tank. */
final class TankPageIT {
    private static final TestApp APP = TestApp.shared();

    private final Cast cast = Cast.add(APP.transactions(), "Pictures of a tank");
    private final String page = "/tanks/" + cast.tankA().code();
    private final Browserless teacher = APP.signedIn(cast.teacherA());

    @Test
    void chlorine_isDrawnWithItsLimit_whereItWasRead() {
        assertThat(teacher.get(page).body()).doesNotContain("Chlorine");

        post("{\"analyte\": \"chlorine\", \"value\": 0.2, \"unit\": \"mg/L\"}");

        // US EPA 1984: 0.011 mg/L of total residual chlorine
        assertThat(teacher.get(page).body().replace('\u00a0', ' '))
                .contains("Chlorine: 0.2 mg/L, ").contains("limit now 0.011 mg/L")
                .contains(">Chlorine, mg/L</th>");
        assertThat(teacher.get(page + "/series.json").body()).contains("\"code\":\"chlorine\"");
    }

    @Test
    void spread_isCountedInWords_andEveryFactSaysWhoSaidSo() {
        post("{\"analyte\": \"temperature\", \"value\": 19, \"unit\": \"Cel\"}");

        String text = text();
        assertThat(text).containsPattern(
                "In \\d+ of 20 ways this could go, the water goes beyond a limit before Friday 9:00, if "
                        + "nobody steps in");
        assertThat(text).contains("Chiller").contains("set to 11.0 °C, told by the coordinator")
                .contains("from temperatures, last read yesterday 8:00")
                .contains("Feed amount unknown assumed: nobody has said")
                .contains("Chloride 5 mg/L assumed: nobody has said")
                .contains("200 eggs told by the coordinator; no deaths counted");

        post("{\"analyte\": \"feed\", \"value\": 2, \"unit\": \"g\"}");
        post("{\"analyte\": \"chloride\", \"value\": 31, \"unit\": \"mg/L\"}");

        assertThat(text()).contains("g a day told by the class, last yesterday 8:00")
                .contains("Chloride 31 mg/L read yesterday 8:00");
    }

    @Test
    void page_isSaidInSpanish_withEveryTemperatureOnTheReadersScale() {
        post("{\"analyte\": \"temperature\", \"value\": 19, \"unit\": \"Cel\"}");
        teacher.get("/account");
        teacher.post("/account/speech", "language", "es", "temperature_unit", "[degF]");

        String text = text();

        assertThat(text).contains("Qué hacer").contains("Temperatura, °F").contains("Temperatura 66.2 °F. ")
                .contains("Enfriador").contains("ajustado a 51.8 °F, lo dijo la coordinación")
                .contains("si nadie interviene").contains("supuesto: nadie lo ha dicho");
        assertThat(text.replaceFirst("Cuándo .*", "")).as("but for the log: it holds what was written down")
                .doesNotContain("°C");
        // 4 to 22 °C, in round steps of the other scale
        assertThat(teacher.get(page).body()).contains(">40</text>").contains(">70</text>");
        assertThat(teacher.get(page + "/series.json").body()).contains("\"name\":\"Temperatura, °F\"")
                .contains(",66.2]");
    }

    @Test
    void twentyDots_areDrawnAndReadOutAsAList() {
        post("{\"analyte\": \"temperature\", \"value\": 19, \"unit\": \"Cel\"}");

        String body = teacher.get(page).body();
        int start = body.indexOf("<ul class=\"ways\">");
        String list = body.substring(start, body.indexOf("</ul>", start));
        assertThat(list.split("class=\"way[ \"]", -1)).hasSize(20 + 1);
        assertThat(list).contains("within every limit for three days");
    }

    private String text() {
        return teacher.get(page).body().replaceAll("<[^>]*>", " ").replace('\u00a0', ' ').replaceAll("\\s+", " ");
    }

    @Test
    void adviceAgainstNitrite_saysWhatEachActIsExpectedToDo() {
        for (String day : List.of("04", "06", "08", "10")) {
            post("2026-01-" + day + "T13:00:00Z",
                    "{\"analyte\": \"nitrite\", \"value\": 1, \"unit\": \"mg/L\", \"as\": \"NO2\", \"step\": 0.2}");
        }

        String body = teacher.get(page).body();
        assertThat(body).contains("of plain salt.").containsPattern("This alone: [^<]+\\.</p>")
                .containsPattern("All of this together[^<]+\\.</p>").contains("href=\"/help#amounts\"");
        assertThat(teacher.get("/help").body()).contains("id=\"amounts\"");
    }

    private void post(String value) {
        post("2026-01-12T13:00:00Z", value);
    }

    private void post(String measuredAt, String value) {
        assertThat(APP.bearer(cast.tankA().token()).header("Idempotency-Key", UUID.randomUUID().toString())
                .postJson("/api/v1/tanks/" + cast.tankA().code() + "/readings",
                        "{\"measuredAt\": \"" + measuredAt + "\", \"values\": [" + value + "]}").status())
                .isEqualTo(201);
    }
}
