package org.tankrounds.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.tankrounds.db.schema.Tables.KITS;
import static org.tankrounds.db.schema.Tables.MEASUREMENTS;
import static org.tankrounds.db.schema.Tables.READINGS;
import static org.tankrounds.db.schema.Tables.TANKS;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.db.schema.tables.records.ReadingsRecord;
import org.tankrounds.places.KitRepository;
import org.tankrounds.places.KitScale;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;
import org.tankrounds.testing.TestClock;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;

final class LogPageIT {
    private static final TestApp APP = TestApp.shared();

    private final Cast cast = Cast.add(APP.transactions(), "Readings by the page");
    private final String path = "/tanks/" + cast.tankA().code() + "/log";
    private Browserless teacher;

    @BeforeEach
    void signIn() {
        teacher = APP.signedIn(cast.teacherA());
    }

    @Test
    void storesWhatAClassTypes_andSaysSo() {
        Answer saved = send(Map.of("temperature", " 52 ", "deaths", "0", "feed", "2,5 g", "water_change", "",
                "ph", "7.2", "total_ammonia", "0.5", "nitrite", "0", "nitrate", "", "by", "period 3",
                "note", "a little cloudy"));

        assertThat(saved.status()).isEqualTo(303);
        assertThat(saved.location()).startsWith("/tanks/" + cast.tankA().code() + "?saved=");
        ReadingsRecord reading = readings().get(0);
        assertThat(reading.getByLabel()).isEqualTo("period 3");
        assertThat(reading.getPersonId()).isEqualTo(cast.teacherA().personId());
        assertThat(reading.getMeasuredAt()).isEqualTo(TestClock.START);
        assertThat(reading.getEntered().data()).contains("\"[degF]\"").contains("2.5").contains("\"NO2\"")
                .doesNotContain("nitrate").doesNotContain("water_change");
        Answer receipt = teacher.get(path + saved.location().substring(saved.location().indexOf('?')));
        assertThat(receipt.body()).contains("Saved 9:00: temperature 52 °F").contains("Your coordinator sees this.");
        assertThat(receipt.body()).as("the label is remembered").contains("value=\"period 3\"");
        // Card's lowest colour: not detected; its next one is 0.1 mg/L as NO2, half of that as N.
        assertThat(measured("nitrite")).containsExactly(new float[] {0f, 0.05f * 0.304457f, 1f}, within(1e-7f));
    }

    @ParameterizedTest
    @CsvSource({"temperature,fifty,cannot be read", "temperature,71 52 53,several cells", "ph,71,between 0 and 14",
            "deaths,2.5,whole number", "deaths,-1,between 0 and", "feed,'1,234',two things",
            "water_change,120,between 0 and 100", "measured_at,yesterday,write year", "total_ammonia,-1,between 0 and",
            "measured_at,2026-03-08 02:30,no clock showed 02:30", "dissolved_oxygen,9 Q,cannot be read",
            "nitrate,1e9,cannot be read"})
    void keepsWhatWasTyped_andSaysWhatIsAllowed(String field, String typed, String sentence) {
        Answer answer = send(Map.of(field, typed, "note", "the filter hums"));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("<title>Error: ").contains("There is something to put right")
                .contains("href=\"#" + field + "\"").contains(sentence).contains("the filter hums");
        if (!List.of("ph", "total_ammonia", "nitrate").contains(field)) {
            assertThat(answer.body()).contains("value=\"" + typed.replace("\"", "&quot;") + "\"");
        }
        assertThat(readings()).isEmpty();
    }

    @Test
    void refusesAnEmptyForm() {
        assertThat(send(Map.of("ph", "", "by", "period 1")).body()).contains("Nothing is filled in yet.");
        assertThat(readings()).isEmpty();
    }

    @Test
    void asksOnceAboutAnUnlikelyValue_andKeepsTheAnswer() {
        Map<String, String> typed = form(Map.of("temperature", "54", "temperature_unit", "Cel"));
        Answer asked = teacher.postForm(path, typed);
        assertThat(asked.status()).isEqualTo(422);
        assertThat(asked.body()).contains("You typed 54 °C").contains("No, it was 54 °F")
                .contains("Yes, 54 °C is right");
        assertThat(readings()).isEmpty();

        typed.put("sure_temperature", "yes 54 Cel");
        assertThat(teacher.postForm(path, typed).status()).isEqualTo(303);
        assertThat(readings().get(0).getFlags()).containsExactly("confirmed:temperature");
        assertThat(measured("temperature")).containsExactly(54f, 0f, 0f);
    }

    @Test
    void takesTheOtherScale_whereThatWasMeant() {
        Map<String, String> typed = form(Map.of("temperature", "54", "temperature_unit", "Cel"));
        typed.put("sure_temperature", "swap 54 [degF]");
        assertThat(teacher.postForm(path, typed).status()).isEqualTo(303);
        assertThat(readings().get(0).getFlags()).isEmpty();
        // (54 - 32) / 1.8, by definition of the Fahrenheit scale
        assertThat(measured("temperature")[0]).isEqualTo(12.222222f);
    }

    @Test
    void anAnswerToAnotherNumber_doesNotCount() {
        Map<String, String> typed = form(Map.of("temperature", "45", "temperature_unit", "Cel"));
        typed.put("sure_temperature", "yes 54 Cel");
        assertThat(teacher.postForm(path, typed).body()).contains("You typed 45 °C");
        assertThat(readings()).isEmpty();
    }

    @Test
    void aTypedUnitWins_overTheOneBesideTheBox() {
        assertThat(send(Map.of("temperature", "11.5 °C", "temperature_unit", "[degF]")).status()).isEqualTo(303);
        assertThat(measured("temperature")[0]).isEqualTo(11.5f);
    }

    @Test
    void sentTwice_storesOnce() {
        Map<String, String> typed = form(Map.of("temperature", "52"));
        Answer first = teacher.postForm(path, typed);
        Answer again = teacher.postForm(path, typed);
        assertThat(again.status()).isEqualTo(303);
        assertThat(again.location()).isEqualTo(first.location());

        typed.put("temperature", "53");
        Answer other = teacher.postForm(path, typed);
        assertThat(other.status()).isEqualTo(409);
        assertThat(other.body()).contains("This form has stored a reading already").contains("value=\"53\"");
        assertThat(readings()).hasSize(1);
    }

    @Test
    void takesTheSchoolsClock() {
        assertThat(send(Map.of("temperature", "52", "measured_at", "2026-01-12 8:05")).status()).isEqualTo(303);
        assertThat(readings().get(0).getMeasuredAt()).isEqualTo(Instant.parse("2026-01-12T13:05:00Z"));
    }

    @Test
    void asksOnceAboutATimeStillToCome_andNeverSaysThatItIsCounted() {
        Map<String, String> typed = form(Map.of("temperature", "54", "temperature_unit", "Cel",
                "measured_at", "2026-01-16 9:00"));
        assertThat(teacher.postForm(path, typed).body()).contains("Measured at 2026-01-16 9:00: that is still to come.")
                .contains("Is the clock right?").contains("You typed 54 °C");
        typed.put("sure_measured_at", "yes 2026-01-16 9:00");
        Answer asked = teacher.postForm(path, typed);
        assertThat(asked.body()).contains("You typed 54 °C").doesNotContain("Is the clock right?")
                .contains("name=\"sure_measured_at\" value=\"yes 2026-01-16 9:00\"");
        assertThat(readings()).isEmpty();

        typed.put("sure_temperature", "yes 54 Cel");
        Answer saved = teacher.postForm(path, typed);
        assertThat(readings().get(0).getFlags()).contains("time_doubtful");
        assertThat(teacher.get(saved.location()).body()).contains("counts it from Fri 16 Jan, 9:00 on")
                .doesNotContain("counts it already");
    }

    @Test
    void aClockAFewMinutesAhead_isNotAskedAbout() {
        assertThat(send(Map.of("temperature", "52", "measured_at", "2026-01-12 9:09")).status()).isEqualTo(303);
    }

    @Test
    void takesTheEarlierTime_whereTheClocksWentBack() {
        assertThat(send(Map.of("temperature", "52", "measured_at", "2025-11-02 01:30")).status()).isEqualTo(303);
        assertThat(readings().get(0).getMeasuredAt()).isEqualTo(Instant.parse("2025-11-02T05:30:00Z"));
    }

    @Test
    void takesWhatAMeterSays_besideTheCard_withoutTheCardsStep() {
        assertThat(teacher.get(path).body()).contains("pH, typed").contains("id=\"nitrite_typed\"")
                .contains("id=\"chloride\"").contains("id=\"hardness\"").contains("id=\"alkalinity\"");

        assertThat(send(Map.of("ph_typed", "7.35", "ph", "", "nitrite_typed", "0.12 mg/L")).status()).isEqualTo(303);
        assertThat(measured("ph")).containsExactly(7.35f, 0f, 0f);
        // mg NO2 to mg N: x 0.304457, from atomic masses N 14.0067, O 15.9994
        assertThat(measured("nitrite")).containsExactly(new float[] {0.12f * 0.304457f, 0f, 0f}, within(1e-7f));
    }

    @Test
    void asksBackAboutAnUnlikelyNumberOfAMeter() {
        Map<String, String> typed = form(Map.of("ph_typed", "9.4"));
        Answer asked = teacher.postForm(path, typed);
        assertThat(asked.status()).isEqualTo(422);
        assertThat(asked.body()).contains("You typed 9.4 for pH").contains("value=\"9.4\"").contains("open=\"open\"");

        typed.put("sure_ph", "yes 9.4 [pH]");
        assertThat(teacher.postForm(path, typed).status()).isEqualTo(303);
        assertThat(readings().get(0).getFlags()).containsExactly("confirmed:ph");
    }

    @Test
    void refusesACardAndAMeterAtOnce_andTellsWhatToDo() {
        Answer both = send(Map.of("ph", "7.2", "ph_typed", "7.35"));
        assertThat(both.status()).isEqualTo(422);
        assertThat(both.body()).contains("href=\"#ph_typed\"")
                .contains("pH: 7.2 is chosen on the card, and 7.35 typed here. Keep one of them");
        assertThat(send(Map.of("ph_typed", "71")).body()).contains("href=\"#ph_typed\"").contains("between 0 and 14");
        assertThat(readings()).isEmpty();
    }

    @Test
    void remembersThermometerAndKit() {
        APP.transactions().inChapter(cast.chapterId(), tx -> new KitRepository().add(tx, cast.chapterId(), "Strips",
                List.of(new KitScale(Analyte.NITRITE, new UnitForm("mg/L", "N"), List.of(0.0, 0.15, 0.3)))));
        Answer strips = teacher.postForm(path, form(Map.of("temperature", "11", "act", "kit", "other_kit", "Strips")));
        assertThat(strips.status()).isEqualTo(200);
        assertThat(strips.body()).contains("0.15").contains("value=\"11\"");
        assertThat(readings()).isEmpty();

        assertThat(teacher.postForm(path, form(Map.of("kit", "Strips", "nitrite", "0.15", "ph", "7,1 pH",
                "temperature", "11", "temperature_unit", "Cel"))).status()).isEqualTo(303);
        assertThat(measured("nitrite")[0]).isEqualTo(0.15f);
        assertThat(tank(KITS.NAME.getName())).isEqualTo("Strips");
        assertThat(tank(TANKS.THERMOMETER_UNIT.getName())).isEqualTo("Cel");
        assertThat(teacher.get(path).body()).contains("0.15");
    }

    @Test
    void isThereForThoseWhoLookAfterTheTank() {
        assertThat(APP.signedIn(cast.mentor()).get(path).status()).isEqualTo(200);
        assertThat(APP.signedIn(cast.coordinator()).get(path).status()).isEqualTo(200);
        assertThat(APP.signedIn(cast.teacherB()).get(path).status()).isEqualTo(404);
        assertThat(APP.signedIn(APP.elsewhere().coordinator()).get(path).status()).isEqualTo(404);
    }

    private Answer send(Map<String, String> typed) {
        return teacher.postForm(path, form(typed));
    }

    /** The form as it stands on the page, with what is typed into it. */
    private Map<String, String> form(Map<String, String> typed) {
        Answer page = teacher.get(path);
        assertThat(page.status()).isEqualTo(200);
        Matcher submission = Pattern.compile("name=\"submission_id\" value=\"([^\"]+)\"").matcher(page.body());
        assertThat(submission.find()).isTrue();
        Map<String, String> form = new TreeMap<>(typed);
        form.put("submission_id", submission.group(1));
        Pattern.compile("name=\"(opened_[a-z]+)\" value=\"([^\"]+)\"").matcher(page.body()).results()
                .forEach(opened -> form.put(opened.group(1), opened.group(2)));
        form.put("form_token", teacher.formToken());
        return form;
    }

    private List<ReadingsRecord> readings() {
        return APP.transactions().inChapter(cast.chapterId(), tx -> tx.selectFrom(READINGS).fetch());
    }

    private String tank(String column) {
        return APP.transactions().inChapter(cast.chapterId(), tx -> tx.select().from(TANKS)
                .join(KITS).on(KITS.CHAPTER_ID.eq(TANKS.CHAPTER_ID).and(KITS.KIT_ID.eq(TANKS.KIT_ID)))
                .where(TANKS.TANK_ID.eq(cast.tankA().tankId())).fetchSingle().get(column, String.class));
    }

    /** Value, half step and flags. */
    private float[] measured(String analyte) {
        return APP.transactions().inChapter(cast.chapterId(), tx -> tx.selectFrom(MEASUREMENTS)
                .where(MEASUREMENTS.ANALYTE.eq(analyte))
                .fetchSingle(row -> new float[] {row.getValue(), row.getHalfStep(), row.getFlags()}));
    }
}
