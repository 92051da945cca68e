package org.tankrounds.release;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tankrounds.season.SeasonRepository;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;
import org.tankrounds.testing.TestClock;
import org.tankrounds.web.Caller;

/** What is written down at the water: once, by the count's own rules, with a connection or later. */
final class ReleaseDayIT {
    private static final TestApp APP = TestApp.shared();

    private final Cast cast = Cast.add(APP.transactions(), "At the water");
    private final String tank = cast.tankA().code();
    private final Browserless teacher = APP.signedIn(cast.teacherA());
    private String plan;
    private String day;
    private String count;

    @BeforeEach
    void plan() {
        plan = plan(Instant.parse("2026-01-13T15:00:00Z"), load(cast.tankA().tankId(), 60));
        day = plan + "/tanks/" + tank;
        count = "/season/" + cast.season() + "/tanks/" + tank + "/count";
    }

    @Test
    void aRelease_goesIntoTheCount_andStandsInThePlan() {
        assertThat(text(teacher.get(day))).contains("Release from Alderwhistle School, Room 12")
                .contains("60 fish planned, approval P-8").contains("The plan does not say go yet.");
        Answer answer = write("fish", "57", "lengths", "44 47 53", "box_temperature", "11", "stream_temperature", "8.2",
                "tempered_minutes", "40", "kept_small", "2", "kept_sick", "1");
        assertThat(answer.location()).isEqualTo(plan + "?saved=released");

        assertThat(text(teacher.get(plan + "?saved=released"))).contains("Written down, and in the tank's count.")
                .contains("Released: 57 fish at Lower bridge")
                .contains("Tue 13 Jan, 9:00: 57 released; 2 too small; 1 ill or hurt, kept back; box 11.0 °C,"
                        + " stream 8.2 °C; over 40 minutes; 3 measured, 48 mm on average (44 to 53)");
        assertThat(text(teacher.get(count))).contains("Room 12: 143 by count")
                .contains("Released: Lower bridge approval P-8");
        assertThat(text(teacher.get("/release"))).as("no more planned").contains("343 of 400 fish free")
                .doesNotContain("in plans");
    }

    @Test
    void moreThanAreThere_isRefused_inTheWordsOfTheCount_andNothingIsLost() {
        Answer refused = write("fish", "201", "lengths", "44", "note", "kept");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(text(refused)).contains("By count only 200 fish were there at that time.");
        assertThat(refused.body()).contains("value=\"201\"").contains("value=\"kept\"").contains("value=\"44\"");
        assertThat(text(teacher.get(count))).contains("Room 12: 200 by count");
    }

    /** Whoever goes home again was there too. */
    @Test
    void releasedAndKeptBack_areNoMoreThanCanBeThere() {
        Answer refused = write("fish", "10", "kept_small", "500", "lengths", "44", "note", "kept");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(text(refused)).contains("By count 200 fish were there at that time; 10 released and 500 kept back"
                + " make 510. Put the numbers right, or count the fish again first.");
        assertThat(refused.body()).contains("value=\"10\"").contains("value=\"500\"").contains("value=\"44\"")
                .contains("value=\"kept\"");
        assertThat(text(write("fish", "150", "kept_small", "25", "kept_sick", "31", "spread", "5")))
                .contains("By count 200 fish were there at that time, 5 more or less; 150 released and 56 kept back");
        Answer sent = outbox(account(), "fish", "190", "kept_dead", "11");
        assertThat(sent.status()).isEqualTo(422);
        assertThat(sent.body()).contains("190 released and 11 kept back make 201.");
        assertThat(text(teacher.get(count))).contains("Room 12: 200 by count");

        teacher.header("Accept-Language", "es");
        assertThat(text(write("fish", "10", "kept_small", "500"))).contains("Según la cuenta había 200 peces entonces;"
                + " entre liberados (10) y los que se quedaron (500) son 510.");
        teacher.header("Accept-Language", null);
        assertThat(write("fish", "150", "kept_small", "20", "kept_sick", "35", "spread", "5").status()).isEqualTo(303);
        assertThat(text(write("fish", "5", "kept_small", "60"))).as("of those that are left")
                .contains("By count 50 fish were there at that time, 5 more or less; 5 released and 60 kept back");
    }

    /** Fish that were dead on arrival may stand in a reading of that day already; they were there all the same. */
    @Test
    void theDeadOfTheDay_areNotHeldAgainstTheRelease() {
        readDeaths(3);
        assertThat(text(write("fish", "197", "kept_dead", "4")))
                .contains("By count 200 fish were there at that time; 197 released and 4 kept back make 201.");
        assertThat(write("fish", "197", "kept_dead", "3").status()).isEqualTo(303);
    }

    @Test
    void aDayFarFromThePlans_isAskedAboutOnce() {
        Answer asked = write("fish", "5", "day", "2026-01-11", "note", "kept");
        assertThat(asked.status()).isEqualTo(422);
        assertThat(text(asked)).contains("The plan is for Tue 13 Jan; this says Sun 11 Jan."
                + " Keep once more if that is right.");
        assertThat(asked.body()).contains("value=\"2026-01-11\"").contains("value=\"kept\"");
        String answer = asked(asked);
        assertThat(text(write("fish", "5", "day", "2026-01-10", "asked_entries", answer))).as("another day")
                .contains("this says Sat 10 Jan.");
        Answer sent = outbox(account(), "fish", "5", "day", "2026-01-11");
        assertThat(sent.status()).isEqualTo(422);
        assertThat(sent.body()).contains("The plan is for Tue 13 Jan; this says Sun 11 Jan.");
        assertThat(text(teacher.get(count))).contains("Room 12: 200 by count");

        String submission = UUID.randomUUID().toString();
        assertThat(write("fish", "5", "day", "2026-01-11", "asked_entries", answer, "submission_id", submission)
                .status()).isEqualTo(303);
        assertThat(write("fish", "5", "day", "2026-01-11", "submission_id", submission).status())
                .as("the same form again asks nothing").isEqualTo(303);
        assertThat(write("fish", "6", "day", "2026-01-12").status()).as("the day before").isEqualTo(303);
        assertThat(text(teacher.get(count))).contains("Room 12: 189 by count");
    }

    @Test
    void bothQuestions_areAskedAtOnce_andWhatWasAnsweredIsNotAskedAgain() {
        String day1 = asked(write("fish", "5", "day", "2026-01-10"));
        assertThat(write("fish", "5", "day", "2026-01-10", "asked_entries", day1).status()).isEqualTo(303);
        Answer both = write("fish", "7", "day", "2026-01-10");
        assertThat(text(both)).contains("already: 5 fish").contains("this says Sat 10 Jan.");
        assertThat(text(write("fish", "7", "day", "2026-01-10", "asked_entries", day1))).contains("already: 5 fish")
                .doesNotContain("this says");
        assertThat(write("fish", "7", "day", "2026-01-10", "asked_entries", asked(both)).status()).isEqualTo(303);
    }

    @Test
    void aPlanThatIsOutInPart_saysWhatIsStillThere() {
        String two = plan(TestClock.START.plusSeconds(3600), load(cast.tankA().tankId(), 60),
                load(cast.tankB().tankId(), 40));
        teacher.get(two + "/tanks/" + tank);
        assertThat(teacher.post(two + "/tanks/" + tank, all("fish", "57")).status()).isEqualTo(303);
        assertThat(text(teacher.get(two))).contains("Released so far: 57 fish at Lower bridge")
                .contains("Still there: Birchthimble School, Room 12.").contains("Not known yet");
        Browserless coordinator = APP.signedIn(cast.coordinator());
        assertThat(text(coordinator.header("Accept-Language", "es").get(two)))
                .contains("Liberados hasta ahora: 57 peces en Lower bridge")
                .contains("Todavía ahí: Birchthimble School, Room 12.");
        assertThat(text(teacher.get("/release"))).contains("Release: next on");
    }

    /** What is over is not told as if it were to come. */
    @Test
    void aPlanThatIsOut_showsWhatWasDone_andKeepsTheRestShut() {
        write("fish", "57", "kept_small", "3");
        Answer page = teacher.get(plan);
        assertThat(open(page)).contains("Released: 57 fish at Lower bridge").contains("57 released; 3 too small")
                .contains("60 fish planned").doesNotContain("Not known yet").doesNotContain("Look before you go")
                .doesNotContain("From the box to the stream").doesNotContain("To bring").doesNotContain("Still there");
        assertThat(text(page)).contains("The plan as it stood").contains("Look before you go").contains("To bring");
        assertThat(text(teacher.get("/release"))).doesNotContain("Release: next on").contains("Over and called off");
    }

    @Test
    void aPlanWhoseDayIsPast_saysThatNothingWasWrittenDown() {
        String past = plan(TestClock.START.minusSeconds(2 * 86_400), load(cast.tankA().tankId(), 60),
                load(cast.tankB().tankId(), 40));
        assertThat(open(teacher.get(past))).contains("Day over, and nothing written down: Lower bridge")
                .doesNotContain("Not known yet").doesNotContain("Look before you go").contains("write it down");
        String form = past + "/tanks/" + tank;
        teacher.get(form);
        assertThat(teacher.post(form, all("fish", "5", "day", "2026-01-11")).status()).isEqualTo(303);
        assertThat(open(teacher.get(past))).contains("Released so far: 5 fish at Lower bridge")
                .contains("Nothing written down yet of: Birchthimble School, Room 12.")
                .doesNotContain("Not known yet").doesNotContain("write it down");
    }

    @Test
    void oneFish_isOne_inBothLanguages() {
        write("fish", "1", "kept_small", "1", "kept_sick", "1", "kept_dead", "1", "kept_reason", "1", "note", "kept",
                "tempered_minutes", "1", "lengths", "44");
        assertThat(text(teacher.get(plan))).contains("Released: 1 fish at").contains("over 1 minute;")
                .contains("1 measured, 44 mm;");
        assertThat(text(teacher.header("Accept-Language", "es").get(plan))).contains("Liberado: 1 pez en Lower bridge")
                .contains("1 liberado; 1 muy pequeño; 1 enfermo o herido, se quedó; 1 muerto al llegar; 1 se quedó;")
                .contains("en 1 minuto; 1 medido, 44 mm;");
    }

    /** A comma may be a decimal one, or stand between two. */
    @Test
    void lengths_withCommas_areTakenOrAskedAbout_neverGuessed() {
        Answer asked = write("fish", "3", "lengths", "44,47");
        assertThat(asked.status()).isEqualTo(422);
        assertThat(text(asked)).contains("44,47").contains("is no length");
        write("fish", "3", "lengths", "44,5 47, 53;50");
        assertThat(text(teacher.get(plan))).contains("4 measured, 49 mm on average (45 to 53)");
    }

    @Test
    void theSameForm_countsOnce_howeverOftenAndHoweverItComes() {
        String submission = UUID.randomUUID().toString();
        for (int i = 0; i < 2; i++) {
            assertThat(write("fish", "10", "submission_id", submission).status()).isEqualTo(303);
        }
        String plain = UUID.randomUUID().toString().replace("-", "");
        for (int i = 0; i < 2; i++) {
            Answer sent = outbox(account(), "fish", "5", "day", "2026-01-12", "submission_id", plain);
            assertThat(sent.status()).as(sent.body()).isEqualTo(200);
            assertThat(sent.body()).contains("\"receipt\":\"").contains("\"savedTo\":\"" + plan);
        }
        assertThat(text(teacher.get(count))).contains("Room 12: 185 by count");
        assertThat(text(write("fish", "11", "submission_id", submission)))
                .contains("This form was written down before, and says something else now.");
    }

    @Test
    void twoWhoWriteDownTheSameFish_areAskedOnce() {
        assertThat(write("fish", "30").status()).isEqualTo(303);
        Browserless other = APP.signedIn(cast.coordinator());
        other.get(day);
        Answer asked = other.post(day, all("fish", "30", "note", "kept"));
        assertThat(asked.status()).isEqualTo(422);
        assertThat(text(asked)).contains("Of this tank there are written down for that day already: 30 fish,"
                + " Tue 13 Jan, 9:00, by Ada Fernwhistle. If these are other fish, keep the form once more");
        assertThat(asked.body()).contains("value=\"kept\"");
        assertThat(text(teacher.get(count))).contains("Room 12: 170 by count");

        String named = find(asked, "name=\"asked_entries\" value=\"([\\d,]+)\"");
        assertThat(write("fish", "5", "day", "2026-01-12").status()).as("another day").isEqualTo(303);
        assertThat(other.post(day, all("fish", "30", "asked_entries", named)).status()).isEqualTo(303);
        assertThat(text(teacher.get(count))).contains("Room 12: 135 by count");
        assertThat(text(write("fish", "7", "asked_entries", named))).as("one more since").contains("already: 30 fish")
                .contains("; 30 fish");
    }

    @Test
    void whatStandsInTheCount_isAskedAboutAtTheWater_alsoLater() {
        teacher.get(count + "/released");
        assertThat(teacher.post(count + "/released", "fish", "20", "method", "one_by_one", "place", "Lower bridge",
                "approval", "P-8", "day", "2026-01-13").status()).isEqualTo(303);
        Answer sent = outbox(account(), "fish", "20");
        assertThat(sent.status()).isEqualTo(422);
        assertThat(sent.body()).contains("already: 20 fish").contains("by Ada Fernwhistle");
        assertThat(text(teacher.get(count))).contains("Room 12: 180 by count");
    }

    @Test
    void whatWasWrittenDownAtTheWater_isAskedAboutInTheCount() {
        assertThat(write("fish", "30").status()).isEqualTo(303);
        teacher.get(count + "/released");
        Answer asked = teacher.post(count + "/released", "fish", "30", "method", "one_by_one", "place", "Lower bridge",
                "day", "2026-01-13");
        assertThat(asked.status()).isEqualTo(422);
        assertThat(text(asked)).contains("Already written down as released on that day: 30 fish, Tue 13 Jan, 9:00, by"
                + " Ada Fernwhistle. Are these more fish?");
        assertThat(text(teacher.get(count))).contains("Room 12: 170 by count");
    }

    @Test
    void whatWasKeptOnADevice_isOfWhenItWasWritten_andOfNobodyElse() {
        assertThat(outbox("somebody-else", "fish", "5").status()).isEqualTo(403);
        Answer wrong = outbox(account(), "fish", "none", "lengths", "44 x", "temperature_scale", "[degF]",
                "box_temperature", "20");
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.body()).contains("The number of fish released is a whole number").contains("is no length")
                .contains("such water would be ice or soup");

        Answer sent = outbox(account(), "fish", "5", "temperature_scale", "[degF]", "box_temperature", "50",
                "stream_temperature",
                "46.4", "kept_at", "2026-01-13T10:30:00Z", "sent_at", "2026-01-13T14:00:00Z", "clock_ahead", "0");
        assertThat(sent.status()).as(sent.body()).isEqualTo(200);
        assertThat(text(teacher.get(plan))).contains("Tue 13 Jan, 5:30: 5 released; box 10.0 °C, stream 8.0 °C");
    }

    @Test
    void whatIsTakenBackInTheCount_isNotReleasedAnyMore() {
        write("fish", "57");
        teacher.get(count);
        teacher.post(find(teacher.get(count), "action=\"(" + count + "/entries/\\d+/withdrawn)\""));
        assertThat(text(teacher.get(plan))).contains("Not yet").doesNotContain("57 released");
        assertThat(text(teacher.get("/release"))).contains("340 of 400 fish free; 60 more are in plans");
    }

    @Test
    void badInput_isAnsweredInSentences() {
        Answer answer = write("fish", "0", "tempered_minutes", "soon", "kept_reason", "3", "day", "2026-01-14",
                "spread", "-1");
        assertThat(answer.status()).isEqualTo(422);
        assertThat(text(answer)).contains("from 1 to 100,000").contains("Give whole minutes")
                .contains("Say in a few words why they were kept back.").contains("That is still to come")
                .contains("How far it may be off is a whole number");
        assertThat(text(write("fish", "1", "day", "2027-01-14"))).contains("The day can be within the season");
    }

    @Test
    void onlyThoseOfTheTank_writeItDown_andOnlyWhileThePlanStands() {
        assertThat(APP.signedIn(cast.teacherB()).get(day).status()).isEqualTo(404);
        assertThat(APP.signedIn(APP.here().coordinator()).get(day).status()).as("another chapter").isEqualTo(404);
        assertThat(teacher.get(plan + "/tanks/" + cast.tankB().code()).status()).as("not theirs").isEqualTo(404);
        Browserless coordinator = APP.signedIn(cast.coordinator());
        assertThat(coordinator.get(plan + "/tanks/" + cast.tankB().code()).status()).as("not in the plan")
                .isEqualTo(404);
        coordinator.get(plan + "/edit");
        coordinator.post(plan + "/dropped");
        assertThat(text(write("fish", "5"))).contains("This release was called off in the plan.");
    }

    private String plan(Instant startsAt, Load... loads) {
        int planId = APP.transactions().inChapter(cast.chapterId(), tx -> {
            int site = new SiteRepository().list(tx, cast.chapterId()).stream().map(Site::siteId).findFirst()
                    .orElseGet(() -> new SiteRepository().add(tx, cast.chapterId(), new Site.Details("Lower bridge",
                            "Quill Brook", Optional.empty(), Optional.empty(), OptionalDouble.empty())));
            int approval = new ApprovalRepository().list(tx, cast.chapterId()).stream().map(Approval::approvalId)
                    .findFirst().orElseGet(() -> new ApprovalRepository().add(tx, cast.chapterId(), site,
                            new Approval.Details("P-8", "State fish agency", Species.RAINBOW_TROUT,
                                    LocalDate.of(2026, 1, 1), LocalDate.of(2026, 5, 31), 400, Optional.empty(),
                                    Optional.empty())));
            int season = new SeasonRepository().get(tx, cast.chapterId(), cast.season()).seasonId();
            return new PlanRepository().add(tx, cast.chapterId(), UUID.randomUUID(),
                    new ReleasePlan(0, season, approval,
                    new ReleasePlan.Details(startsAt, 1, OptionalDouble.of(11), OptionalDouble.of(8),
                            OptionalDouble.empty(), OptionalDouble.empty(), true, 12, 3, Map.of(), Optional.empty(),
                            List.of(loads)), Optional.empty()),
                    cast.coordinator().personId(), TestClock.START);
        });
        return "/release/plans/" + planId;
    }

    private static Load load(int tankId, int fish) {
        return new Load(tankId, fish, OptionalDouble.of(45), OptionalDouble.empty(), 2, 20);
    }

    private void readDeaths(int fish) {
        Answer answer = APP.bearer(cast.tankA().token()).header("Idempotency-Key", "\"" + UUID.randomUUID() + "\"")
                .postJson("/api/v1/tanks/" + tank + "/readings", "{\"measuredAt\": \"2026-01-13T13:00:00Z\","
                        + " \"values\": [{\"analyte\": \"deaths\", \"value\": " + fish + ", \"unit\": \"1\"}]}");
        assertThat(answer.status()).as(answer.body()).isEqualTo(201);
    }

    private static String asked(Answer page) {
        return find(page, "name=\"asked_entries\" value=\"([^\"]+)\"");
    }

    /** What is seen before anything is opened. */
    private static String open(Answer page) {
        return text(page.body().replaceAll("(?s)<details class=\"release__past\">.*</details>", " "));
    }

    private Answer write(String... fields) {
        teacher.get(day);
        return teacher.post(day, all(fields));
    }

    private Answer outbox(String account, String... fields) {
        teacher.get(day);
        teacher.header(Caller.ACCOUNT_HEADER, account);
        try {
            return teacher.post(day, all(fields));
        } finally {
            teacher.header(Caller.ACCOUNT_HEADER, null);
        }
    }

    private String account() {
        return teacher.get(day).header(Caller.ACCOUNT_HEADER).orElseThrow();
    }

    private static String[] all(String... fields) {
        String[] all = new String[fields.length + 2];
        all[0] = "method";
        all[1] = "one_by_one";
        System.arraycopy(fields, 0, all, 2, fields.length);
        return all;
    }

    private static String find(Answer answer, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(answer.body());
        assertThat(found.find()).as(pattern).isTrue();
        return found.group(1);
    }

    private static String text(Answer answer) {
        return text(answer.body());
    }

    private static String text(String html) {
        return html.replaceAll("<[^>]*>", " ").replace('\u00a0', ' ').replace("&#39;", "'")
                .replace("&quot;", "\"").replaceAll("\\s+", " ");
    }
}
