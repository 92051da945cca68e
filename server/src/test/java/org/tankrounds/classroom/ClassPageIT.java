package org.tankrounds.classroom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.Cast.TankOfCast;
import org.tankrounds.testing.TestApp;

/** What a class is told of its tank, and what it ticks. */
final class ClassPageIT {
    private static final TestApp APP = TestApp.shared();

    private final Cast cast = Cast.add(APP.transactions(), "Pages of a class");
    private final String tank = "/tanks/" + cast.tankA().code();
    private final Browserless teacher = APP.signedIn(cast.teacherA());
    private final Browserless coordinator = APP.signedIn(cast.coordinator());

    @Test
    void aClassWithItsCard_readsWhatEachNumberMeans() {
        post("temperature", 11.2, "Cel");
        post("ph", 7.8, "[pH]");
        post("total_ammonia", 0.2, "mg/L\", \"as\": \"N");
        post("nitrite", 0.5, "mg/L\", \"as\": \"N");
        Browserless room = APP.browser();
        room.comeIn(APP.newCard(cast, cast.tankA()));

        String text = text(room.get(tank + "/class"));

        assertThat(text).contains("Temperature 52.2 °F Cool, just as trout need it.")
                // US EPA 2013, table of un-ionised ammonia at 12 °C and pH 7.8: 1.4 %; 11.2 °C a little less
                .containsPattern("Ammonia 0\\.2 mg/L as N Only 1 part in (7[0-9]|8[0-2]) of it is the harmful kind")
                // EIFAC 1984: 0.15 mg N/L at 5 mg/L of chloride, which is taken where nobody has said
                .contains("Nitrite 1.6 mg/L as NO₂ Too much: the blood can’t carry enough oxygen. Tell an adult now.")
                .contains("Nitrite is beyond what the fish bear: tell an adult")
                .doesNotContain("Ask for a reading");
    }

    @Test
    void whatIsOld_isNotCalledGood() {
        post("temperature", 11.2, "Cel", "2026-01-03T14:00:00Z");

        assertThat(text(teacher.get(tank + "/class"))).contains("Too long ago to tell. Measure it again.")
                .contains("Nobody has measured since").containsPattern("Measure: [a-zH]+\\.");
    }

    /** Neither good water nor a ration may stand first while fish gasp. */
    @Test
    void fishInTrouble_comeFirst_withNoFeedAndSomebodyToTell() {
        goodWater();
        teacher.get(tank + "/fish");
        teacher.post(tank + "/fish/looks", "submission_id", UUID.randomUUID().toString(),
                "breathing", "gasping", "swimming", "rolling");

        assertThat(text(teacher.get(tank + "/class")))
                .contains("The fish are in trouble: tell an adult now")
                .contains("Seen today 9:00: rolling on their side, gasping at the surface.")
                .contains("Tell an adult now. More air and no feed.")
                .contains("Feed today None today Fish in trouble need air, not feed.")
                .doesNotContain("What was measured is good").doesNotContain("Nothing to do now");
        assertThat(text(teacher.get(tank))).contains("Room 12: fish rolling on their side, gasping at the surface")
                .contains("What to do More air and no feed, now.")
                .doesNotContain("nothing needed");
        assertThat(text(coordinator.get("/rounds")))
                .contains("Call Alderwhistle School now: the class saw fish in trouble");
    }

    @Test
    void fishInTrouble_areCalledAbout_beforeAnybodyDrivesSomewhereElse() {
        goodWater();
        teacher.get(tank + "/fish");
        teacher.post(tank + "/fish/looks", "submission_id", UUID.randomUUID().toString(), "breathing", "gasping");
        for (String day : new String[] {"11", "12", "13"}) {
            post(cast.tankB(), "temperature", 22, "Cel", "2026-01-" + day + "T13:00:00Z");
        }

        assertThat(text(coordinator.get("/rounds"))).contains("Call Alderwhistle School now: "
                + "the class saw fish in trouble. Then start at Birchthimble School");

        post("temperature", 19, "Cel", "2026-01-13T13:10:00Z");
        post("temperature", 19.2, "Cel", "2026-01-13T13:50:00Z");
        assertThat(text(coordinator.get("/rounds"))).as("where somebody is to go today too").contains(
                "Call Alderwhistle School now: the class saw fish in trouble. Then start at ");
    }

    @Test
    void twoOddities_areNotCalledGood() {
        goodWater();
        teacher.get(tank + "/fish");
        teacher.post(tank + "/fish/looks", "submission_id", UUID.randomUUID().toString(),
                "breathing", "fast", "colour", "dark");

        assertThat(text(teacher.get(tank + "/class"))).contains("The fish are not as usual: look again")
                .contains("Look at the fish again before you go home.").doesNotContain("What was measured is good");
        assertThat(text(teacher.get(tank))).contains("Room 12: fish breathing fast, darker than usual");
    }

    @Test
    void fewDead_areTold_andManyComeFirst() {
        goodWater();
        post("deaths", 1, "1", "2026-01-11T13:00:00Z");
        assertThat(text(teacher.get(tank + "/class"))).contains("What was measured is good for the fish")
                .contains("1 found dead in the last 3 days.");

        post("deaths", 3, "1", "2026-01-12T13:00:00Z");
        post("deaths", 4, "1", "2026-01-13T13:10:00Z");

        assertThat(text(teacher.get(tank + "/class"))).contains("Many have died: tell an adult now")
                .contains("8 found dead in the last 3 days.").contains("Feed today None today")
                .doesNotContain("What was measured is good").doesNotContain("Nothing to do now");
    }

    /** The forecast waits for another that agrees; so does what a class is told. */
    @Test
    void aNumberThatDoesNotFit_isNoGoodNews() {
        for (String day : new String[] {"06", "08", "10", "11", "12"}) {
            post("nitrite", 1, "mg/L\", \"as\": \"N", "2026-01-" + day + "T13:00:00Z");
        }
        // As a form has it that is sent without a time, and once more a moment later.
        post("nitrite", 0.01, "mg/L\", \"as\": \"N", "2026-01-13T13:00:00.924575Z");
        post("nitrite", 0.01, "mg/L\", \"as\": \"N", "2026-01-13T13:02:00.1Z");

        assertThat(text(teacher.get(tank))).contains("Set aside until another agrees");
        assertThat(text(teacher.get(tank + "/class")))
                .contains("Nitrite is beyond what the fish bear: tell an adult")
                .contains("Not like what was read before, so it may be a slip.")
                .doesNotContain("bacteria eats it all").contains("Nitrite 3.3 mg/L as NO₂ The second");
    }

    /** A script may send what a form asks back about. */
    @Test
    void anUnlikelyNumberBeyondALimit_isNotKeptFromTheClass() {
        goodWater();
        post("ph", 5.2, "[pH]", "2026-01-13T13:30:00Z");

        assertThat(text(teacher.get(tank + "/class"))).contains("pH 5.2 Far from what was read before")
                .contains("pH is beyond what the fish bear: tell an adult");
    }

    @Test
    void aNumberThatDoesNotFitCalmWater_isToBeMeasuredAgain() {
        goodWater();
        post("temperature", 3, "Cel", "2026-01-13T13:30:00.5Z");

        assertThat(text(teacher.get(tank + "/class"))).contains("A number does not fit those before: measure it again")
                .contains("Temperature 37.4 °F Not like what was read before")
                .doesNotContain("What was measured is good");
    }

    @Test
    void aColdNumberInATankThatWarms_isNoGoodNews_andNoReasonToFeed() {
        for (String at : new String[] {"02T13", "04T13", "06T13", "08T13", "10T13", "11T13"}) {
            post("temperature", 10, "Cel", "2026-01-" + at + ":00:00Z");
        }
        post("temperature", 14, "Cel", "2026-01-12T13:00:00Z");
        post("temperature", 16, "Cel", "2026-01-12T23:00:00Z");
        post("temperature", 17.5, "Cel", "2026-01-13T09:00:00Z");
        post("temperature", 10.5, "Cel", "2026-01-13T13:30:00Z");

        assertThat(text(teacher.get(tank + "/class")))
                .contains("The fish need care today: see what to do")
                .contains("Not like what was read before, so it may be a slip.")
                .doesNotContain("just as trout need it").doesNotContain("g of crumble");
    }

    private void goodWater() {
        for (String day : new String[] {"06", "08", "10", "12", "13"}) {
            post("temperature", 10, "Cel", "2026-01-" + day + "T13:00:00Z");
            post("ph", 7.4, "[pH]", "2026-01-" + day + "T13:00:00Z");
            post("total_ammonia", 0, "mg/L\", \"as\": \"N", "2026-01-" + day + "T13:00:00Z");
            post("nitrite", 0, "mg/L\", \"as\": \"N", "2026-01-" + day + "T13:00:00Z");
        }
    }

    @Test
    void anUntouchedTank_saysWhereToBegin() {
        assertThat(text(teacher.get(tank + "/class"))).contains("Nobody has measured this tank yet")
                .contains("Begin with the temperature.");
    }

    /** Leitritz and Lewis 1976: 4.3 % at 50 °F for 1 to 2 inches; a release tank gets 1 to 3 % (common practice). */
    @Test
    void feed_followsTheFishThatWereMeasured() {
        post("temperature", 10, "Cel");
        for (String day : new String[] {"06", "08", "10", "12"}) {
            post("total_ammonia", 0, "mg/L\", \"as\": \"N", "2026-01-" + day + "T13:00:00Z");
            post("nitrite", 0, "mg/L\", \"as\": \"N", "2026-01-" + day + "T13:00:00Z");
        }
        assertThat(text(teacher.get(tank + "/class"))).contains("nobody has measured them");

        teacher.get(tank + "/fish");
        teacher.post(tank + "/fish/samples", "submission_id", UUID.randomUUID().toString(), "fish", "10",
                "mean_length_mm", "45", "total_weight_g", "10");

        String text = text(teacher.get(tank + "/class"));
        assertThat(text).contains("of about 1 g and 45 mm (measured today 9:00, grown since)")
                .contains("g of crumble no. 2");
        assertThat(number("([\\d.]+) g of crumble", text)).isCloseTo(200 * 1.0 * 0.02, within(0.1));
        assertThat(number("fastest on ([\\d.]+) g", text)).isCloseTo(200 * 1.0 * 0.043, within(0.1));
    }

    @Test
    void impossibleFish_areAskedAbout_andNothingIsLost() {
        teacher.get(tank + "/fish");

        Answer answer = teacher.post(tank + "/fish/samples", "fish", "10", "mean_length_mm", "4.5",
                "total_weight_g", "10");
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("in millimetres, from 10 to 400").contains("value=\"4.5\"");

        answer = teacher.post(tank + "/fish/samples", "fish", "10", "mean_length_mm", "45", "total_weight_g", "1");
        assertThat(answer.status()).isEqualTo(422);
        assertThat(text(answer)).contains("10 fish of 45 mm weigh about 10 g together.");

        answer = teacher.post(tank + "/fish/samples", "fish", "many", "mean_length_mm", "1 2", "total_weight_g", "-3");
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("value=\"many\"").contains("value=\"-3\"");
        assertThat(text(teacher.get(tank + "/fish"))).doesNotContain("Seen and measured before");
    }

    @Test
    void fishFarTooLongForTheirAge_areAskedAboutOnce() {
        teacher.get(tank + "/fish");

        Answer asked = teacher.post(tank + "/fish/samples", "fish", "10", "mean_length_mm", "90", "total_weight_g", "");
        assertThat(asked.status()).isEqualTo(422);
        assertThat(text(asked)).contains("If 90 mm is right, keep it once more");
        assertThat(asked.body()).contains("name=\"asked_length\" value=\"90\"");
        assertThat(text(teacher.get(tank + "/fish"))).doesNotContain("90 mm on average");

        assertThat(teacher.post(tank + "/fish/samples", "fish", "10", "mean_length_mm", "91", "total_weight_g", "",
                "asked_length", "90").status()).as("another slip").isEqualTo(422);
        teacher.post(tank + "/fish/samples", "fish", "10", "mean_length_mm", "90", "total_weight_g", "",
                "asked_length", "90");
        assertThat(text(teacher.get(tank + "/fish"))).contains("10 fish, 90 mm on average");
    }

    @Test
    void whatTheCoordinatorAsks_isSeenTickedAndTakenBack() {
        coordinator.get(tank + "/class");
        coordinator.post(tank + "/tasks", "task", "Read the pH twice on Monday");

        String body = teacher.get(tank + "/class").body();
        assertThat(body).contains("Read the pH twice on Monday").contains("Asked by Cora Weirthimble, today 9:00");
        assertThat(body).doesNotContain("Ask the class</button>");
        String done = address(body, "/tasks/\\d+/done");
        assertThat(teacher.post(done).status()).isEqualTo(303);
        assertThat(teacher.post(done).location()).as("a double click").endsWith("saved=changed");

        assertThat(text(coordinator.get(tank))).contains("Done today 9:00: Read the pH twice on Monday");
        body = teacher.get(tank + "/class").body();
        assertThat(body).doesNotContain("/done\"").contains("Done lately");
        teacher.post(address(body, "/tasks/\\d+/undone"));
        assertThat(teacher.get(tank + "/class").body()).contains("/done\"");
        coordinator.get(tank + "/class");
        coordinator.post(done.replace("/done", "/dropped"));
        assertThat(teacher.get(tank + "/class").body()).doesNotContain("Read the pH twice");
    }

    @Test
    void askingNothing_isRefusedWithAWord() {
        coordinator.get(tank + "/class");

        Answer answer = coordinator.post(tank + "/tasks", "task", " ");

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("Write in a few words what the class should do");
        assertThat(coordinator.post(tank + "/tasks", "task", "x".repeat(501)).status()).isEqualTo(422);
    }

    @Test
    void advice_isTickedOnce_andAWaterChangeIsPutInAsAReading() {
        for (String day : new String[] {"06", "08", "10", "12"}) {
            post("nitrite", 1, "mg/L\", \"as\": \"N", "2026-01-" + day + "T13:00:00Z");
            post("total_ammonia", 2, "mg/L\", \"as\": \"N", "2026-01-" + day + "T13:00:00Z");
            post("ph", 7.8, "[pH]", "2026-01-" + day + "T13:00:00Z");
        }
        String body = teacher.get(tank + "/class").body();
        assertThat(body).containsPattern("/log\\?water_change=\\d+\"");
        String salt = address(body, "/advice/salt/done");

        teacher.post(salt);
        teacher.post(salt);

        body = teacher.get(tank + "/class").body();
        assertThat(body).doesNotContain("/advice/salt/done");
        assertThat(body.split("/undone\"", -1)).as("one deed").hasSize(2);
        assertThat(text(coordinator.get(tank))).containsPattern("Done today 9:00: Add [\\d.]+ g of plain salt\\.");
        assertThat(teacher.get(tank + "/log?water_change=30").body()).containsPattern(
                "name=\"water_change\"[^>]*value=\"30\"|value=\"30\"[^>]*name=\"water_change\"");
        assertThat(teacher.post(tank + "/advice/nothing_such/done").status()).isEqualTo(404);
        assertThat(teacher.post(tank + "/advice/thiosulfate/done").location()).endsWith("saved=changed");
    }

    private void post(String analyte, double value, String unit) {
        post(analyte, value, unit, "2026-01-13T13:00:00Z");
    }

    private void post(String analyte, double value, String unit, String at) {
        post(cast.tankA(), analyte, value, unit, at);
    }

    private static void post(TankOfCast to, String analyte, double value, String unit, String at) {
        Answer answer = APP.bearer(to.token()).header("Idempotency-Key", "\"" + UUID.randomUUID() + "\"")
                .postJson("/api/v1/tanks/" + to.code() + "/readings", "{\"measuredAt\": \"" + at
                        + "\", \"values\": [{\"analyte\": \"" + analyte + "\", \"value\": " + value + ", \"unit\": \""
                        + unit + "\"}]}");
        assertThat(answer.status()).as(answer.body()).isEqualTo(201);
    }

    private String address(String body, String pattern) {
        Matcher found = Pattern.compile(Pattern.quote(tank) + pattern).matcher(body);
        assertThat(found.find()).as("an address like " + pattern).isTrue();
        return found.group();
    }

    private static double number(String pattern, String text) {
        Matcher found = Pattern.compile(pattern).matcher(text);
        assertThat(found.find()).as(pattern + " in " + text).isTrue();
        return Double.parseDouble(found.group(1));
    }

    private static String text(Answer answer) {
        return answer.body().replaceAll("<[^>]*>", " ").replace('\u00a0', ' ').replaceAll("\\s+", " ");
    }
}
