package org.tankrounds.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.db.schema.Tables.DIRTY_TANKS;
import static org.tankrounds.db.schema.Tables.MEASUREMENTS;
import static org.tankrounds.db.schema.Tables.READINGS;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jooq.Table;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;

final class BatchApiIT {
    private static final TestApp APP = TestApp.shared();
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Cast cast = Cast.add(APP.transactions(), "Readings by the batch");
    private final String tank = cast.tankA().code();

    @Test
    void answersEachLineInOrder_andOneBadLineCostsTheOthersNothing() throws Exception {
        List<JsonNode> answers = batch(String.join("\n",
                ph(tank, "k1", "7.2"),
                ph(tank, "k2", "71"),
                "",
                "{not json",
                ph(cast.tankB().code(), "k1", "7.0"),
                ph(APP.elsewhere().tankA().code(), "k3", "7.0"),
                ph(tank, "k1", "7.2"),
                ph(tank, "k1", "7.5"),
                "{\"note\": \"x\", \"measuredAt\": \"2026-01-12T14:05:00Z\"}",
                "{\"tank\": \"" + tank + "\", \"key\": \"long\", \"note\": \"" + "x".repeat(70_000) + "\"}",
                ph(tank, "k4", "7.1")));

        assertThat(answers).extracting(answer -> answer.get("line").asInt())
                .containsExactly(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11);
        assertThat(answers).extracting(answer -> answer.get("status").asInt())
                .containsExactly(201, 422, 400, 400, 201, 404, 200, 409, 422, 413, 201);
        assertThat(answers.get(6).get("id")).isEqualTo(answers.get(0).get("id"));
        assertThat(answers.get(1).at("/problem/errors/0/pointer").asText()).isEqualTo("/values/0/value");
        assertThat(answers.get(8).get("problem").findValuesAsText("pointer")).containsExactly("/tank", "/key");
        assertThat(count(READINGS)).isEqualTo(3);
        assertThat(count(MEASUREMENTS)).isEqualTo(3);
    }

    @Test
    void sentAgain_storesNothingTwice_alsoWhenPostedSingly() throws Exception {
        String lines = String.join("\n", ph(tank, "a", "7.2"), ph(tank, "b", "7.3"), "");
        List<JsonNode> first = batch(lines);
        List<JsonNode> again = batch(lines);
        Answer single = APP.bearer(cast.tankA().token()).header("Idempotency-Key", "a")
                .postJson("/api/v1/tanks/" + tank + "/readings", reading("7.2"));

        assertThat(again).extracting(answer -> answer.get("status").asInt()).containsExactly(200, 200);
        assertThat(again).extracting(answer -> answer.get("id")).isEqualTo(
                first.stream().map(answer -> answer.get("id")).toList());
        assertThat(single.status()).isEqualTo(200);
        assertThat(count(READINGS)).isEqualTo(2);
    }

    @Test
    void isForTheChaptersToken_andForNdjson() {
        assertThat(APP.bearer(cast.tankA().token()).send("POST", "/api/v1/readings:batch", BatchApi.MEDIA_TYPE,
                ph(tank, "k", "7").getBytes()).status()).isEqualTo(403);
        assertThat(APP.browser().send("POST", "/api/v1/readings:batch", BatchApi.MEDIA_TYPE,
                ph(tank, "k", "7").getBytes()).status()).isEqualTo(401);
        assertThat(APP.bearer(cast.chapterToken()).send("POST", "/api/v1/readings:batch", "application/json",
                ph(tank, "k", "7").getBytes()).status()).isEqualTo(415);
        assertThat(count(READINGS)).isZero();
    }

    @Test
    void takesHundredThousandLines_andNoMore_fromAClientThatReadsLast() throws Exception {
        String lines = "\n".repeat(90_000) + IntStream.rangeClosed(1, 10_002)
                .mapToObj(i -> i <= 10_000 ? ph(tank, "n" + i, "7.2") : "{}")
                .collect(Collectors.joining("\n"));
        List<JsonNode> answers = batch(lines);

        assertThat(answers).hasSize(100_001);
        assertThat(answers.subList(0, 90_000)).allMatch(answer -> answer.get("status").asInt() == 400);
        assertThat(answers.subList(90_000, 100_000)).allMatch(answer -> answer.get("status").asInt() == 201);
        assertThat(answers.get(99_999).get("line").asInt()).isEqualTo(100_000);
        assertThat(answers.get(100_000).get("status").asInt()).isEqualTo(413);
        assertThat(count(READINGS)).isEqualTo(10_000);
    }

    @Test
    void answersWhileTheSenderWaits() throws Exception {
        URI base = URI.create(APP.baseUrl());
        try (Socket socket = new Socket(base.getHost(), base.getPort())) {
            socket.setSoTimeout(10_000);
            OutputStream out = socket.getOutputStream();
            BufferedReader in = new BufferedReader(
                    new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
            write(out, "POST /api/v1/readings:batch HTTP/1.1\r\nHost: " + base.getAuthority()
                    + "\r\nAuthorization: Bearer " + cast.chapterToken()
                    + "\r\nContent-Type: application/x-ndjson\r\nTransfer-Encoding: chunked\r\n\r\n");
            writeChunk(out, ph(tank, "w1", "7.2") + "\n");
            assertThat(answerWith(in, "\"line\":1")).contains("201");
            assertThat(count(READINGS)).isEqualTo(1);
            writeChunk(out, ph(tank, "w2", "7.2") + "\n");
            assertThat(answerWith(in, "\"line\":2")).contains("201");
            write(out, "0\r\n\r\n");
        }
    }

    @Test
    void leavesItsTanksForTheForecast() throws Exception {
        batch(ph(tank, "k", "7.2"));
        assertThat(count(DIRTY_TANKS)).isLessThanOrEqualTo(1);
        assertThat(count(READINGS)).isEqualTo(1);
    }

    private static String answerWith(BufferedReader in, String wanted) throws Exception {
        String line = in.readLine();
        while (line != null && !line.contains(wanted)) {
            line = in.readLine();
        }
        return String.valueOf(line);
    }

    private static void write(OutputStream out, String text) throws Exception {
        out.write(text.getBytes(StandardCharsets.UTF_8));
        out.flush();
    }

    private static void writeChunk(OutputStream out, String text) throws Exception {
        write(out, Integer.toHexString(text.getBytes(StandardCharsets.UTF_8).length) + "\r\n" + text + "\r\n");
    }

    private List<JsonNode> batch(String lines) throws Exception {
        Answer answer = APP.bearer(cast.chapterToken()).send("POST", "/api/v1/readings:batch", BatchApi.MEDIA_TYPE,
                lines.getBytes(StandardCharsets.UTF_8));
        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.header("content-type").orElse("")).startsWith(BatchApi.MEDIA_TYPE);
        List<JsonNode> answers = new ArrayList<>();
        for (String line : answer.body().split("\n")) {
            answers.add(JSON.readTree(line));
        }
        return answers;
    }

    private int count(Table<?> table) {
        return APP.transactions().inChapter(cast.chapterId(), tx -> tx.fetchCount(table));
    }

    private static String reading(String ph) {
        return "{\"measuredAt\": \"2026-01-12T14:05:00Z\", \"values\": "
                + "[{\"analyte\": \"ph\", \"value\": " + ph + ", \"unit\": \"[pH]\"}]}";
    }

    private static String ph(String tank, String key, String ph) {
        return "{\"tank\": \"" + tank + "\", \"key\": \"" + key + "\", " + reading(ph).substring(1);
    }
}
