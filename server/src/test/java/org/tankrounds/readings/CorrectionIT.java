package org.tankrounds.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.db.schema.Tables.MEASUREMENTS;
import static org.tankrounds.db.schema.Tables.READINGS;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tankrounds.db.schema.tables.records.MeasurementsRecord;
import org.tankrounds.db.schema.tables.records.ReadingsRecord;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;

final class CorrectionIT {
    private static final TestApp APP = TestApp.shared();

    private final Cast cast = Cast.add(APP.transactions(), "Corrections");
    private final String api = "/api/v1/tanks/" + cast.tankA().code() + "/readings";
    private Browserless teacher;
    private String code;
    private String path;

    @BeforeEach
    void storeAReading() throws Exception {
        teacher = APP.signedIn(cast.teacherA());
        Answer created = APP.bearer(cast.tankA().token()).header("Idempotency-Key", "first").postJson(api, """
                {"measuredAt": "2026-01-12T14:05:37Z", "by": "probe",
                 "values": [{"analyte": "temperature", "value": 52.30, "unit": "[degF]", "step": 1},
                            {"analyte": "total_ammonia", "value": 0.5, "unit": "mg/L", "as": "NH4"}]}""");
        code = new ObjectMapper().readTree(created.body()).get("id").asText();
        path = "/tanks/" + cast.tankA().code() + "/readings/" + code;
    }

    @Test
    void isAFurtherVersion_withAuthorAndReason_andNothingIsOverwritten() throws Exception {
        Answer saved = correct(Map.of("temperature", "53", "total_ammonia", "0.5", "measured_at", "2026-01-12 09:05",
                "reason", "read the wrong line", "version", "1"));

        assertThat(saved.status()).isEqualTo(303);
        List<ReadingsRecord> versions = versions();
        assertThat(versions).hasSize(2);
        assertThat(versions.get(0).getSupersededAt()).isNotNull();
        assertThat(versions.get(0).getEntered().data()).contains("52.30");
        assertThat(versions.get(1).getReason()).isEqualTo("read the wrong line");
        assertThat(versions.get(1).getPersonId()).isEqualTo(cast.teacherA().personId());
        assertThat(versions.get(1).getMeasuredAt()).as("an untouched time stays exact")
                .isEqualTo(versions.get(0).getMeasuredAt());
        assertThat(versions.get(1).getEntered().data()).contains("NH4");
        assertThat(measurements()).extracting(MeasurementsRecord::getReadingId)
                .containsOnly(versions.get(1).getReadingId());
        assertThat(measurements()).extracting(MeasurementsRecord::getAnalyte).hasSize(2);

        String page = teacher.get(path).body();
        assertThat(page).contains("Version 2, the one that counts").contains("By Ada Fernwhistle")
                .contains("Version 1, no longer counts").contains("By a probe or script (probe)")
                .contains("read the wrong line").contains("52.30 °F").contains("53 °F");
        JsonNode holding = new ObjectMapper().readTree(APP.bearer(cast.tankA().token()).get(api).body());
        assertThat(holding.at("/readings")).hasSize(1);
        assertThat(holding.at("/readings/0/version").asInt()).isEqualTo(2);
        assertThat(holding.at("/readings/0/id").asText()).isEqualTo(code);
    }

    @Test
    void needsAReason_andKeepsWhatWasTyped() {
        Answer answer = correct(Map.of("temperature", "53", "measured_at", "2026-01-12 09:05", "version", "1"));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("<title>Error: ").contains("href=\"#reason\"").contains("value=\"53\"");
        assertThat(versions()).hasSize(1);
    }

    @Test
    void refusesWhatCannotBe() {
        Answer answer = correct(Map.of("temperature", "400", "measured_at", "2026-01-12 09:05", "version", "1",
                "reason", "typo"));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("Temperature is between 14 and 212 °F; 400 is not possible.");
        assertThat(versions()).hasSize(1);
    }

    @Test
    void ofAnOldVersion_showsTheNewerOne_andStoresNothing() {
        Map<String, String> mine = Map.of("temperature", "53", "measured_at", "2026-01-12 09:05", "version", "1",
                "reason", "mine");
        Map<String, String> theirs = Map.of("temperature", "51", "measured_at", "2026-01-12 09:05", "version", "1",
                "reason", "theirs");
        assertThat(correct(theirs).status()).isEqualTo(303);
        Answer late = correct(mine);

        assertThat(late.status()).isEqualTo(409);
        assertThat(late.body()).contains("Somebody else has corrected this reading meanwhile").contains("51 °F")
                .contains("value=\"53\"").contains("name=\"version\" value=\"2\"");
        assertThat(versions()).hasSize(2);
        Map<String, String> seen = new TreeMap<>(mine);
        seen.put("version", "2");
        assertThat(correct(seen).status()).isEqualTo(303);
        assertThat(versions()).hasSize(3);
    }

    @Test
    void sentTwice_storesOnce_andIsAnsweredAlike() {
        Map<String, String> typed = Map.of("temperature", "53.0", "total_ammonia", "0.5", "note", "a second look",
                "measured_at", "2026-01-12 09:06", "reason", "typo", "version", "1");
        Answer first = correct(typed);
        Answer again = correct(typed);

        assertThat(first.status()).isEqualTo(303);
        assertThat(again.status()).as(again.body()).isEqualTo(303);
        assertThat(again.location()).isEqualTo(first.location());
        assertThat(versions()).hasSize(2);
    }

    @Test
    void toATimeStillToCome_isAskedBack() {
        Map<String, String> typed = new TreeMap<>(Map.of("temperature", "53", "measured_at", "2026-01-14 09:05",
                "reason", "typo", "version", "1"));
        assertThat(correct(typed).body()).contains("Is the clock right?");
        typed.put("sure_measured_at", "yes 2026-01-14 09:05");
        assertThat(correct(typed).status()).isEqualTo(303);
    }

    @Test
    void sameKeyPostedAfterwards_answersTheReadingThatHolds() throws Exception {
        correct(Map.of("temperature", "53", "measured_at", "2026-01-12 09:05", "version", "1", "reason", "typo"));
        Answer again = APP.bearer(cast.tankA().token()).header("Idempotency-Key", "first").postJson(api, """
                {"measuredAt": "2026-01-12T14:05:37Z", "by": "probe",
                 "values": [{"analyte": "temperature", "value": 52.3, "unit": "[degF]", "step": 1},
                            {"analyte": "total_ammonia", "value": 0.5, "unit": "mg/L", "as": "NH4"}]}""");
        assertThat(again.status()).isEqualTo(200);
        assertThat(new ObjectMapper().readTree(again.body()).get("version").asInt()).isEqualTo(2);
    }

    @Test
    void takenBack_countsNowhere_andItsHistorySaysByWhomAndWhy() throws Exception {
        Answer back = takeBack("put into the wrong tank", "1");

        assertThat(back.status()).isEqualTo(303);
        assertThat(measurements()).isEmpty();
        assertThat(new ObjectMapper().readTree(APP.bearer(cast.tankA().token()).get(api).body()).at("/readings"))
                .isEmpty();
        assertThat(APP.bearer(cast.tankA().token()).get(api + "/" + code).status()).isEqualTo(404);
        assertThat(teacher.get("/tanks/" + cast.tankA().code() + "/readings.csv").body()).doesNotContain("52.30");
        assertThat(teacher.get("/tanks/" + cast.tankA().code()).body()).doesNotContain("52.30")
                .contains("Taken back lately, and counted nowhere:").contains("href=\"" + path + "\"");

        String page = teacher.get(back.location()).body();
        assertThat(page).contains("This reading was taken back by Ada Fernwhistle, ")
                .contains("put into the wrong tank")
                .contains("Version 1, no longer counts").contains("52.30 °F").contains("By a probe or script (probe)")
                .doesNotContain("Keep the correction");
        assertThat(versions()).extracting(ReadingsRecord::getSupersededAt).doesNotContainNull();
    }

    @Test
    void takenBackWithoutAReason_staysAsItIs() {
        Answer answer = takeBack("", "1");
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("<title>Error: ").contains("href=\"#reason\"")
                .contains("Say in a few words why it is taken back");
        assertThat(measurements()).hasSize(2);
    }

    @Test
    void takenBackForAReasonWithAName_isAskedAboutOnce() {
        Answer asked = takeBack("Wanda Quillmere read another tank", "1");
        assertThat(asked.status()).isEqualTo(422);
        assertThat(asked.body()).contains("a person’s name, “Wanda Quillmere”")
                .contains("Answer and take this reading back");
        assertThat(measurements()).hasSize(2);

        assertThat(correct(Map.of("act", "take_back", "reason", "Wanda Quillmere read another tank", "version", "1",
                "sure_reason", "yes Wanda Quillmere")).status()).isEqualTo(303);
        assertThat(measurements()).isEmpty();
    }

    @Test
    void takenBackByWhoHasNotSeenTheCorrection_staysAsItIs() {
        correct(Map.of("temperature", "53", "measured_at", "2026-01-12 09:05", "version", "1", "reason", "typo"));
        Answer late = takeBack("put into the wrong tank", "1");

        assertThat(late.status()).isEqualTo(409);
        assertThat(late.body()).contains("Somebody else has corrected this reading meanwhile").contains("53 °F");
        assertThat(measurements()).hasSize(1);
    }

    @Test
    void takenBackTwice_isTakenBackOnce_andIsNotCorrectedAfterwards() {
        assertThat(takeBack("wrong tank", "1").status()).isEqualTo(303);
        assertThat(takeBack("wrong tank", "1").status()).isEqualTo(303);
        Answer late = correct(Map.of("temperature", "53", "measured_at", "2026-01-12 09:05", "version", "1",
                "reason", "typo"));

        assertThat(late.status()).isEqualTo(409);
        assertThat(late.body()).contains("This reading does not count any more")
                .contains("Nothing of yours was stored");
        assertThat(versions()).hasSize(2);
        assertThat(measurements()).isEmpty();
    }

    @Test
    void sameKeyPostedAfterItWasTakenBack_answersAsStored_andStoresNothing() throws Exception {
        takeBack("wrong tank", "1");
        Answer again = APP.bearer(cast.tankA().token()).header("Idempotency-Key", "first").postJson(api, """
                {"measuredAt": "2026-01-12T14:05:37Z", "by": "probe",
                 "values": [{"analyte": "temperature", "value": 52.30, "unit": "[degF]", "step": 1},
                            {"analyte": "total_ammonia", "value": 0.5, "unit": "mg/L", "as": "NH4"}]}""");
        assertThat(again.status()).isEqualTo(200);
        JsonNode said = new ObjectMapper().readTree(again.body());
        assertThat(said.get("id").asText()).isEqualTo(code);
        assertThat(said.get("version").asInt()).isEqualTo(1);
        assertThat(said.get("flags")).isEmpty();
        assertThat(measurements()).isEmpty();
    }

    @Test
    void takenBack_ofAProbe_isNotBroughtBackByItsRepeat_norStandsAgainstWhatIsNew() {
        probeSays("11.0");
        code = APP.transactions().inChapter(cast.chapterId(), tx -> tx.selectFrom(READINGS)
                .where(READINGS.CHANNEL.eq("probe")).fetchSingle(READINGS.CODE));
        path = "/tanks/" + cast.tankA().code() + "/readings/" + code;
        assertThat(takeBack("it stood in another tank", "1").status()).isEqualTo(303);
        assertThat(measurements()).as("the other reading's").hasSize(2);

        probeSays("11.0");
        assertThat(measurements()).hasSize(2);
        probeSays("9.5");
        assertThat(measurements()).hasSize(3);
    }

    @Test
    void isThereForThoseWhoLookAfterTheTank() {
        assertThat(APP.signedIn(cast.mentor()).get(path).status()).isEqualTo(200);
        assertThat(APP.signedIn(cast.coordinator()).get(path).status()).isEqualTo(200);
        assertThat(APP.signedIn(cast.teacherB()).get(path).status()).isEqualTo(404);
        assertThat(teacher.get("/tanks/" + cast.tankA().code() + "/readings/nosuch").status()).isEqualTo(404);
        assertThat(APP.signedIn(APP.elsewhere().coordinator()).get(path).status()).isEqualTo(404);
    }

    /** Of 14:00 UTC of the day before. */
    private void probeSays(String temperatureC) {
        String pack = "[{\"n\": \"temperature\", \"u\": \"Cel\", \"t\": 1768226400, \"v\": " + temperatureC + "}]";
        assertThat(APP.bearer(cast.tankA().token()).send("POST", "/api/v1/tanks/" + cast.tankA().code() + "/senml",
                SenmlApi.MEDIA_TYPE, pack.getBytes(StandardCharsets.UTF_8)).status()).isEqualTo(200);
    }

    private Answer takeBack(String reason, String version) {
        return correct(Map.of("act", "take_back", "temperature", "52.30", "measured_at", "2026-01-12 09:05",
                "reason", reason, "version", version));
    }

    private Answer correct(Map<String, String> typed) {
        teacher.get(path);
        Map<String, String> form = new TreeMap<>(typed);
        form.put("form_token", teacher.formToken());
        return teacher.postForm(path, form);
    }

    private List<ReadingsRecord> versions() {
        return APP.transactions().inChapter(cast.chapterId(),
                tx -> tx.selectFrom(READINGS).where(READINGS.CODE.eq(code)).orderBy(READINGS.VERSION).fetch());
    }

    private List<MeasurementsRecord> measurements() {
        return APP.transactions().inChapter(cast.chapterId(), tx -> tx.selectFrom(MEASUREMENTS).fetch());
    }
}
