package org.tankrounds.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.db.schema.Tables.READINGS;
import static org.tankrounds.db.schema.Tables.SUBMISSIONS;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tankrounds.readings.WrongBodies.Wrong;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;

/** The same wrong bodies as lines of a batch, between good ones. */
final class WrongLinesIT {
    private static final TestApp APP = TestApp.shared();
    private static final Cast CAST = Cast.add(APP.transactions(), "Wrong lines");
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String GOOD = "{\"measuredAt\": \"2026-01-12T14:05:00Z\", \"note\": \"x\"}";

    @Test
    void eachIsRefusedByItself_andTheGoodOnesBesideItAreStored() throws Exception {
        List<Wrong> wrong = WrongBodies.all().stream().filter(WrongLinesIT::isALineThatCannotBeTaken)
                .toList();
        ByteArrayOutputStream lines = new ByteArrayOutputStream();
        for (int i = 0; i < wrong.size(); i++) {
            lines.write(addressed(GOOD.getBytes(StandardCharsets.UTF_8), "good" + i));
            lines.write('\n');
            lines.write(addressed(wrong.get(i).body(), "wrong" + i));
            lines.write('\n');
        }
        List<JsonNode> answers = batch(lines.toByteArray());

        assertThat(wrong).hasSizeGreaterThan(100);
        assertThat(answers).hasSize(2 * wrong.size());
        for (int i = 0; i < wrong.size(); i++) {
            assertThat(answers.get(2 * i).get("status").asInt()).isEqualTo(201);
            JsonNode answer = answers.get(2 * i + 1);
            assertThat(answer.get("line").asInt()).isEqualTo(2 * i + 2);
            assertThat(answer.get("status").asInt()).as("%s: %s", wrong.get(i), answer)
                    .isEqualTo(wrong.get(i).status());
            if (wrong.get(i).status() == 422) {
                assertThat(answer.get("problem").findValuesAsText("pointer"))
                        .contains(wrong.get(i).pointer());
            }
        }
        int readings = APP.transactions().inChapter(CAST.chapterId(), tx -> tx.fetchCount(READINGS));
        int submissions = APP.transactions().inChapter(CAST.chapterId(), tx -> tx.fetchCount(SUBMISSIONS));
        assertThat(List.of(readings, submissions)).containsOnly(wrong.size());
    }

    @Test
    void anEncodedBatch_isRefusedAsAWhole() {
        byte[] line = addressed(GOOD.getBytes(StandardCharsets.UTF_8), "k");
        Answer answer = APP.bearer(CAST.chapterToken()).header("Content-Encoding", "gzip")
                .send("POST", "/api/v1/readings:batch", BatchApi.MEDIA_TYPE, line);
        assertThat(answer.status()).isEqualTo(415);
    }

    /**
     * A line that names its tank is right, an empty one is none, and what breaks a line in two is another
     * matter.
     */
    private static boolean isALineThatCannotBeTaken(Wrong wrong) {
        String text = new String(wrong.body(), StandardCharsets.ISO_8859_1);
        return !text.isBlank() && !text.contains("\n") && !wrong.pointer().equals("/tank");
    }

    /** With tank and key as the first names of the object, where it is one. */
    private static byte[] addressed(byte[] body, String key) {
        if (body[0] != '{') {
            return body;
        }
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        String address = "{\"tank\": \"" + CAST.tankA().code() + "\", \"key\": \"" + key + "\"";
        line.writeBytes((address + (body[1] == '}' ? "" : ", ")).getBytes(StandardCharsets.UTF_8));
        line.write(body, 1, body.length - 1);
        return line.toByteArray();
    }

    private static List<JsonNode> batch(byte[] lines) throws Exception {
        Answer answer = APP.bearer(CAST.chapterToken())
                .send("POST", "/api/v1/readings:batch", BatchApi.MEDIA_TYPE, lines);
        assertThat(answer.status()).isEqualTo(200);
        List<JsonNode> answers = new ArrayList<>();
        for (String line : answer.body().split("\n")) {
            answers.add(JSON.readTree(line));
        }
        return answers;
    }
}
