package org.tankrounds.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.db.schema.Tables.MEASUREMENTS;
import static org.tankrounds.db.schema.Tables.READINGS;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tankrounds.db.schema.tables.records.ReadingsRecord;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;
import org.tankrounds.testing.TestClock;

/** The class's form as the outbox of a device sends it: perhaps late, perhaps twice, perhaps by a wrong clock. */
class ReplayIT {
    private static final TestApp APP = TestApp.shared();
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String ACCOUNT = "Tankrounds-Account";
    private static final Instant NOW = TestClock.START;

    private final Cast cast = Cast.add(APP.transactions(), "Readings sent late");
    private final String path = "/tanks/" + cast.tankA().code() + "/log";
    private final String submission = UUID.randomUUID().toString();
    private Browserless teacher;

    @BeforeEach
    void signIn() {
        teacher = APP.signedIn(cast.teacherA()).header(ACCOUNT, cast.teacherA().code());
    }

    @Test
    void aReading_isTakenAtTheTimeItWasKept_andGetsItsReceipt() {
        Answer stored = send(Duration.ofHours(6), NOW, Map.of("temperature", "52"));

        assertThat(stored.status()).isEqualTo(200);
        assertThat(stored.header("tankrounds-build")).isPresent();
        JsonNode said = json(stored);
        assertThat(readings()).hasSize(1);
        assertThat(said.get("receipt").asText()).isEqualTo(readings().get(0).getCode());
        assertThat(said.get("savedTo").asText()).isEqualTo(
                "/tanks/" + cast.tankA().code() + "?saved=" + readings().get(0).getCode());
        assertThat(readings().get(0).getMeasuredAt()).isEqualTo(NOW.minus(Duration.ofHours(6)));
        assertThat(readings().get(0).getReceivedAt()).isEqualTo(NOW);
        assertThat(readings().get(0).getFlags()).isEmpty();
    }

    @Test
    void sentTwice_byALaterClock_getsTheSameReceipt() {
        Answer first = send(Duration.ofMinutes(1), NOW, Map.of("temperature", "52"));
        Answer again = send(Duration.ofMinutes(9), NOW.plusSeconds(480), Map.of("temperature", "52"));

        assertThat(again.status()).isEqualTo(200);
        assertThat(json(again).get("receipt")).isEqualTo(json(first).get("receipt"));
        assertThat(readings()).hasSize(1);

        Answer other = send(Duration.ofMinutes(9), NOW, Map.of("temperature", "53"));
        assertThat(other.status()).isEqualTo(422);
        assertThat(json(other).get("title").asText()).contains("has stored another reading before");
        assertThat(readings()).hasSize(1);
    }

    @Test
    void anAccountThatIsNotTheSessions_isRefused() {
        teacher.header(ACCOUNT, cast.teacherB().code());
        assertThat(send(Duration.ZERO, NOW, Map.of("temperature", "52")).status()).isEqualTo(403);
        teacher.header(ACCOUNT, "");
        assertThat(send(Duration.ZERO, NOW, Map.of("temperature", "52")).status()).isEqualTo(403);
        assertThat(readings()).isEmpty();
    }

    @Test
    void whatThePageWouldSay_isSaidInSentences() {
        Answer impossible = send(Duration.ZERO, NOW, Map.of("temperature", "fifty", "deaths", "2.5"));
        assertThat(impossible.status()).isEqualTo(422);
        assertThat(json(impossible).get("sentences").toString()).contains("cannot be read").contains("whole number");

        Answer unlikely = send(Duration.ZERO, NOW, Map.of("temperature", "54", "temperature_unit", "Cel"));
        assertThat(unlikely.status()).isEqualTo(422);
        assertThat(json(unlikely).get("sentences").toString()).contains("You typed 54 °C");
        assertThat(readings()).isEmpty();

        Answer sure = send(Duration.ZERO, NOW, Map.of("temperature", "54", "temperature_unit", "Cel",
                "sure_temperature", "yes 54 Cel"));
        assertThat(sure.status()).isEqualTo(200);
        assertThat(readings().get(0).getFlags()).containsExactly("confirmed:temperature");
    }

    @Test
    void aClockDaysOff_isAcceptedAndMarkedAsDoubtful_andTheReceiptSaysSo() {
        Answer stored = send(Duration.ofHours(2), NOW.plus(Duration.ofDays(2)), Map.of("temperature", "52"));

        assertThat(json(stored).get("flags").toString()).isEqualTo("[\"clock_skewed\",\"time_doubtful\"]");
        assertThat(readings().get(0).getMeasuredAt()).isEqualTo(NOW.minus(Duration.ofHours(2)));
        assertThat(measuredFlags()).containsExactly((short) 2);
        teacher.header(ACCOUNT, null);
        assertThat(teacher.get(json(stored).get("savedTo").asText()).body())
                .contains("Its time is doubtful, because the clock of the device was far off.");
        assertThat(teacher.get("/tanks/" + cast.tankA().code() + "/readings/" + readings().get(0).getCode()).body())
                .contains("(doubtful: the clock of the device was far off)");
    }

    @Test
    void aTimeThatTheClassTyped_countsAsTyped_whateverTheClockSays() {
        Answer stored = send(Duration.ofHours(2), NOW.plus(Duration.ofDays(2)),
                Map.of("temperature", "52", "measured_at", "2026-01-12 8:05"));

        assertThat(stored.status()).isEqualTo(200);
        assertThat(readings().get(0).getMeasuredAt()).isEqualTo(Instant.parse("2026-01-12T13:05:00Z"));
        assertThat(readings().get(0).getFlags()).isEmpty();
    }

    @Test
    void aFormOfANewerVersion_isKeptForAPerson() {
        Answer answer = send(Duration.ZERO, NOW, Map.of("temperature", "52", "form_version", "5"));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(json(answer).get("sentences").toString()).contains("of a version that is not known here");

        assertThat(send(Duration.ZERO, NOW, Map.of("temperature", "52", "form_version", "1")).status()).isEqualTo(200);
    }

    @Test
    void strangeClocks_neverBreakAnything() {
        for (String time : List.of("", "soon", "-271821-04-20T00:00:00.000Z", "+275760-09-13T00:00:00.000Z",
                "0000-01-01T00:00:00Z", "9".repeat(5000))) {
            Map<String, String> form = form(Map.of("temperature", "52", "submission_id", UUID.randomUUID().toString()));
            form.put("kept_at", time);
            form.put("sent_at", "2026-01-13T14:00:00.000Z");
            assertThat(teacher.postForm(path, form).status()).as(time).isEqualTo(200);
            form.put("submission_id", UUID.randomUUID().toString());
            form.put("kept_at", "2026-01-13T14:00:00.000Z");
            form.put("sent_at", time);
            assertThat(teacher.postForm(path, form).status()).as(time).isEqualTo(200);
        }
        assertThat(readings()).hasSize(12);
    }

    @Test
    void ping_saysWhoIsSignedInAndBringsATokenThatIsTaken() {
        JsonNode nobody = json(APP.browser().get("/api/ping"));
        assertThat(nobody.get("account").asText()).isEmpty();
        assertThat(nobody.get("formToken").asText()).isEmpty();
        assertThat(nobody.get("now").asText()).isEqualTo("2026-01-13T14:00:00Z");

        Answer answer = teacher.get("/api/ping");
        assertThat(json(answer).get("account").asText()).isEqualTo(cast.teacherA().code());
        assertThat(answer.header("cache-control").orElseThrow()).contains("no-store");
        assertThat(answer.header("tankrounds-build")).contains(json(answer).get("build").asText());
        Map<String, String> form = form(Map.of("temperature", "52"));
        form.put("form_token", json(answer).get("formToken").asText());
        assertThat(teacher.postForm(path, form).status()).isEqualTo(200);
    }

    private Answer send(Duration kept, Instant sentAt, Map<String, String> typed) {
        Map<String, String> form = form(typed);
        form.put("kept_at", sentAt.minus(kept).toString());
        form.put("sent_at", sentAt.toString());
        return teacher.postForm(path, form);
    }

    private Map<String, String> form(Map<String, String> typed) {
        teacher.get("/account");
        Map<String, String> form = new TreeMap<>(Map.of("submission_id", submission));
        form.putAll(typed);
        form.put("form_token", teacher.formToken());
        return form;
    }

    private static JsonNode json(Answer answer) {
        try {
            return JSON.readTree(answer.body());
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("no JSON: " + answer.body(), e);
        }
    }

    private List<ReadingsRecord> readings() {
        return APP.transactions().inChapter(cast.chapterId(), tx -> tx.selectFrom(READINGS).fetch());
    }

    private List<Short> measuredFlags() {
        return APP.transactions().inChapter(cast.chapterId(),
                tx -> tx.selectFrom(MEASUREMENTS).fetch(MEASUREMENTS.FLAGS));
    }
}
