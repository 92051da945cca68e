package org.tankrounds.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.tankrounds.db.schema.Tables.MEASUREMENTS;
import static org.tankrounds.db.schema.Tables.READINGS;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.db.schema.tables.records.MeasurementsRecord;
import org.tankrounds.db.schema.tables.records.ReadingsRecord;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;
import org.tankrounds.testing.TestClock;

/** A filled log sheet, typed in on one page; today is Tuesday 13 January 2026, 9:00 at the school. */
final class MonthPageIT {
    private static final TestApp APP = TestApp.shared();

    private final Cast cast = Cast.add(APP.transactions(), "Months");
    private final String path = "/tanks/" + cast.tankA().code() + "/month";
    private final Browserless teacher = APP.signedIn(cast.teacherA());

    @Test
    void aWholeMonth_isStoredAtOnce_andCounted() {
        Map<String, String> typed = new TreeMap<>();
        for (int day = 1; day <= 31; day++) {
            typed.put("d%02d_temperature".formatted(day), "52");
            typed.put("d%02d_nitrite".formatted(day), "0,1");
        }
        typed.putAll(Map.of("d05_deaths", "2", "d05_feed", "2.5 g", "d05_by", "period 3", "d05_note", "cloudy",
                "usual_time", "11:15"));

        Answer saved = send("2025-12", typed);

        assertThat(saved.status()).isEqualTo(303);
        assertThat(saved.location()).isEqualTo(path + "?month=2025-12&saved=31");
        Answer page = teacher.get(saved.location());
        assertThat(page.body()).contains("31 readings are stored. Your coordinator sees them.").contains("in: 11:15");
        List<ReadingsRecord> readings = readings();
        assertThat(readings).hasSize(31).allSatisfy(reading -> {
            assertThat(reading.getChannel()).isEqualTo("page");
            assertThat(reading.getPersonId()).isEqualTo(cast.teacherA().personId());
        });
        ReadingsRecord fifth = readings.get(4);
        assertThat(fifth.getMeasuredAt()).isEqualTo(Instant.parse("2025-12-05T16:15:00Z"));
        assertThat(fifth.getByLabel()).isEqualTo("period 3");
        assertThat(fifth.getNote()).isEqualTo("cloudy");
        // What the card can tell apart at 0.1: half of 0.1 mg/L as NO2, 0.304457 of that as N (atomic masses).
        assertThat(measured("nitrite").getHalfStep()).isCloseTo(0.05f * 0.304457f, within(1e-7f));
    }

    @Test
    void oneWrongRow_storesNothing_isToldBesideIt_andNothingTypedIsLost() {
        Answer answer = send("2026-01", Map.of("d02_temperature", "52", "d03_temperature", "fifty", "d04_deaths", "2.5",
                "d05_note", "the filter hums"));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("<title>Error: ", "href=\"#d03_temperature\"", "href=\"#d04_deaths\"",
                "id=\"d03_said\"", "aria-describedby=\"d03_said\"", "value=\"fifty\"", "value=\"2.5\"", "value=\"52\"",
                "value=\"the filter hums\"");
        assertThat(text(answer)).contains("Sat 3: Temperature: “fifty” cannot be read",
                "Sun 4: Fish found dead is a whole number");
        assertThat(readings()).isEmpty();
    }

    @Test
    void unlikelyValues_areAskedBackWithTheirDay_andOnceAnsweredStored() {
        Map<String, String> typed = form("2026-01", Map.of("d02_temperature", "80", "d03_temperature", "52"));

        Answer asked = teacher.postForm(path, typed);
        assertThat(asked.status()).isEqualTo(422);
        assertThat(text(asked)).contains("Is that right? Fri 2: You typed 80 °F for temperature",
                "Answer and keep these readings");
        assertThat(readings()).isEmpty();

        typed.put("d02_sure_temperature", "yes 80 [degF]");
        assertThat(teacher.postForm(path, typed).status()).isEqualTo(303);
        assertThat(readings()).hasSize(2).first().satisfies(
                reading -> assertThat(reading.getFlags()).containsExactly("confirmed:temperature"));
    }

    @Test
    void answersGiven_goAlong_whileOthersAreAsked() {
        Map<String, String> typed = form("2026-01", Map.of("d02_temperature", "80", "d03_temperature", "81"));
        typed.put("d02_sure_temperature", "yes 80 [degF]");

        assertThat(teacher.postForm(path, typed).body())
                .contains("name=\"d02_sure_temperature\" value=\"yes 80 [degF]\"").doesNotContain("You typed 80")
                .contains("You typed 81");
    }

    @Test
    void theOtherScale_isOfferedForARow_andStaysWithIt() {
        Map<String, String> typed = form("2026-01", Map.of("d02_temperature", "52", "d03_temperature", "x"));
        typed.put("temperature_unit", "Cel");
        typed.put("d02_sure_temperature", "swap 52 [degF]");

        assertThat(teacher.postForm(path, typed).body()).as("still wrong elsewhere").contains("value=\"52 °F\"");

        typed.put("d03_temperature", "");
        assertThat(teacher.postForm(path, typed).status()).isEqualTo(303);
        // (52 - 32) / 1.8, by definition of the Fahrenheit scale
        assertThat(measured("temperature").getValue()).isEqualTo(11.111111f);
    }

    @Test
    void sentTwice_storesOnce_andWhatChangedInBetweenIsTold() {
        Map<String, String> typed = form("2026-01", Map.of("d02_temperature", "52", "d03_ph", "7.2"));
        Answer first = teacher.postForm(path, typed);
        Answer again = teacher.postForm(path, typed);
        assertThat(again.status()).isEqualTo(303);
        assertThat(again.location()).isEqualTo(first.location());

        typed.put("d02_temperature", "53");
        typed.put("d04_temperature", "51");
        Answer other = teacher.postForm(path, typed);
        assertThat(other.status()).isEqualTo(422);
        assertThat(text(other)).contains("Fri 2: This sheet has stored another reading of that day before.");
        assertThat(other.body()).contains("value=\"53\"", "value=\"51\"");
        assertThat(readings()).hasSize(2);

        typed.put("d02_temperature", "");
        assertThat(teacher.postForm(path, typed).status()).as("the rest is taken").isEqualTo(303);
        assertThat(readings()).hasSize(3);
    }

    /** Twice the same sheet would double each reading, and the dead in the season's count. */
    @Test
    void aSheetTypedAgain_isAskedAbout_andWhatIsInAlreadyIsLeftOut() {
        Map<String, String> rows = Map.of("d02_temperature", "52", "d02_deaths", "2", "d03_ph", "7.2");
        send("2026-01", rows);

        Map<String, String> typed = form("2026-01", rows);
        typed.put("d04_temperature", "51");
        Answer asked = teacher.postForm(path, typed);

        assertThat(asked.status()).isEqualTo(422);
        assertThat(text(asked)).contains("2 days seem to be in already",
                "10:00: temperature 52 °F, fish found dead 2 the same",
                "Nothing is stored yet, and all that you typed is still below.");
        assertThat(asked.body()).containsPattern("value=\"leave\"[^>]*checked")
                .contains("value=\"51\"", "value=\"7.2\"");
        assertThat(readings()).hasSize(2);

        typed.putAll(Map.of("again", "leave", "again_asked", value("again_asked", asked.body())));
        Answer saved = teacher.postForm(path, typed);
        assertThat(saved.status()).isEqualTo(303);
        assertThat(text(teacher.get(saved.location())))
                .contains("1 reading is stored. Your coordinator sees it. 2 days were in already and were left out.");
        assertThat(readings()).hasSize(3);
        assertThat(teacher.postForm(path, typed).location()).as("sent twice").isEqualTo(saved.location());
        assertThat(readings()).hasSize(3);
    }

    @Test
    void otherDeadOfADay_areAskedAbout_andKeptOnlyIfSomebodySaysSo() {
        send("2026-01", Map.of("d02_temperature", "52", "d02_deaths", "2"));
        Map<String, String> typed = form("2026-01", Map.of("d02_deaths", "1"));
        Answer asked = teacher.postForm(path, typed);
        assertThat(text(asked)).contains("10:00: temperature 52 °F, fish found dead 2 fish found dead 1");

        typed.putAll(Map.of("again", "keep", "again_asked", value("again_asked", asked.body())));
        assertThat(teacher.postForm(path, typed).location()).endsWith("&saved=1");
        assertThat(readings()).hasSize(2);
    }

    /** Somebody has told of the dead in the morning, and the sheet has the same dead beside what nobody has put in. */
    @Test
    void rowWithDeadThatAreCountedAlready_isKeptWithoutThem() {
        send("2026-01", Map.of("d02_deaths", "1"));
        Map<String, String> typed = form("2026-01",
                Map.of("d02_temperature", "51", "d02_deaths", "1", "d02_note", "filter cleaned"));
        Answer asked = teacher.postForm(path, typed);
        assertThat(text(asked)).contains("1 day seems to be in already");

        typed.putAll(Map.of("again", "leave", "again_asked", value("again_asked", asked.body())));
        Answer saved = teacher.postForm(path, typed);
        assertThat(saved.location()).endsWith("&saved=1");
        assertThat(teacher.postForm(path, typed).location()).as("sent twice").isEqualTo(saved.location());
        assertThat(readings()).hasSize(2);
        String all = teacher.get("/tanks/" + cast.tankA().code() + "/readings.csv").body();
        assertThat(all).contains("filter cleaned", ",51,").containsOnlyOnce(",deaths,");
    }

    @Test
    void anAnswer_countsForTheDaysThatItWasAskedAbout() {
        send("2026-01", Map.of("d02_ph", "7.2", "d03_ph", "7.2"));
        Map<String, String> typed = form("2026-01", Map.of("d02_ph", "7.2"));
        typed.putAll(Map.of("again", "leave", "again_asked", "2026-01-02", "d03_ph", "7.2"));

        assertThat(text(teacher.postForm(path, typed))).contains("2 days seem to be in already");

        typed.put("d03_ph", "");
        assertThat(text(teacher.get(teacher.postForm(path, typed).location())))
                .contains("Nothing new was stored. 1 day was in already and was left out.");
    }

    @Test
    void daysToCome_areClosed_andRefused() {
        String body = teacher.get(path + "?month=2026-01").body();
        assertThat(body.split("data-day=\"open\"")).hasSize(1 + 13);
        assertThat(body.split("data-day=\"closed\"")).hasSize(1 + 18);
        assertThat(body).containsPattern("id=\"d14_temperature\"[^>]*disabled");

        Answer answer = send("2026-01", Map.of("d14_temperature", "52"));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(text(answer)).contains("Wed 14: That day is still to come.");
        assertThat(text(teacher.get(path + "?month=2026-02"))).contains("That month is still to come")
                .doesNotContain("Keep these readings");
        assertThat(readings()).isEmpty();
    }

    @Test
    void today_beforeTheUsualTime_isNow() {
        assertThat(send("2026-01", Map.of("d13_temperature", "52")).status()).isEqualTo(303);
        assertThat(readings().get(0).getMeasuredAt()).isEqualTo(TestClock.START);
        assertThat(readings().get(0).getFlags()).isEmpty();
    }

    @Test
    void whatIsThereAlready_isShown_andStaysUnlessSomethingIsTyped() {
        teacher.get(path);
        send("2026-01", Map.of("d02_temperature", "52", "usual_time", "9:30"));

        assertThat(text(teacher.get(path + "?month=2026-01"))).contains("Fri 2 in: 9:30");
        send("2026-01", Map.of("d03_temperature", "52"));
        assertThat(readings()).hasSize(2);
        send("2026-01", Map.of("d02_ph", "7.2"));
        assertThat(text(teacher.get(path + "?month=2026-01"))).contains("Fri 2 in: 2 readings");
    }

    @Test
    void daysOfAProbe_areToldAsIts_withOrWithoutALabel() {
        for (int hour = 10; hour < 16; hour++) {
            probe("2026-01-02T" + hour + ":00:00-05:00", "");
            probe("2026-01-03T" + hour + ":00:00-05:00", ", \"by\": \"probe 2\"");
        }
        probe("2026-01-04T10:00:00-05:00", ", \"by\": \"custodian\"");
        probe("2026-01-05T10:00:00-05:00", ", \"by\": \"probe 2\"");

        assertThat(text(teacher.get(path + "?month=2026-01"))).contains("Fri 2 probe: 6 readings",
                "Sat 3 probe: 6 readings", "Sun 4 in: 10:00", "Mon 5 probe: 1 reading");
    }

    private void probe(String at, String more) {
        Browserless probe = APP.bearer(cast.tankA().token()).header("Idempotency-Key", UUID.randomUUID().toString());
        String value = "{\"analyte\": \"temperature\", \"value\": 11, \"unit\": \"Cel\"}";
        assertThat(probe.postJson("/api/v1/tanks/" + cast.tankA().code() + "/readings", "{\"measuredAt\": \"" + at
                + "\", \"values\": [" + value + "]" + more + "}").status()).isEqualTo(201);
    }

    @ParameterizedTest
    @CsvSource({"'',10:00,Type at least one number", "52,noon,such as 10:00", "52,25:00,such as 10:00"})
    void anEmptySheet_orOneWithoutATime_isTold(String temperature, String time, String sentence) {
        Answer answer = send("2026-01", Map.of("d02_temperature", temperature, "usual_time", time));

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains(sentence).contains("value=\"" + temperature + "\"");
        assertThat(readings()).isEmpty();
    }

    @Test
    void whatLooksLikeAName_isAskedAboutOnce() {
        assertThat(text(send("2026-01", Map.of("d02_note", "as Maria Lopez saw it"))))
                .contains("Fri 2: The note holds what looks like a person’s name, “Maria Lopez”");
        assertThat(readings()).isEmpty();
    }

    @Test
    void aClassCard_typesNoMonthsIn_andIsShownNoWayThere() {
        Browserless room = APP.browser();
        room.comeIn(APP.newCard(cast, cast.tankA()));

        assertThat(room.get(path).status()).isEqualTo(404);
        for (String page : List.of("/log", "/class", "")) {
            String address = "/tanks/" + cast.tankA().code() + page;
            assertThat(room.get(address).body()).contains("/sheet\"", "/what-to-do\"").doesNotContain("/month\"");
            assertThat(teacher.get(address).body()).contains("/sheet\"", "/what-to-do\"", "/month\"");
        }
    }

    private Answer send(String month, Map<String, String> typed) {
        return teacher.postForm(path, form(month, typed));
    }

    /** The form as it stands on the page, with what is typed into it. */
    private Map<String, String> form(String month, Map<String, String> typed) {
        Answer page = teacher.get(path + "?month=" + month);
        Map<String, String> form = new TreeMap<>(Map.of("month", month, "usual_time", "10:00",
                "temperature_unit", "[degF]", "submission_id", value("submission_id", page.body()),
                "form_token", teacher.formToken()));
        form.putAll(typed);
        return form;
    }

    private static String value(String name, String body) {
        Matcher field = Pattern.compile("name=\"" + name + "\" value=\"([^\"]+)\"").matcher(body);
        assertThat(field.find()).isTrue();
        return field.group(1);
    }

    private List<ReadingsRecord> readings() {
        return APP.transactions().inChapter(cast.chapterId(),
                tx -> tx.selectFrom(READINGS).orderBy(READINGS.MEASURED_AT).fetch());
    }

    private MeasurementsRecord measured(String analyte) {
        return APP.transactions().inChapter(cast.chapterId(), tx -> tx.selectFrom(MEASUREMENTS)
                .where(MEASUREMENTS.ANALYTE.eq(analyte)).limit(1).fetchSingle());
    }

    private static String text(Answer answer) {
        return answer.body().replaceAll("(?s)<script.*?</script>|<[^>]+>", " ").replaceAll("\\s+", " ");
    }
}
