package org.tankrounds.breaks;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;

/** Who looks in while school is out: planned by the class, told on the board. The clock stands at Tue 13 Jan 2026. */
final class BreaksIT {
    private static final TestApp APP = TestApp.shared();
    private static final String NAME = "Long weekend";

    private final Cast cast = Cast.add(APP.transactions(), "Breaks");
    private final String breaks = "/tanks/" + cast.tankA().code() + "/breaks";
    private final Browserless teacher = APP.signedIn(cast.teacherA());
    private final Browserless coordinator = APP.signedIn(cast.coordinator());

    @Test
    void daysThatNobodyHasTaken_areOnTheBoard_untilSomebodyHas() {
        add("2026-01-16", "2026-01-19");
        assertThat(coordinator.get("/rounds").body())
                .contains("Long weekend begins Fri 16 Jan. Nobody yet on Fri 16 Jan,"
                        + " Sat 17 Jan, Sun 18 Jan and 1 day more.");

        plan("2026-01-16", "custodian", "2026-01-18", "mentor");
        assertThat(coordinator.get("/rounds").body())
                .contains("Long weekend begins Fri 16 Jan. Nobody yet on Sat 17 Jan, Mon 19 Jan.");
        assertThat(teacher.get("/tanks/" + cast.tankA().code() + "/class").body())
                .contains("Nobody yet on Sat 17 Jan, Mon 19 Jan.");

        plan("2026-01-16", "custodian", "2026-01-18", "mentor", "others", "school office");
        assertThat(teacher.get(breaks).body()).contains("Long weekend: every day has somebody")
                .contains("value=\"school office\"");
        assertThat(coordinator.get("/rounds").body()).doesNotContain("Long weekend");
    }

    @Test
    void onTheDay_whoIsToLookIn_isTold_untilTheLookIsThere() {
        add("2026-01-13", "2026-01-14");
        plan("2026-01-13", "custodian", "2026-01-14", "mentor");
        assertThat(coordinator.get("/rounds").body())
                .contains("Long weekend until Wed 14 Jan: custodian looks in today.");
        assertThat(teacher.get(breaks).body()).contains("not yet");

        lookedAllWell();

        assertThat(coordinator.get("/rounds").body()).doesNotContain("looks in today");
        assertThat(teacher.get(breaks).body()).contains(">looked<").doesNotContain("not yet");
    }

    @Test
    void lookThatDidNotCome_isAskedForOnTheBoard() {
        teacher.get("/tanks/" + cast.tankA().code() + "/log");
        add("2026-01-12", "2026-01-16");
        plan("2026-01-12", "custodian", "2026-01-14", "mentor");

        assertThat(coordinator.get("/rounds").body())
                .contains("Long weekend: nobody looked in on Mon 12 Jan (custodian).");
        assertThat(teacher.get(breaks).body()).contains("Long weekend: nobody looked in on Mon 12 Jan")
                .contains("nobody looked<");

        lookedAllWell();
        assertThat(coordinator.get("/rounds").body()).doesNotContain("nobody looked in");
    }

    @Test
    void lookedAllWell_isAReadingWithNoneDead() {
        lookedAllWell();

        assertThat(teacher.get("/tanks/" + cast.tankA().code()).body()).contains("fish found dead 0")
                .contains("last reading today 9:00");
    }

    /** As RFC 5545 has it: lines of about 75 octets at most (3.1), text escaped (3.3.11), a UID and a stamp (3.6.1). */
    @Test
    void calendarFile_hasEachDayThatSomebodyTook_andRemindsAtEight() {
        add("2026-01-16", "2026-01-19");
        plan("2026-01-16", "custodian, a; b", "2026-01-18", "mentor");

        String file = teacher.get(breaks + ".ics").body();

        assertThat(file).startsWith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\n").endsWith("END:VCALENDAR\r\n");
        assertThat(file.split("\r\n")).allSatisfy(
                line -> assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75));
        String[] events = file.replace("\r\n ", "").split("BEGIN:VEVENT");
        assertThat(events).hasSize(3);
        assertEvent(events[1], "20260116", "custodian\\, a\\; b");
        assertEvent(events[2], "20260118", "mentor");
    }

    @Test
    void calendarFile_inSpanish_hasNoLineOfMoreThan75Octets() {
        add("2026-01-16", "2026-01-19");
        plan("2026-01-16", "señora de la limpieza, o quien esté en recepción ñandú");
        teacher.post("/account/speech", "language", "es", "temperature_unit", "Cel");

        String file = teacher.get(breaks + ".ics").body();
        assertThat(file.replace("\r\n ", "")).contains("truchas");
        assertThat(file.split("\r\n")).allSatisfy(
                line -> assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75));
    }

    /** RFC 5545 3.6: a calendar has at least one component, so one without a day is none. */
    @Test
    void calendarFile_ofNobodysDays_isNotThere_andSaysWhatToDo() {
        add("2026-01-16", "2026-01-19");

        Answer answer = teacher.get(breaks + ".ics");

        assertThat(answer.status()).isEqualTo(404);
        assertThat(answer.body()).contains("Put somebody on a day of the plan first.");
        assertThat(teacher.get(breaks).body()).doesNotContain(".ics");
        plan("2026-01-16", "custodian");
        assertThat(teacher.get(breaks).body()).contains(".ics\"");
    }

    @Test
    void lookAtTheFish_orAReadingOfSomebodysScript_isALook() {
        add("2026-01-13", "2026-01-14");
        plan("2026-01-13", "custodian");
        assertThat(teacher.get(breaks).body()).contains("not yet");
        post("{\"analyte\": \"temperature\", \"value\": 11, \"unit\": \"Cel\"}", "");
        assertThat(teacher.get(breaks).body()).as("a probe's").contains("not yet");
        for (int i = 0; i < 6; i++) {
            post("{\"analyte\": \"temperature\", \"value\": 11, \"unit\": \"Cel\"}", ", \"by\": \"probe 2\"");
        }
        assertThat(teacher.get(breaks).body()).as("a probe with a label").contains("not yet");

        post("{\"analyte\": \"temperature\", \"value\": 11, \"unit\": \"Cel\"}", ", \"by\": \"custodian\"");
        assertThat(teacher.get(breaks).body()).contains(">looked<").doesNotContain("not yet");
    }

    @Test
    void cardReadByAScript_orFishThatWereLookedAt_areLooks() {
        add("2026-01-13", "2026-01-14");
        plan("2026-01-13", "custodian");
        String fish = "/tanks/" + cast.tankA().code() + "/fish";
        teacher.get(fish);
        teacher.post(fish + "/looks", "submission_id", UUID.randomUUID().toString(), "swimming", "calm");
        assertThat(teacher.get(breaks).body()).contains(">looked<");
        teacher.post(withdrawn(teacher.get(fish).body()));
        assertThat(teacher.get(breaks).body()).contains("not yet");

        post("{\"analyte\": \"nitrite\", \"value\": 0, \"unit\": \"mg/L\", \"as\": \"N\"}", "");
        assertThat(teacher.get(breaks).body()).contains(">looked<");
    }

    private String withdrawn(String body) {
        Matcher found = Pattern.compile("/tanks/\\w+/fish/looks/\\d+/withdrawn").matcher(body);
        assertThat(found.find()).isTrue();
        return found.group();
    }

    private void post(String value, String more) {
        Answer answer = APP.bearer(cast.tankA().token()).header("Idempotency-Key", "\"" + UUID.randomUUID() + "\"")
                .postJson("/api/v1/tanks/" + cast.tankA().code() + "/readings",
                        "{\"measuredAt\": \"2026-01-13T13:00:00Z\", \"values\": [" + value + "]" + more + "}");
        assertThat(answer.status()).as(answer.body()).isEqualTo(201);
    }

    private void assertEvent(String event, String day, String looker) {
        assertThat(event.split("\r\n")).contains("DTSTART;VALUE=DATE:" + day, "DTSTAMP:20260113T140000Z",
                "SUMMARY:Look in on the trout: " + looker, "ACTION:DISPLAY")
                .anyMatch(line -> line.matches("TRIGGER(;RELATED=START)?:PT8H"))
                .anyMatch(line -> line.matches("UID:look-" + cast.tankA().code() + "-.*@tankrounds"));
    }

    @Test
    void daysThatCannotBe_areRefused_andNothingTypedIsLost() {
        add("2026-01-16", "2026-01-19");
        assertRefused("", "2026-02-13", "2026-02-16", "Write what the school calls the break");
        assertRefused("Spring", "2026-02-16", "2026-02-13", "The last day comes before the first, Mon 16 Feb.");
        assertRefused("Spring", "", "2026-02-13", "Choose the first day without lessons.");
        assertRefused("Spring", "2026-02-30", "2026-03-13", "2026-02-30");
        assertRefused("Spring", "2026-02-13", "2026-06-16", "A break can have up to 60 days");
        assertRefused("Spring", "2025-02-13", "2025-02-16", "This break is over already.");
        assertRefused("Spring", "2026-01-19", "2026-01-21",
                "These days overlap with Long weekend, Fri 16 Jan to Mon 19 Jan.");
        assertRefused("Spring", "2036-01-19", "2036-01-21", "Is the year right?");
    }

    @Test
    void wayToReachSomebody_isRefused_andThePlanStandsAsItWas() {
        add("2026-01-16", "2026-01-17");
        Answer refused = plan("2026-01-16", "custodian 555-867-5309", "2026-01-17", "mentor");

        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.body()).contains("tells how to reach somebody").contains("value=\"custodian 555-867-5309\"");
        assertThat(teacher.get(breaks).body()).contains("nobody yet on 2 days");
    }

    @Test
    void personsName_isAskedAboutOnce_andStaysOutOfTheCalendarFile() {
        add("2026-01-16", "2026-01-19");
        Answer asked = plan("2026-01-16", "Wanda", "2026-01-17", "Custodian", "2026-01-18", "mentor Otto Quillmere");
        assertThat(asked.status()).isEqualTo(422);
        assertThat(asked.body()).contains("This looks like a person’s name: Otto Quillmere, Wanda.")
                .contains("a duty such as custodian is enough").contains("value=\"mentor Otto Quillmere\"");
        assertThat(teacher.get(breaks).body()).doesNotContain("Wanda");

        assertThat(plan("2026-01-16", "Wanda", "2026-01-17", "Custodian", "2026-01-18", "mentor Otto Quillmere",
                "sure_lookers", "yes Otto Quillmere, Wanda").status()).isEqualTo(303);
        assertThat(teacher.get(breaks).body()).contains("value=\"Wanda\"");
        assertThat(plan("2026-01-16", "Wanda", "2026-01-17", "Custodian", "2026-01-18", "mentor Otto Quillmere",
                "2026-01-19", "Night staff").status()).as("not asked again").isEqualTo(303);

        String file = teacher.get(breaks + ".ics").body();
        assertThat(file).doesNotContain("Wanda").doesNotContain("Quillmere")
                .contains("SUMMARY:Look in on the trout\r\n")
                .contains("SUMMARY:Look in on the trout: Custodian\r\n")
                .contains("SUMMARY:Look in on the trout: Night staff\r\n");
    }

    @Test
    void planThatSomebodyElseChanged_isNotOverwrittenUnseen() {
        add("2026-01-16", "2026-01-17");
        String shownBefore = shown();
        plan("2026-01-16", "custodian");

        Answer late = teacher.post(breaks + "/" + number(), "shown", shownBefore,
                box("2026-01-16"), "mentor", box("2026-01-17"), "mentor");

        assertThat(late.status()).isEqualTo(409);
        assertThat(late.body()).contains("Fri 16 Jan: now custodian").contains("value=\"mentor\"");
    }

    @Test
    void breakThatWasTakenOut_isGone_andItsNumberOpensNothing() {
        add("2026-01-16", "2026-01-17");
        String number = number();
        teacher.post(breaks + "/" + number + "/dropped");

        assertThat(teacher.get(breaks).body()).contains("No school break is planned yet");
        assertThat(teacher.post(breaks + "/" + number).status()).isEqualTo(404);
        assertThat(teacher.post(breaks + "/no-number").status()).isEqualTo(404);
    }

    private void add(String first, String last) {
        teacher.get(breaks);
        assertThat(teacher.post(breaks, "name", NAME, "first_day", first, "last_day", last).status()).isEqualTo(303);
    }

    private void assertRefused(String name, String first, String last, String sentence) {
        teacher.get(breaks);
        Answer answer = teacher.post(breaks, "name", name, "first_day", first, "last_day", last);
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains(sentence).contains("value=\"" + last + "\"");
    }

    /** @param fields days and who looks in, in pairs */
    private Answer plan(String... fields) {
        String number = number();
        String[] form = new String[fields.length + 2];
        form[0] = "shown";
        form[1] = shown();
        for (int i = 0; i < fields.length; i += 2) {
            form[i + 2] = fields[i].startsWith("sure") ? fields[i]
                    : fields[i].equals("others") ? "others-" + number : box(fields[i]);
            form[i + 3] = fields[i + 1];
        }
        return teacher.post(breaks + "/" + number, form);
    }

    private String box(String day) {
        return "looker-" + number() + "-" + day;
    }

    private String number() {
        return find(Pattern.quote(breaks) + "/(\\d+)\"");
    }

    private String shown() {
        return find("name=\"shown\" value=\"(\\w+)\"");
    }

    private String find(String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(teacher.get(breaks).body());
        assertThat(found.find()).isTrue();
        return found.group(1);
    }

    private void lookedAllWell() {
        String log = "/tanks/" + cast.tankA().code() + "/log";
        Matcher submission = Pattern.compile("name=\"submission_id\" value=\"([^\"]+)\"")
                .matcher(teacher.get(log).body());
        assertThat(submission.find()).isTrue();
        assertThat(teacher.post(log, "submission_id", submission.group(1), "form_version", "2", "all_well", "yes")
                .status()).isEqualTo(303);
    }
}
