package org.tankrounds.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.db.schema.Tables.MEASUREMENTS;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;
import org.tankrounds.testing.TestClock;

/** Probes that send SenML. Each test has a chapter of its own. */
class SenmlApiIT {
    private static final TestClock CLOCK = TestClock.atStart();
    private static final TestApp APP = TestApp.start(CLOCK);
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String TEMPERATURE =
            "[{\"n\":\"urn:dev:ow:10e2073a01080063:temperature\",\"u\":\"Cel\",\"v\":11.3}]";

    private final Cast cast = Cast.add(APP.transactions(), "Probes");

    @AfterAll
    static void stop() {
        APP.close();
    }

    @Test
    void aValueOfNow_isStoredAtTheServersTime_onceHoweverOftenItIsSent() throws Exception {
        Instant came = CLOCK.instant();
        Answer first = post(TEMPERATURE);
        CLOCK.advance(Duration.ofSeconds(7));
        Answer second = post(TEMPERATURE);
        CLOCK.advance(Duration.ofSeconds(20));
        Answer third = post(TEMPERATURE);

        assertThat(JSON.readTree(first.body()).at("/stored/0/measuredAt").asText()).isEqualTo(came.toString());
        assertThat(List.of(first.status(), second.status(), third.status())).containsOnly(200);
        assertThat(JSON.readTree(third.body()).get("alreadyStored").asInt()).isEqualTo(1);
        assertThat(values()).containsExactly("temperature 11.3");

        CLOCK.advance(Duration.ofMinutes(5));
        assertThat(stored(post(TEMPERATURE))).isEqualTo(1);
    }

    @Test
    void aBacklogWithItsOwnTimes_sentThreeTimesAtOnce_isStoredOnce() throws Exception {
        long from = CLOCK.instant().minusSeconds(3_600).getEpochSecond();
        String pack = IntStream.range(0, 12).mapToObj(i -> "{\"n\":\"temperature\",\"t\":%d,\"v\":%.1f}"
                .formatted(300 * i, 11 + i / 10.0)).collect(Collectors.joining(",",
                "[{\"bn\":\"probe7/\",\"bt\":" + from + ",\"bu\":\"Cel\",\"n\":\"temperature\",\"t\":-300,\"v\":10.9},",
                "]"));
        ExecutorService probes = Executors.newFixedThreadPool(3);
        try {
            List<Future<Answer>> answers = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                answers.add(probes.submit(() -> post(pack)));
            }
            List<Integer> stored = new ArrayList<>();
            for (Future<Answer> answer : answers) {
                stored.add(stored(answer.get()));
            }
            assertThat(stored).containsExactlyInAnyOrder(13, 0, 0);
        } finally {
            probes.shutdown();
        }
        assertThat(values()).hasSize(13).startsWith("temperature 10.9", "temperature 11.0", "temperature 11.1");
    }

    @Test
    void valuesOfOneMoment_areOneReading_inUnitsOfOurs() throws Exception {
        Answer answer = post("""
                [{"bn":"tank:","n":"temperature","u":"K","v":284.45}, {"n":"ph","u":"pH","v":7.2},
                 {"n":"dissolved_oxygen","u":"kg/m3","v":0.0098}]""");

        assertThat(JSON.readTree(answer.body()).get("stored")).hasSize(1);
        assertThat(values()).containsExactlyInAnyOrder("temperature 11.3", "ph 7.2", "dissolved_oxygen 9.8");
    }

    @Test
    void aDeviceWithoutALabel_isKnownByItsUnit() throws Exception {
        // RFC 8428, 5.1.1
        assertThat(stored(post("[{\"n\":\"urn:dev:ow:10e2073a01080063\",\"u\":\"Cel\",\"v\":23.1}]"))).isEqualTo(1);
        assertThat(values()).containsExactly("temperature 23.1");
    }

    @Test
    void whatASensorSaysWhenItHasNothing_isSetAside_andTold_andTheRestKept() throws Exception {
        Answer answer = post("""
                [{"bn":"p:","bu":"Cel","n":"temperature","t":-900,"v":85}, {"n":"temperature","t":-600,"v":-127},
                 {"n":"temperature","t":-300,"vs":"ERR"}, {"n":"temperature","v":11.3}]""");

        JsonNode body = JSON.readTree(answer.body());
        assertThat(body.get("setAside").findValuesAsText("pointer")).containsExactly("/0", "/1", "/2");
        assertThat(body.at("/setAside/0/reason").asText()).contains("85 °C");
        assertThat(values()).containsExactly("temperature 11.3");
    }

    @Test
    void anotherValueForTheSameTime_isTold_andNotStored() throws Exception {
        String pack = "[{\"n\":\"temperature\",\"u\":\"Cel\",\"t\":1768300000,\"v\":%s}]";
        post(pack.formatted("11.3"));
        Answer answer = post(pack.formatted("11.9"));

        assertThat(answer.status()).isEqualTo(200);
        assertThat(JSON.readTree(answer.body()).at("/conflicts/0/stored").asText()).isEqualTo("11.3");
        assertThat(values()).containsExactly("temperature 11.3");
    }

    @Test
    void unknownNamesAndUnits_refuseThePack_withTheirPlaces() throws Exception {
        Answer answer = post("""
                [{"n":"temperature","u":"Cel","v":11}, {"n":"humidity","u":"%RH","v":40},
                 {"n":"temperature","u":"degF","v":52}]""");

        assertThat(answer.status()).isEqualTo(422);
        assertThat(JSON.readTree(answer.body()).get("errors").findValuesAsText("pointer"))
                .containsExactly("/1/n", "/2/u");
        assertThat(values()).isEmpty();
    }

    @Test
    void otherTypesSizesAndTokens_areRefused() {
        String path = "/api/v1/tanks/" + cast.tankA().code() + "/senml";
        byte[] pack = TEMPERATURE.getBytes(StandardCharsets.UTF_8);
        var token = APP.bearer(cast.tankA().token());
        assertThat(token.send("POST", path, "text/csv", pack).status()).isEqualTo(415);
        assertThat(token.send("POST", path, SenmlApi.MEDIA_TYPE, new byte[1_000_001]).status()).isEqualTo(413);
        assertThat(token.send("POST", path, SenmlApi.MEDIA_TYPE, "[".getBytes()).status()).isEqualTo(400);
        assertThat(APP.bearer(cast.tankB().token()).send("POST", path, SenmlApi.MEDIA_TYPE, pack).status())
                .isEqualTo(404);
        assertThat(APP.bearer(cast.chapterToken()).send("POST", path, SenmlApi.MEDIA_TYPE, pack).status())
                .isEqualTo(200);
        assertThat(APP.browser().send("POST", path, SenmlApi.MEDIA_TYPE, pack).status()).isEqualTo(401);
    }

    private Answer post(String pack) {
        return APP.bearer(cast.tankA().token()).send("POST", "/api/v1/tanks/" + cast.tankA().code() + "/senml",
                SenmlApi.MEDIA_TYPE, pack.getBytes(StandardCharsets.UTF_8));
    }

    private static int stored(Answer answer) throws Exception {
        return JSON.readTree(answer.body()).get("stored").size();
    }

    private List<String> values() {
        return APP.transactions().inChapter(cast.chapterId(), tx -> tx.select(MEASUREMENTS.ANALYTE, MEASUREMENTS.VALUE)
                .from(MEASUREMENTS).where(MEASUREMENTS.CHAPTER_ID.eq(cast.chapterId()))
                .orderBy(MEASUREMENTS.MEASURED_AT).fetch(row -> row.value1() + " " + row.value2()));
    }
}
