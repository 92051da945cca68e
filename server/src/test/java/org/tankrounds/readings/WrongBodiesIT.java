package org.tankrounds.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.db.schema.Tables.READINGS;
import static org.tankrounds.db.schema.Tables.SUBMISSIONS;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.NullSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.readings.WrongBodies.Wrong;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;

final class WrongBodiesIT {
    private static final TestApp APP = TestApp.shared();
    private static final Cast CAST = Cast.add(APP.transactions(), "Wrong bodies");
    private static final String PATH = "/api/v1/tanks/" + CAST.tankA().code() + "/readings";
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String GOOD = "{\"measuredAt\": \"2026-01-12T14:05:00Z\", \"note\": \"x\"}";

    static List<Wrong> wrongBodies() {
        return WrongBodies.all();
    }

    @ParameterizedTest
    @MethodSource("wrongBodies")
    void isRefused_withAProblemThatNamesTheField(Wrong wrong) throws Exception {
        Answer answer = send("application/json", wrong.body());

        assertThat(answer.status()).as(answer.body()).isEqualTo(wrong.status());
        assertThat(answer.header("content-type").orElse("")).startsWith("application/problem+json");
        JsonNode problem = JSON.readTree(answer.body());
        assertThat(problem.get("status").asInt()).isEqualTo(wrong.status());
        assertThat(problem.get("title").asText()).endsWith(".");
        if (wrong.status() == 422) {
            List<JsonNode> errors = problem.get("errors").findValues("pointer");
            assertThat(errors).extracting(JsonNode::asText).contains(wrong.pointer());
            problem.get("errors").forEach(error -> assertThat(error.get("detail").asText()).isNotBlank());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"text/plain", "application/x-www-form-urlencoded", "application/x-ndjson",
            "application/json; charset=utf-16", "application/json; charset=iso-8859-1",
            "application/json; charset=no-such", "application/json; charset=", ";;;", "json",
            "application/xml", "multipart/form-data"})
    void isRefused_whenTheTypeIsNotJson(String type) {
        assertThat(send(type, GOOD.getBytes()).status()).isEqualTo(415);
    }

    @ParameterizedTest
    @ValueSource(strings = {"gzip", "br", "x-unknown", "gzip, identity"})
    void isRefused_whenItsContentIsEncoded(String encoding) {
        Answer answer = APP.bearer(CAST.tankA().token())
                .header("Idempotency-Key", UUID.randomUUID().toString()).header("Content-Encoding", encoding)
                .send("POST", PATH, "application/json", GOOD.getBytes());
        assertThat(answer.status()).isEqualTo(415);
        assertThat(answer.body()).contains("without Content-Encoding");
    }

    @ParameterizedTest
    @NullSource
    @ValueSource(strings = {"", " ", "\"\"", "\"open", "\"a\"b\"", "\"a\\x\""})
    void isRefused_withoutAUsableKey(String key) throws Exception {
        Answer answer = APP.bearer(CAST.tankA().token()).header("Idempotency-Key", key).postJson(PATH, GOOD);
        assertThat(answer.status()).isEqualTo(400);
        assertThat(JSON.readTree(answer.body()).at("/errors/0/pointer").asText())
                .isEqualTo("/Idempotency-Key");
    }

    @Test
    void isRefused_withAnEndlessKey() throws Exception {
        isRefused_withoutAUsableKey("k".repeat(256));
    }

    @Test
    void thereAreMoreThanSixty_allDifferent() {
        assertThat(wrongBodies()).extracting(Wrong::name).doesNotHaveDuplicates().hasSizeGreaterThan(100);
    }

    @Test
    void isRefused_whenTooLargeWithoutSayingSo() throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create(APP.baseUrl() + PATH))
                .header("Authorization", "Bearer " + CAST.tankA().token())
                .header("Idempotency-Key", UUID.randomUUID().toString())
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(new byte[3_000_000])))
                .build();
        HttpResponse<String> response = HttpClient.newHttpClient().send(request, BodyHandlers.ofString());
        assertThat(response.statusCode()).isEqualTo(413);
    }

    @Test
    void namesEveryBadFieldAtOnce() throws Exception {
        Answer answer = send("application/json", """
                {"measuredAt": "noon", "by": 3, "extra": 1, "values": [
                  {"analyte": "ph", "value": 71, "unit": "[pH]"},
                  {"analyte": "nitrite", "value": "0.3", "unit": "ppm"},
                  {"analyte": "ammonia", "value": 1, "unit": "mg/L", "as": "N", "step": 0}]}""".getBytes());

        assertThat(JSON.readTree(answer.body()).get("errors").findValuesAsText("pointer"))
                .containsExactlyInAnyOrder(
                "/measuredAt", "/by", "/extra", "/values/0/value", "/values/1/value", "/values/2/analyte",
                "/values/2/step");
        assertThat(answer.body()).contains("pH is between 0 and 14; 71 is not possible.");
    }

    @ParameterizedTest
    @ValueSource(strings =
            {"/api/v1/tanks/%00/readings", "/api/v1/tanks/a%00b/readings", "/api/v1/tanks/%ff/readings",
            "/api/v1/tanks/%F0%9F%90%9F/readings", "/api/v1/tanks/..%2f/readings"})
    void strangeAddresses_areNotFoundOrMalformed(String path) {
        assertThat(APP.bearer(CAST.chapterToken()).get(path).status()).isBetween(400, 404);
        assertThat(APP.bearer(CAST.chapterToken()).header("Idempotency-Key", "k").postJson(path, GOOD)
                .status())
                .isBetween(400, 404);
    }

    @AfterEach
    void nothingWasStored() {
        int rows = APP.transactions().inChapter(CAST.chapterId(),
                tx -> tx.fetchCount(READINGS) + tx.fetchCount(SUBMISSIONS));
        assertThat(rows).isZero();
    }

    private static Answer send(String type, byte[] body) {
        return APP.bearer(CAST.tankA().token())
                .header("Idempotency-Key", UUID.randomUUID().toString())
                .send("POST", PATH, type, body);
    }
}
