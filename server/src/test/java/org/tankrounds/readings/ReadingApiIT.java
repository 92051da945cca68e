package org.tankrounds.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.db.schema.Tables.MEASUREMENTS;
import static org.tankrounds.db.schema.Tables.READINGS;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;
import org.tankrounds.testing.TestClock;

final class ReadingApiIT {
    private static final TestApp APP = TestApp.shared();
    private static final Cast CAST = Cast.add(APP.transactions(), "Readings by script");
    private static final ObjectMapper JSON = new ObjectMapper();

    private final String path = "/api/v1/tanks/" + CAST.tankA().code() + "/readings";

    @Test
    void storesWhatWasPosted_andShowsItUnderItsAddress() throws Exception {
        Answer created = post(UUID.randomUUID().toString(), """
                {"measuredAt": "2026-01-12T14:05:00-05:00", "by": "period 3",
                 "values": [{"analyte": "temperature", "value": 52.3, "unit": "[degF]", "step": 1},
                            {"analyte": "total_ammonia", "value": 0.5, "unit": "mg/L", "as": "NH3", "step": 0.3},
                            {"analyte": "nitrite", "value": 0.30, "unit": "mg/L", "as": "NO2", "step": 0.2}],
                 "note": "water a little cloudy"}""");

        assertThat(created.status()).isEqualTo(201);
        JsonNode reading = JSON.readTree(created.body());
        assertThat(created.location()).isEqualTo(path + "/" + reading.get("id").asText());
        assertThat(reading.get("tank").asText()).isEqualTo(CAST.tankA().code());
        assertThat(reading.get("measuredAt").asText()).isEqualTo("2026-01-12T19:05:00Z");
        assertThat(reading.get("receivedAt").asText()).endsWith("Z");
        assertThat(reading.get("by").asText()).isEqualTo("period 3");
        assertThat(reading.get("note").asText()).isEqualTo("water a little cloudy");
        assertThat(reading.get("version").asInt()).isEqualTo(1);
        assertThat(reading.get("flags")).isEmpty();
        assertThat(created.body()).contains("\"value\":52.3,").contains("\"value\":0.30,");
        assertThat(token().get(created.location()).body()).isEqualTo(created.body());
    }

    @Test
    void convertsOnce_intoWhatTheEngineTakesIn() throws Exception {
        String id = idOf(post(UUID.randomUUID().toString(), """
                {"measuredAt": "2026-01-13T13:05:00Z",
                 "values": [{"analyte": "temperature", "value": 52.3, "unit": "[degF]", "step": 1},
                            {"analyte": "total_ammonia", "value": 0.50, "unit": "mg/L", "as": "NH3", "step": 0.3},
                            {"analyte": "nitrite", "value": 0.3, "unit": "mg/L", "as": "NO2", "step": 0.2},
                            {"analyte": "nitrate", "value": 0, "unit": "mg/L", "as": "NO3"}]}"""));

        Map<String, float[]> measured = measured(id);
        // (52.3 - 32) / 1.8, by definition of the Fahrenheit scale
        assertThat(measured.get("temperature")[0]).isEqualTo(11.277778f);
        assertThat(measured.get("temperature")[1]).isEqualTo(0.2777778f);
        // 0.50 mg/L "as NH3" is 0.411223 mg N/L: worked from atomic masses N 14.0067, H 1.00794
        assertThat(measured.get("total_ammonia")[0]).isCloseTo(0.411223f, within(1e-6f));
        // mg NO2 to mg N: x 0.304457, from atomic masses N 14.0067, O 15.9994
        assertThat(measured.get("nitrite")[0]).isCloseTo(0.3f * 0.304457f, within(1e-6f));
        assertThat(measured.get("nitrite")[1]).isCloseTo(0.1f * 0.304457f, within(1e-6f));
        // the kit's card: 0 and 5 mg/L as NO3 are its first colours
        assertThat(measured.get("nitrate")[1]).isCloseTo(2.5f * 0.225897f, within(1e-5f));
        assertThat(measured.get("nitrate")[2]).isEqualTo(1f);
    }

    @Test
    void refusesANumberWithoutItsForm_andSaysWhichFormsThereAre() {
        Answer answer = post(UUID.randomUUID().toString(), """
                {"measuredAt": "2026-01-12T09:00:00Z",
                 "values": [{"analyte": "nitrite", "value": 0.3, "unit": "mg/L"}]}""");

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("/values/0/as").contains("mg/L as N, mg/L as NO2");
    }

    @Test
    void keepsUnlikelyValues_andTimesAheadOfTheClock_withAMark() throws Exception {
        Answer warm = post(UUID.randomUUID().toString(), """
                {"measuredAt": "%s", "values": [{"analyte": "temperature", "value": 54, "unit": "Cel"}]}"""
                .formatted(TestClock.START));
        Answer ahead = post(UUID.randomUUID().toString(), """
                {"measuredAt": "%s", "values": [{"analyte": "ph", "value": 7.2, "unit": "[pH]"}]}"""
                .formatted(TestClock.START.plusSeconds(3600)));

        assertThat(JSON.readTree(warm.body()).at("/flags/0").asText()).isEqualTo("unlikely:temperature");
        assertThat(measured(idOf(warm)).get("temperature")[2]).isEqualTo(2f);
        assertThat(JSON.readTree(ahead.body()).at("/flags/0").asText()).isEqualTo("time_doubtful");
        assertThat(measured(idOf(ahead)).get("ph")[2]).isEqualTo(2f);
    }

    @Test
    void sameKeyAndBody_answersTheSameReading_whateverTheOrderOfNames() throws Exception {
        String key = UUID.randomUUID().toString();
        Answer first = post(key, "{\"measuredAt\": \"2026-01-11T09:00:00Z\", \"note\": \"clear\"}");
        Answer again = post("\"" + key + "\"", "{ \"note\": \"clear\",\n \"measuredAt\": \"2026-01-11T09:00:00Z\" }");
        Answer other = post(key, "{\"measuredAt\": \"2026-01-11T09:00:00Z\", \"note\": \"cloudy\"}");

        assertThat(first.status()).isEqualTo(201);
        assertThat(again.status()).isEqualTo(200);
        assertThat(again.body()).isEqualTo(first.body());
        assertThat(other.status()).isEqualTo(409);
        assertThat(other.header("content-type").orElse("")).startsWith("application/problem+json");
    }

    @Test
    void twentyPostsAtOnceWithOneKey_storeOneReading() throws Exception {
        String key = UUID.randomUUID().toString();
        String body = "{\"measuredAt\": \"2026-01-11T10:00:00Z\", \"note\": \"%s\"}".formatted(key);
        ExecutorService senders = Executors.newFixedThreadPool(20);
        try {
            List<Future<Answer>> answers = new ArrayList<>();
            for (int i = 0; i < 20; i++) {
                answers.add(senders.submit(() -> post(key, body)));
            }
            List<Integer> statuses = new ArrayList<>();
            Set<String> ids = new HashSet<>();
            for (Future<Answer> answer : answers) {
                statuses.add(answer.get().status());
                ids.add(idOf(answer.get()));
            }
            assertThat(statuses).containsOnlyOnce(201).contains(200).hasSize(20);
            assertThat(statuses.stream().filter(status -> status == 200)).hasSize(19);
            assertThat(ids).hasSize(1);
            assertThat(count(key)).isEqualTo(1);
        } finally {
            senders.shutdown();
        }
    }

    @Test
    void refusesAMissingOrUnusableKey() {
        String body = "{\"measuredAt\": \"2026-01-11T09:00:00Z\", \"note\": \"clear\"}";
        assertThat(token().postJson(path, body).status()).isEqualTo(400);
        for (String key : List.of("", " ", "\"\"", "\"open", "a".repeat(256), "\"a\"b\"")) {
            assertThat(post(key, body).status()).as("key <%s>", key).isEqualTo(400);
        }
        assertThat(post("a".repeat(255), body).status()).isEqualTo(201);
    }

    @Test
    void pagesToTheEnd_showEachReadingOnce_newestFirst() throws Exception {
        String tankB = "/api/v1/tanks/" + CAST.tankB().code() + "/readings";
        Browserless token = APP.bearer(CAST.tankB().token());
        for (int i = 0; i < 23; i++) {
            // Two share each minute: the cursor must not lose one of them at the end of a page.
            token.header("Idempotency-Key", "page-" + i).postJson(tankB, """
                    {"measuredAt": "2026-01-10T10:%02d:00Z", "note": "n%d"}""".formatted(i / 2, i));
        }
        List<String> notes = new ArrayList<>();
        String next = tankB + "?limit=5&from=2026-01-10T10:00:00%2B00:00&to=2026-01-10T11:00:00Z";
        while (next != null) {
            Answer page = token.get(next);
            assertThat(page.status()).isEqualTo(200);
            JSON.readTree(page.body()).get("readings").forEach(one -> notes.add(one.get("note").asText()));
            next = page.header("link").map(link -> link.substring(1, link.indexOf('>'))).orElse(null);
        }
        assertThat(notes).hasSize(23).doesNotHaveDuplicates().startsWith("n22", "n21", "n20").endsWith("n1", "n0");
    }

    @Test
    void refusesQuestionsItCannotUnderstand() throws Exception {
        for (String query : List.of("limit=0", "limit=501", "limit=x", "from=yesterday", "to=2026-01-01T00:00:00",
                "cursor=nonsense", "cursor=AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA", "page=2", "limit=1&limit=2",
                "from=2026-01-02T00:00:00Z&to=2026-01-01T00:00:00Z", "from=%00", "cursor=%00")) {
            Answer answer = token().get(path + "?" + query);
            assertThat(answer.status()).as(query).isEqualTo(400);
            assertThat(JSON.readTree(answer.body()).get("errors")).as(query).isNotEmpty();
        }
    }

    @Test
    void anotherTanksThings_doNotExist() {
        String theirs = "/api/v1/tanks/" + CAST.tankB().code() + "/readings";
        String elsewhere = "/api/v1/tanks/" + APP.elsewhere().tankA().code() + "/readings";
        Browserless token = token().header("Idempotency-Key", "k");
        for (String place : List.of(theirs, elsewhere, "/api/v1/tanks/nosuch/readings",
                "/api/v1/tanks/a%27b/readings")) {
            assertThat(token.get(place).status()).as(place).isEqualTo(404);
            assertThat(token.postJson(place, "{}").status()).as(place).isEqualTo(404);
        }
        assertThat(token.get(path + "/nosuch").status()).isEqualTo(404);
        assertThat(APP.bearer(CAST.chapterToken()).get(elsewhere).status()).isEqualTo(404);
        assertThat(APP.bearer(CAST.chapterToken()).get(theirs).status()).isEqualTo(200);
    }

    static Offset<Float> within(float offset) {
        return Offset.offset(offset);
    }

    private Answer post(String key, String body) {
        return token().header("Idempotency-Key", key).postJson(path, body);
    }

    private static Browserless token() {
        return APP.bearer(CAST.tankA().token());
    }

    private static String idOf(Answer answer) throws Exception {
        return JSON.readTree(answer.body()).get("id").asText();
    }

    private static int count(String note) {
        return APP.transactions().inChapter(CAST.chapterId(), tx -> tx.fetchCount(READINGS, READINGS.NOTE.eq(note)));
    }

    /** Value, half step and flags by analyte. */
    private static Map<String, float[]> measured(String code) {
        return APP.transactions().inChapter(CAST.chapterId(), tx -> tx.select(MEASUREMENTS.fields())
                .from(MEASUREMENTS).join(READINGS).on(READINGS.CHAPTER_ID.eq(MEASUREMENTS.CHAPTER_ID)
                        .and(READINGS.READING_ID.eq(MEASUREMENTS.READING_ID)))
                .where(READINGS.CODE.eq(code))
                .fetchInto(MEASUREMENTS).stream()
                .collect(Collectors.toMap(row -> row.getAnalyte(),
                        row -> new float[] {row.getValue(), row.getHalfStep(), row.getFlags()})));
    }
}
