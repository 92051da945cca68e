package org.tankrounds.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.tankrounds.db.schema.Tables.MEASUREMENTS;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;

/**
 * Oxygen in % of saturation without a temperature beside it. The same % is less oxygen in warm water: taken at
 * 10 °C, a tank that is short of it in a hot week would look better than it is.
 */
final class OxygenInPercentIT {
    private static final TestApp APP = TestApp.shared();
    private static final ObjectMapper JSON = new ObjectMapper();
    /** 65 % of EN 25814's 9.47 mg/L at 18 °C, and of its 11.3 mg/L at 10 °C. */
    private static final double AT_18_C = 0.65 * 9.47;
    private static final double AT_10_C = 0.65 * 11.3;
    private static final Offset<Double> THREE_FIGURES = within(0.65 * 0.05);
    private static final String OXYGEN = value("dissolved_oxygen", 65, "%");

    private final Cast cast = Cast.add(APP.transactions(), "Oxygen in %");
    private final String tank = cast.tankA().code();

    @Test
    void posted_isTakenAtTheTanksNewestTemperatureUntilThen() throws IOException {
        post(tank, "2026-01-12T13:00:00Z", celsius(18));
        post(tank, "2026-01-11T13:00:00Z", celsius(12));
        post(tank, "2026-01-12T15:00:00Z", celsius(5));
        post(tank, "2026-01-12T13:30:00Z", celsius(33));
        post(cast.tankB().code(), "2026-01-12T13:45:00Z", celsius(4));

        post(tank, "2026-01-12T14:00:00Z", OXYGEN);

        assertThat(oxygenMgPerL()).isCloseTo(AT_18_C, THREE_FIGURES);
    }

    @Test
    void postedWithATemperature_isTakenAtThat() throws IOException {
        post(tank, "2026-01-12T13:00:00Z", celsius(5));
        post(tank, "2026-01-12T14:00:00Z", OXYGEN + ", " + celsius(18));
        assertThat(oxygenMgPerL()).isCloseTo(AT_18_C, THREE_FIGURES);
    }

    @Test
    void postedWithATemperatureNoFishLivesIn_isTakenAtTheOneBefore() throws IOException {
        post(tank, "2026-01-12T13:00:00Z", celsius(18));
        post(tank, "2026-01-12T14:00:00Z", celsius(64) + ", " + OXYGEN);
        assertThat(oxygenMgPerL()).as("°F taken for °C").isCloseTo(AT_18_C, THREE_FIGURES);
    }

    @Test
    void postedWithoutATemperatureInTwoWeeks_isTakenAtTen() throws IOException {
        post(tank, "2025-12-29T13:59:00Z", celsius(18));
        post(tank, "2026-01-12T14:00:00Z", OXYGEN);
        assertThat(oxygenMgPerL()).isCloseTo(AT_10_C, THREE_FIGURES);
    }

    @Test
    void inABatch_isTakenAtWhatTheBatchSays_inWhateverOrder() {
        String other = cast.tankB().code();
        batch(List.of(201, 201, 201, 422, 409, 201),
                line(tank, "oxygen", "2026-01-12T14:00:00Z", OXYGEN),
                line(tank, "later", "2026-01-12T15:00:00Z", celsius(5)),
                line(tank, "then", "2026-01-12T13:00:00Z", celsius(18)),
                line(tank, "refused", "2026-01-12T13:30:00Z", celsius(4) + ", " + value("ph", 71, "[pH]")),
                line(tank, "then", "2026-01-12T13:40:00Z", celsius(3)),
                line(other, "other", "2026-01-12T13:50:00Z", celsius(2)));
        assertThat(oxygenMgPerL()).isCloseTo(AT_18_C, THREE_FIGURES);
    }

    /** The database knows no year 0. */
    @Test
    void atATimeThatCannotBe_isRefused() {
        String never = "0000-01-01T00:00:00Z";
        assertThat(send("never", tank, never, OXYGEN).status()).isEqualTo(422);
        batch(List.of(422, 201), line(tank, "never", never, OXYGEN),
                line(tank, "then", "2026-01-12T14:00:00Z", OXYGEN));
        assertThat(oxygenMgPerL()).isCloseTo(AT_10_C, THREE_FIGURES);
    }

    @Test
    void inABatch_isTakenAtWhatWasStoredBefore() throws IOException {
        post(tank, "2026-01-12T13:00:00Z", celsius(18));
        batch(List.of(201, 201),
                line(tank, "before", "2026-01-12T12:00:00Z", celsius(5)),
                line(tank, "oxygen", "2026-01-12T14:00:00Z", OXYGEN));
        assertThat(oxygenMgPerL()).isCloseTo(AT_18_C, THREE_FIGURES);
    }

    @Test
    void sentAgain_staysAsItWasStored() throws IOException {
        post(tank, "2026-01-12T13:00:00Z", celsius(18));
        Answer first = send("same", tank, "2026-01-12T14:00:00Z", OXYGEN);
        post(tank, "2026-01-12T13:30:00Z", celsius(5));
        Answer again = send("same", tank, "2026-01-12T14:00:00Z", OXYGEN);
        batch(List.of(200), line(tank, "same", "2026-01-12T14:00:00Z", OXYGEN));

        assertThat(again.status()).isEqualTo(200);
        assertThat(again.body()).isEqualTo(first.body());
        assertThat(oxygenMgPerL()).isCloseTo(AT_18_C, THREE_FIGURES);
    }

    @Test
    void typedByAClass_isTakenAtTheLastTemperature() throws IOException {
        post(tank, "2026-01-12T13:00:00Z", celsius(18));
        Browserless teacher = APP.signedIn(cast.teacherA());
        String log = "/tanks/" + tank + "/log";
        teacher.get(log);
        Answer saved = teacher.postForm(log, Map.of("form_token", teacher.formToken(),
                "submission", UUID.randomUUID().toString(), "dissolved_oxygen", "65 %"));

        assertThat(saved.status()).as(saved.body()).isEqualTo(303);
        assertThat(oxygenMgPerL()).isCloseTo(AT_18_C, THREE_FIGURES);
    }

    @Test
    void corrected_isTakenAtTheLastTemperature_notAtTheOneTakenBack() throws IOException {
        post(tank, "2026-01-12T13:00:00Z", celsius(18));
        String code = post(tank, "2026-01-12T14:00:00Z", OXYGEN + ", " + celsius(5));
        Browserless teacher = APP.signedIn(cast.teacherA());
        String page = "/tanks/" + tank + "/readings/" + code;
        teacher.get(page);
        Answer corrected = teacher.postForm(page, new TreeMap<>(Map.of("form_token", teacher.formToken(),
                "dissolved_oxygen", "65", "temperature", "", "measured_at", "2026-01-12 09:00",
                "reason", "that was the other tank's thermometer", "version", "1")));

        assertThat(corrected.status()).as(corrected.body()).isEqualTo(303);
        assertThat(oxygenMgPerL()).isCloseTo(AT_18_C, THREE_FIGURES);
    }

    private static String celsius(double value) {
        return value("temperature", value, "Cel");
    }

    private static String value(String analyte, double value, String unit) {
        return "{\"analyte\": \"" + analyte + "\", \"value\": " + value + ", \"unit\": \"" + unit + "\"}";
    }

    private static String line(String tank, String key, String measuredAt, String values) {
        return "{\"tank\": \"%s\", \"key\": \"%s\", \"measuredAt\": \"%s\", \"values\": [%s]}"
                .formatted(tank, key, measuredAt, values);
    }

    private void batch(List<Integer> statuses, String... lines) {
        Answer answer = APP.bearer(cast.chapterToken()).send("POST", "/api/v1/readings:batch", BatchApi.MEDIA_TYPE,
                String.join("\n", lines).getBytes(StandardCharsets.UTF_8));
        assertThat(answer.body().lines().map(OxygenInPercentIT::status)).isEqualTo(statuses);
    }

    private static int status(String line) {
        return Integer.parseInt(line.replaceFirst(".*?\"status\":(\\d+).*", "$1"));
    }

    /** @return the reading's code */
    private String post(String tank, String measuredAt, String values) throws IOException {
        Answer answer = send(UUID.randomUUID().toString(), tank, measuredAt, values);
        assertThat(answer.status()).as(answer.body()).isEqualTo(201);
        return JSON.readTree(answer.body()).get("id").asText();
    }

    private Answer send(String key, String tank, String measuredAt, String values) {
        return APP.bearer(cast.chapterToken()).header("Idempotency-Key", key).postJson(
                "/api/v1/tanks/" + tank + "/readings",
                "{\"measuredAt\": \"" + measuredAt + "\", \"values\": [" + values + "]}");
    }

    /** Of the one reading that has oxygen, in the version that counts. */
    private double oxygenMgPerL() {
        return APP.transactions().inChapter(cast.chapterId(), tx -> tx.select(MEASUREMENTS.VALUE).from(MEASUREMENTS)
                .where(MEASUREMENTS.CHAPTER_ID.eq(cast.chapterId()))
                .and(MEASUREMENTS.ANALYTE.eq("dissolved_oxygen")).fetchSingle().value1());
    }
}
